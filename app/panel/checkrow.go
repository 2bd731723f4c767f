package panel

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/looks"
	"homeside/canvas/compose"
	"homeside/canvas/raster"
	"homeside/model/finding"
	"homeside/words"
)

// badgeSize is the room of a sign with its number.
var badgeSize = fyne.NewSize(28, 28)

// checkRow is one finding: its sign as on the court, what it says, and a button
// that mends it.
type checkRow struct {
	box      *fyne.Container
	badge    *fynecanvas.Raster
	number   string
	severity finding.Severity
	text     *link
	fix      *heard.Button
}

func newCheckRow() *checkRow {
	r := &checkRow{text: newLink(), fix: heard.NewButton(words.T("Fix"), nil)}
	r.badge = fynecanvas.NewRaster(r.draw)
	badge := container.NewCenter(container.NewGridWrap(badgeSize, r.badge))
	r.box = container.NewBorder(nil, nil, badge, container.NewCenter(r.fix), r.text)
	return r
}

// draw draws the sign at a size in device pixels.
func (r *checkRow) draw(w, h int) image.Image {
	if w < 1 || h < 1 {
		return image.NewRGBA(image.Rect(0, 0, 1, 1))
	}
	const points = 22 // across
	return raster.Scene(compose.FindingSign(looks.Now(), r.severity, r.number, w, h, float64(w)/points))
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
