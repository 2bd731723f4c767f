package looks

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"homeside/app/settings"
	"homeside/canvas/look"
	"homeside/internal/wcag"
)

// inBoth runs a check with the colours of both looks.
func inBoth(t *testing.T, check func(t *testing.T, of func(fyne.ThemeColorName) color.Color)) {
	for name, l := range map[string]settings.Look{"light": settings.Light, "dark": settings.Dark} {
		th := Of(settings.Settings{Look: l})
		for _, system := range []fyne.ThemeVariant{theme.VariantLight, theme.VariantDark} { // which does not matter then
			t.Run(name, func(t *testing.T) { check(t, func(n fyne.ThemeColorName) color.Color { return th.Color(n, system) }) })
		}
	}
}

func atLeast(t *testing.T, what string, a, b color.Color, least float64) {
	t.Helper()
	if got := wcag.Contrast(a, b); got < least {
		t.Errorf("%s is %.2f:1, want %v:1", what, got, least)
	}
}

// grounds are what text of the window stands on.
var grounds = []fyne.ThemeColorName{
	theme.ColorNameBackground, theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground, theme.ColorNameButton, theme.ColorNameDisabledButton,
	theme.ColorNameInputBackground, theme.ColorNameHeaderBackground, theme.ColorNameSelection,
}

// inks are its colours: also what is disabled has to be read, to be understood.
var inks = []fyne.ThemeColorName{theme.ColorNameForeground, theme.ColorNameDisabled, theme.ColorNamePlaceHolder}

func TestTextOfTheWindow(t *testing.T) {
	inBoth(t, func(t *testing.T, of func(fyne.ThemeColorName) color.Color) {
		for _, g := range grounds {
			for _, ink := range inks {
				atLeast(t, string(ink)+" on "+string(g), of(ink), of(g), wcag.Text)
				hovered := wcag.Over(of(theme.ColorNameHover), of(g))
				atLeast(t, string(ink)+" on "+string(g)+" under the pointer", of(ink), hovered, wcag.Text)
			}
		}
		for _, ink := range []fyne.ThemeColorName{theme.ColorNameHyperlink, theme.ColorNameError, theme.ColorNameWarning, theme.ColorNameSuccess} {
			atLeast(t, string(ink)+" on paper", of(ink), of(theme.ColorNameBackground), wcag.Text)
		}
	})
}

// Buttons of weight have letters of their own.
func TestTextOnWeightyButtons(t *testing.T) {
	inBoth(t, func(t *testing.T, of func(fyne.ThemeColorName) color.Color) {
		for letters, button := range map[fyne.ThemeColorName]fyne.ThemeColorName{
			theme.ColorNameForegroundOnPrimary: theme.ColorNamePrimary, theme.ColorNameForegroundOnError: theme.ColorNameError,
			theme.ColorNameForegroundOnWarning: theme.ColorNameWarning, theme.ColorNameForegroundOnSuccess: theme.ColorNameSuccess,
		} {
			atLeast(t, string(letters), of(letters), of(button), wcag.Text)
			atLeast(t, string(button)+" on paper", of(button), of(theme.ColorNameBackground), wcag.Graphics)
		}
	})
}

// The toolkit shows where the keys are by laying the focus colour over the
// control (widget/button.go, select.go and menu_item.go of Fyne 2.7): what comes
// of it stands out from the paper and from the control at rest, and is written on.
func TestWhereTheKeysAre(t *testing.T) {
	inBoth(t, func(t *testing.T, of func(fyne.ThemeColorName) color.Color) {
		paper, ink, focus := of(theme.ColorNameBackground), of(theme.ColorNameForeground), of(theme.ColorNameFocus)
		for _, g := range []fyne.ThemeColorName{theme.ColorNameBackground, theme.ColorNameButton, theme.ColorNameInputBackground, theme.ColorNameMenuBackground} {
			lit := wcag.Over(focus, of(g))
			atLeast(t, "focus on "+string(g)+" against paper", lit, paper, wcag.Graphics)
			atLeast(t, "focus on "+string(g)+" against it at rest", lit, of(g), wcag.Graphics)
			atLeast(t, "text on focus on "+string(g), ink, lit, wcag.Text)
		}
		first := wcag.Over(focus, of(theme.ColorNamePrimary))
		atLeast(t, "focus on a first button against paper", first, paper, wcag.Graphics)
		atLeast(t, "text on focus on a first button", of(theme.ColorNameForegroundOnPrimary), first, wcag.Text)
		atLeast(t, "focus on a first button against it at rest", first, of(theme.ColorNamePrimary), 1.3) // 3:1 and letters on both is beyond any colour
		for _, ring := range []fyne.ThemeColorName{theme.ColorNamePrimary} {                             // round court and strip
			for ground, c := range map[string]color.Color{"paper": paper, "button": of(theme.ColorNameButton)} {
				atLeast(t, "ring on "+ground, of(ring), c, wcag.Graphics)
			}
		}
	})
}

// Controls are known by their outline or their parts.
func TestPartsOfControls(t *testing.T) {
	inBoth(t, func(t *testing.T, of func(fyne.ThemeColorName) color.Color) {
		for _, part := range []fyne.ThemeColorName{theme.ColorNameInputBorder, theme.ColorNameScrollBar, theme.ColorNamePrimary} {
			for _, g := range []fyne.ThemeColorName{theme.ColorNameBackground, theme.ColorNameInputBackground} {
				atLeast(t, string(part)+" on "+string(g), of(part), of(g), wcag.Graphics)
			}
		}
	})
}

// Large text is larger by the same in every size of letters, and in pictures.
func TestLargeText(t *testing.T) {
	usual, large := Of(settings.Settings{}), Of(settings.Settings{LargeText: true})
	for _, n := range []fyne.ThemeSizeName{theme.SizeNameText, theme.SizeNameCaptionText, theme.SizeNameHeadingText} {
		if got, want := large.Size(n), usual.Size(n)*largeText; got != want {
			t.Errorf("%s is %v, want %v", n, got, want)
		}
	}
	a := test.NewTempApp(t)
	a.Settings().SetTheme(usual)
	before := Point()
	a.Settings().SetTheme(large)
	if got := Point(); got != before*largeText {
		t.Errorf("a point takes %v, want %v", got, before*largeText)
	}
}

// Pictures look as the theme does, as on a page while there is none.
func TestPicturesFollowTheTheme(t *testing.T) {
	a := test.NewTempApp(t)
	if got := Now(); got != &look.Daylight {
		t.Errorf("without a theme of ours: %p, want Daylight", got)
	}
	for l, want := range map[settings.Look]*look.Look{settings.Light: &look.Daylight, settings.Dark: &look.Night} {
		a.Settings().SetTheme(Of(settings.Settings{Look: l}))
		if got := Now(); got != want {
			t.Errorf("with look %d the pictures have another", l)
		}
	}
}

// Nothing flashes under a press with reduced motion.
func TestNothingFlashes(t *testing.T) {
	_, _, _, usual := Of(settings.Settings{}).Color(theme.ColorNamePressed, theme.VariantLight).RGBA()
	_, _, _, reduced := Of(settings.Settings{ReducedMotion: true}).Color(theme.ColorNamePressed, theme.VariantLight).RGBA()
	if usual == 0 || reduced != 0 {
		t.Errorf("a press shows with alpha %d, with reduced motion %d, want the second 0 only", usual, reduced)
	}
}
