package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"homeside/words"
)

// showCautions shows all cautions, a line each.
func (e *Editor) showCautions() {
	text := ""
	for _, c := range words.Cautions() {
		text += "• " + c + "\n"
	}
	said := widget.NewLabel(text)
	said.Wrapping = fyne.TextWrapWord
	d := dialog.NewCustom(words.T("Before you run it"), words.T("Close"), said, e.win)
	d.Resize(fyne.NewSize(560, 300))
	d.Show()
}
