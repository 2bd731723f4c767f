package panel

import (
	"image"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/model/lesson"
)

// Size of the small court beside a play's sentence, in pixels.
const (
	thumbWidth  = 46
	thumbHeight = 88
	threeLines  = 91   // the height of a title of three lines over its tags
	thumbPoint  = 0.45 // a point of its drawing
)

// tickedScale is how much larger the small courts are where plays are chosen by
// their pictures.
const tickedScale = 1.4

// playRow is a play in a list: a small court, the title and the tags. It can be
// dragged; a line shows where what is dragged would come in.
type playRow struct {
	widget.BaseWidget
	box          *fyne.Container
	small        *fynecanvas.Image
	title, tags  *widget.Label
	above, below *fynecanvas.Rectangle
	check        *widget.Icon // nil unless plays are ticked
}

var _ fyne.Draggable = (*draggedRow)(nil)

// draggedRow is a row that can be dragged; one that cannot lets a drag through.
type draggedRow struct {
	playRow
	drags
}

// newPlayRow is a row without a play; with a check if plays are ticked in its list.
func newPlayRow(ticked bool) *playRow {
	r := &playRow{}
	r.make(ticked)
	r.ExtendBaseWidget(r)
	return r
}

func newDraggedRow() *draggedRow {
	r := &draggedRow{}
	r.make(false)
	r.ExtendBaseWidget(r)
	return r
}

func (r *playRow) make(ticked bool) {
	r.small = fynecanvas.NewImageFromImage(nil)
	r.small.FillMode = fynecanvas.ImageFillContain
	r.small.SetMinSize(fyne.NewSize(thumbWidth, thumbHeight))
	r.title, r.tags = widget.NewLabel(""), widget.NewLabel("")
	r.title.Wrapping = fyne.TextWrapWord
	r.tags.Truncation = fyne.TextTruncateEllipsis
	r.tags.Importance = widget.LowImportance
	r.tags.SizeName = theme.SizeNameCaptionText
	r.above, r.below = insertLine(), insertLine()
	left := container.NewHBox(container.New(ofHeight(threeLines), r.small))
	if ticked {
		r.check = widget.NewIcon(theme.CheckButtonIcon())
		r.small.SetMinSize(fyne.NewSize(thumbWidth*tickedScale, thumbHeight*tickedScale))
		left = container.NewHBox(r.check, r.small)
	}
	inner := container.NewBorder(nil, r.tags, nil, nil, r.title)
	r.box = container.NewStack(container.NewBorder(nil, nil, left, nil, inner),
		container.New(layout.NewCustomPaddedVBoxLayout(0), r.above, layout.NewSpacer(), r.below))
}

// insertWidth is how thick the line is where something comes in.
const insertWidth = 3

// insertLine is where something comes in, hidden.
func insertLine() *fynecanvas.Rectangle {
	l := fynecanvas.NewRectangle(theme.Color(theme.ColorNamePrimary))
	l.SetMinSize(fyne.NewSize(0, insertWidth))
	l.Hide()
	return l
}

// CreateRenderer implements fyne.Widget.
func (r *playRow) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(r.box) }

// set shows a play.
func (r *playRow) set(name string, p lesson.Play, small image.Image) {
	r.title.SetText(name)
	r.tags.SetText(strings.Join(p.Tags, ", "))
	show(r.tags, len(p.Tags) > 0)
	r.small.Image = small
	r.small.Refresh()
}
