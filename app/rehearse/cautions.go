package rehearse

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/looks"
	"homeside/words"
)

// cautionsSize is how large the cautions are at most, with usual letters.
var cautionsSize = fyne.NewSize(860, 620)

// cautionPage has the cautions that must be read before anybody walks.
type cautionPage struct {
	box  fyne.CanvasObject
	read *heard.Button
}

// newCautionPage has all cautions and, for emphasis, these of the play itself.
func newCautionPage(own []string, read func()) *cautionPage {
	c := &cautionPage{read: newButton(words.T("We have read this (Enter, Page Down)"), theme.ConfirmIcon(), read)}
	c.read.Importance = widget.HighImportance
	lines := container.NewVBox()
	for _, text := range own {
		lines.Add(cautionLine(text, true))
	}
	for _, text := range words.Cautions() {
		lines.Add(cautionLine("• "+text, false))
	}
	head := widget.NewLabel(words.T("Before you run it"))
	head.SizeName, head.TextStyle = theme.SizeNameHeadingText, fyne.TextStyle{Bold: true}
	size := fyne.NewSize(cautionsSize.Width*looks.Letters(), cautionsSize.Height*looks.Letters())
	c.box = container.New(narrow{size}, container.NewBorder(head, container.NewCenter(c.read), nil, nil, container.NewVScroll(lines)))
	return c
}

func cautionLine(text string, own bool) *widget.Label {
	l := widget.NewLabel(text)
	l.Wrapping, l.SizeName = fyne.TextWrapWord, theme.SizeNameSubHeadingText
	if own {
		l.TextStyle.Bold, l.Importance = true, widget.WarningImportance
	}
	return l
}
