package looks

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"homeside/app/settings"
	"homeside/canvas/look"
)

// Theme is the toolkit's theme in the colours of the court, so that window and
// picture are one page.
type Theme struct {
	fyne.Theme
	settings settings.Settings
}

// Of is the theme that settings ask for.
func Of(s settings.Settings) *Theme { return &Theme{theme.DefaultTheme(), s} }

// colours are those of a window: the ones that the pictures have not.
type colours struct {
	look           *look.Look
	variant        fyne.ThemeVariant // whose colours the rest has
	primary, onTop color.NRGBA       // a button to be pressed first, and its letters
	quiet          color.NRGBA       // what is disabled, and lines of fields
	focus          color.NRGBA       // laid over whatever has the keys
	wrong, warns   color.NRGBA
	good           color.NRGBA
}

var (
	day = colours{
		look: &look.Daylight, variant: theme.VariantLight,
		primary: look.Blue, onTop: color.NRGBA{0xFF, 0xFF, 0xFF, 0xFF}, quiet: color.NRGBA{0x4C, 0x56, 0x5B, 0xFF}, focus: color.NRGBA{0x00, 0x50, 0x94, 0x9C},
		wrong: color.NRGBA{0xA8, 0x32, 0x00, 0xFF}, warns: color.NRGBA{0x8A, 0x5A, 0x00, 0xFF}, good: color.NRGBA{0x00, 0x6B, 0x4E, 0xFF},
	}
	night = colours{
		look: &look.Night, variant: theme.VariantDark,
		primary: look.Sky, onTop: color.NRGBA{0x0C, 0x12, 0x14, 0xFF}, quiet: look.Night.Quiet, focus: color.NRGBA{0x00, 0x78, 0xF0, 0xD9},
		wrong: color.NRGBA{0xF2, 0x8C, 0x4E, 0xFF}, warns: look.Orange, good: color.NRGBA{0x3C, 0xC9, 0x9C, 0xFF},
	}
)

// of are the colours where the desktop says so or so.
func (t *Theme) of(v fyne.ThemeVariant) *colours {
	if t.settings.Look.Dark(v == theme.VariantDark) {
		return &night
	}
	return &day
}

// Color implements fyne.Theme.
func (t *Theme) Color(n fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	if n == theme.ColorNamePressed && t.settings.ReducedMotion { // what flashes under a press
		return color.Transparent
	}
	c := t.of(v)
	if own, ok := c.own(n); ok {
		if n == theme.ColorNameForeground {
			return ink{own}
		}
		return own
	}
	return t.Theme.Color(n, c.variant)
}

// own is a colour that is not the toolkit's.
func (c *colours) own(n fyne.ThemeColorName) (color.NRGBA, bool) {
	lk := c.look
	switch n {
	case theme.ColorNameBackground, theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground:
		return lk.Paper, true
	case theme.ColorNameForeground:
		return lk.Ink, true
	case theme.ColorNameDisabled,
		theme.ColorNamePlaceHolder,
		theme.ColorNameInputBorder, // of a field, an empty box, a ring
		theme.ColorNameScrollBar:
		return c.quiet, true
	case theme.ColorNameButton, theme.ColorNameDisabledButton, theme.ColorNameInputBackground, theme.ColorNameHeaderBackground:
		return lk.Surface, true
	case theme.ColorNamePrimary, theme.ColorNameHyperlink:
		return c.primary, true
	case theme.ColorNameFocus:
		return c.focus, true
	case theme.ColorNameSelection, theme.ColorNameSeparator:
		return lk.Kitchen, true
	case theme.ColorNameError:
		return c.wrong, true
	case theme.ColorNameWarning:
		return c.warns, true
	case theme.ColorNameSuccess:
		return c.good, true
	case theme.ColorNameForegroundOnPrimary, theme.ColorNameForegroundOnError, theme.ColorNameForegroundOnWarning, theme.ColorNameForegroundOnSuccess:
		return c.onTop, true
	}
	return color.NRGBA{}, false
}

// Size implements fyne.Theme: a little tighter than the toolkit's own, for the
// court's sake.
func (t *Theme) Size(n fyne.ThemeSizeName) float32 {
	size := t.Theme.Size(n)
	switch n {
	case theme.SizeNameInnerPadding:
		return 6
	case theme.SizeNameText, theme.SizeNameCaptionText, theme.SizeNameHeadingText, theme.SizeNameSubHeadingText, theme.SizeNameInlineIcon:
		return size * t.letters()
	}
	return size
}

// largeText is how much larger the letters of large text are.
const largeText = 1.25

func (t *Theme) letters() float32 {
	if t.settings.LargeText {
		return largeText
	}
	return 1
}
