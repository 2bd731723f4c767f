package app

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"homeside/app/settings"
	"homeside/canvas/look"
)

// daylight is the window's theme: the toolkit's light one in the colours of the
// court, so that window and picture are one page.
type daylight struct {
	fyne.Theme
	settings settings.Settings
}

// themeOf is the theme that settings ask for.
func themeOf(s settings.Settings) fyne.Theme { return daylight{theme.DefaultTheme(), s} }

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
	case theme.ColorNamePressed: // what flashes under a press
		if d.settings.ReducedMotion {
			return color.Transparent
		}
	}
	return d.Theme.Color(n, theme.VariantLight)
}

// largeText is how much larger the letters of large text are.
const largeText = 1.25

// Size implements fyne.Theme: a little tighter than the toolkit's own, for the
// court's sake.
func (d daylight) Size(n fyne.ThemeSizeName) float32 {
	size := d.Theme.Size(n)
	switch n {
	case theme.SizeNameInnerPadding:
		return 6
	case theme.SizeNameText, theme.SizeNameCaptionText, theme.SizeNameHeadingText, theme.SizeNameSubHeadingText, theme.SizeNameInlineIcon:
		if d.settings.LargeText {
			return size * largeText
		}
	}
	return size
}
