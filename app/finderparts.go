package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
)

// finderEntry is the field of a finder.
type finderEntry struct {
	heard.Entry
	keys func(*fyne.KeyEvent) bool // false: the field's own
}

// TypedKey implements fyne.Focusable.
func (n *finderEntry) TypedKey(k *fyne.KeyEvent) {
	if !n.keys(k) {
		n.Entry.TypedKey(k)
	}
}

// finderList are the lines of a finder; a click does one.
type finderList struct {
	widget.List
	keys func(*fyne.KeyEvent) bool
}

func newFinderList(f *finder, keys func(*fyne.KeyEvent) bool) *finderList {
	l := &finderList{keys: keys}
	l.Length = func() int { return len(f.lines) }
	l.CreateItem = func() fyne.CanvasObject { return newFinderRow() }
	l.UpdateItem = func(i widget.ListItemID, o fyne.CanvasObject) {
		o.(*finderRow).show(f.lines[i], func() { f.chosen = i; f.run() })
	}
	l.OnSelected = func(i widget.ListItemID) { f.chosen = i }
	l.ExtendBaseWidget(l)
	return l
}

// TypedKey implements fyne.Focusable.
func (l *finderList) TypedKey(k *fyne.KeyEvent) {
	if !l.keys(k) && !heard.Offered(l, k) {
		l.List.TypedKey(k)
	}
}

// finderRow is a line with its key beside it.
type finderRow struct {
	widget.BaseWidget
	text, key *widget.Label
	tapped    func()
}

func newFinderRow() *finderRow {
	r := &finderRow{text: widget.NewLabel(""), key: widget.NewLabel("")}
	r.text.Truncation = fyne.TextTruncateEllipsis
	r.ExtendBaseWidget(r)
	return r
}

// CreateRenderer implements fyne.Widget.
func (r *finderRow) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewBorder(nil, nil, nil, r.key, r.text))
}

// Tapped implements fyne.Tappable.
func (r *finderRow) Tapped(*fyne.PointEvent) { r.tapped() }

func (r *finderRow) show(l line, tapped func()) {
	r.tapped = tapped
	r.text.TextStyle.Bold = l.heading
	r.text.Importance = widget.MediumImportance
	if l.off {
		r.text.Importance = widget.LowImportance
	}
	r.text.SetText(l.text)
	r.key.SetText(l.key)
}
