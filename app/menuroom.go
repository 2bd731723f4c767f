package app

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// itemAir is what the toolkit leaves round an item of a menu, in inner paddings.
const itemAir = 3

// menuFits says whether an item of the menu bar would be within the window with
// another name: the toolkit opens a menu below its name and cuts what is beyond the
// window's edge. Of an item in a menu within a menu it says yes.
func (e *Editor) menuFits(item *fyne.MenuItem, name string) bool {
	bar := e.win.MainMenu()
	if bar == nil {
		return true
	}
	left := theme.Padding()
	for _, m := range bar.Items {
		if slices.Contains(m.Items, item) {
			return left+itemWidth(item, name)+markWidth(m) <= e.win.Canvas().Size().Width
		}
		left += textWidth(m.Label) + 2*theme.InnerPadding() + theme.Padding()
	}
	return true
}

// itemWidth is how wide an item of a menu is with a name.
func itemWidth(item *fyne.MenuItem, name string) float32 {
	w := textWidth(name) + itemAir*theme.InnerPadding()
	if key := (command{item: item}).shortcut(); key != "" {
		w += textWidth(key) + 2*theme.InnerPadding()
	}
	return w
}

// markWidth is the room of the marks in a menu: none where nothing is marked.
func markWidth(m *fyne.Menu) float32 {
	if slices.ContainsFunc(m.Items, func(i *fyne.MenuItem) bool { return i.Checked }) {
		return theme.IconInlineSize() + theme.InnerPadding()
	}
	return 0
}

func textWidth(text string) float32 {
	return fyne.MeasureText(text, theme.TextSize(), fyne.TextStyle{}).Width
}
