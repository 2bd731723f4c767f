package panel

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// badgeSize holds a number of two digits.
var badgeSize = fyne.NewSize(26, 22)

// checkRow is one finding: its number, what it says, and a button that mends it.
type checkRow struct {
	box    *fyne.Container
	badge  *fynecanvas.Rectangle
	number *fynecanvas.Text
	text   *link
	fix    *widget.Button
}

func newCheckRow() *checkRow {
	r := &checkRow{badge: fynecanvas.NewRectangle(nil), number: fynecanvas.NewText("", theme.Color(theme.ColorNameForeground)), text: newLink(), fix: widget.NewButton("Fix", nil)}
	r.badge.CornerRadius = 4
	r.badge.StrokeColor, r.badge.StrokeWidth = theme.Color(theme.ColorNameForeground), 1
	r.number.Alignment = fyne.TextAlignCenter
	r.number.TextStyle.Bold = true
	badge := container.NewCenter(container.NewGridWrap(badgeSize, container.NewStack(r.badge, r.number)))
	r.box = container.NewBorder(nil, nil, badge, container.NewCenter(r.fix), r.text)
	return r
}

// link is a text that can be tapped.
type link struct {
	widget.Label
	tapped func()
}

var _ desktop.Cursorable = (*link)(nil)

func newLink() *link {
	l := &link{}
	l.ExtendBaseWidget(l)
	l.Wrapping = fyne.TextWrapWord
	return l
}

// set changes the text only when it is another: laying it out anew takes time.
func (l *link) set(text string, size fyne.ThemeSizeName, tapped func()) {
	l.tapped = tapped
	if l.Text != text || l.SizeName != size {
		l.SizeName = size
		l.SetText(text)
	}
}

// Tapped implements fyne.Tappable.
func (l *link) Tapped(*fyne.PointEvent) {
	if l.tapped != nil {
		l.tapped()
	}
}

// Cursor implements desktop.Cursorable.
func (l *link) Cursor() desktop.Cursor { return desktop.PointerCursor }
