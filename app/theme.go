package app

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"homeside/canvas/look"
)

// daylight is the window's theme: the toolkit's light one in the colours of the
// court, so that window and picture are one page.
type daylight struct{ fyne.Theme }

// Theme is the editor's theme.
func Theme() fyne.Theme { return daylight{theme.DefaultTheme()} }

// Color implements fyne.Theme.
func (d daylight) Color(n fyne.ThemeColorName, _ fyne.ThemeVariant) color.Color {
	lk := look.Daylight
	switch n {
	case theme.ColorNameBackground, theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground:
		return lk.Paper
	case theme.ColorNameForeground:
		return lk.Ink
	case theme.ColorNameDisabled: // also the menus' shortcuts, which have to be read
		return lk.Quiet
	case theme.ColorNamePrimary, theme.ColorNameHyperlink:
		return look.Blue
	case theme.ColorNameButton, theme.ColorNameInputBackground, theme.ColorNameHeaderBackground:
		return lk.Surface
	case theme.ColorNameInputBorder: // of a field, an empty box, a ring
		return lk.Quiet
	case theme.ColorNameFocus:
		return look.Sky
	case theme.ColorNameSelection:
		return lk.Kitchen
	}
	return d.Theme.Color(n, theme.VariantLight)
}

// Size implements fyne.Theme: a little tighter than the toolkit's own, for the
// court's sake.
func (d daylight) Size(n fyne.ThemeSizeName) float32 {
	if n == theme.SizeNameInnerPadding {
		return 6
	}
	return d.Theme.Size(n)
}
