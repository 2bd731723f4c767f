package looks

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"homeside/internal/wcag"
)

// shortcut is the colour that the toolkit writes a menu's shortcuts in: Fyne
// 2.7.3, widget/menu_item.go, shortcutColor.
func shortcut(ink color.Color) color.NRGBA {
	r, g, b, a := ink.RGBA()
	a = uint32(float32(a) * 0.95)
	return color.NRGBA{R: uint8(r), G: uint8(g), B: uint8(b), A: uint8(a)}
}

// The shortcuts in the menus can be read, and letters are as dark as they are said
// to be.
func TestShortcutsOfMenus(t *testing.T) {
	inBoth(t, func(t *testing.T, of func(fyne.ThemeColorName) color.Color) {
		letters, paper := of(theme.ColorNameForeground), of(theme.ColorNameMenuBackground)
		atLeast(t, "a shortcut in a menu", wcag.Over(shortcut(letters), paper), paper, wcag.Text)
		got, want := color.NRGBAModel.Convert(letters).(color.NRGBA), letters.(ink).NRGBA
		for i, d := range []int{int(got.R) - int(want.R), int(got.G) - int(want.G), int(got.B) - int(want.B), int(got.A) - int(want.A)} {
			if d < 0 || d > 1 { // what is gained on the alpha
				t.Errorf("letters are %v, want %v: channel %d", got, want, i)
			}
		}
	})
}
