package looks

import "image/color"

// ink is the colour of the window's letters. Its alpha is a little less than full:
// the toolkit takes the low byte of 95 hundredths of it for the shortcuts in its
// menus (Fyne 2.7.3, widget/menu_item.go, shortcutColor), which from full alpha
// leaves them a fifth of their strength, too pale to be read.
type ink struct{ color.NRGBA }

// inkAlpha is of 0xFFFF; 95 hundredths of it end in the byte 0xFE.
const inkAlpha = 0xFFC8

// RGBA implements color.Color.
func (c ink) RGBA() (r, g, b, a uint32) {
	r, g, b, _ = c.NRGBA.RGBA()
	return r, g, b, inkAlpha
}
