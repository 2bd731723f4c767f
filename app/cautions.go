package app

import (
	"homeside/words"
)

// showCautions shows all cautions, a line each.
func (e *Editor) showCautions() {
	text := ""
	for _, c := range words.Cautions() {
		text += "• " + c + "\n"
	}
	e.inform(words.T("Before you run it"), text).size(560, 300)
}
