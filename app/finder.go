package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/words"
)

// line is one line of a finder.
type line struct {
	text, key string
	heading   bool
	off       bool   // cannot be done now
	do        func() // nil: there is nothing to do
}

// finder is a dialog with a field to type into and the lines that fit. The arrow
// keys go through them, Enter does one, Escape closes.
type finder struct {
	editor *Editor
	dialog *dialog.CustomDialog
	typed  *finderEntry
	list   *widget.List
	lines  []line
	chosen int
	search func(typed string) []line
}

// finderEntry is the field of a finder.
type finderEntry struct {
	widget.Entry
	keys func(*fyne.KeyEvent) bool // false: the field's own
}

// TypedKey implements fyne.Focusable.
func (n *finderEntry) TypedKey(k *fyne.KeyEvent) {
	if !n.keys(k) {
		n.Entry.TypedKey(k)
	}
}

// showFinder opens a finder; search gives the lines that fit what is typed.
func (e *Editor) showFinder(title, hint string, search func(typed string) []line) *finder {
	e.rest()
	f := &finder{editor: e, search: search, typed: &finderEntry{}}
	f.typed.ExtendBaseWidget(f.typed)
	f.typed.SetPlaceHolder(hint)
	f.typed.keys = f.key
	f.typed.OnChanged = func(string) { f.refresh() }
	f.list = widget.NewList(func() int { return len(f.lines) }, newFinderRow, f.fill)
	f.list.OnSelected = func(i widget.ListItemID) { f.chosen = i }
	content := container.New(layout.NewBorderLayout(f.typed, nil, nil, nil), f.typed, f.list)
	f.dialog = dialog.NewCustom(title, words.T("Close"), content, e.win)
	f.dialog.Resize(fyne.NewSize(720, 600))
	f.refresh()
	f.dialog.Show()
	e.win.Canvas().Focus(f.typed)
	return f
}

func newFinderRow() fyne.CanvasObject {
	text := widget.NewLabel("")
	text.Truncation = fyne.TextTruncateEllipsis
	return container.NewBorder(nil, nil, nil, widget.NewLabel(""), text)
}

func (f *finder) fill(i widget.ListItemID, o fyne.CanvasObject) {
	row := o.(*fyne.Container).Objects
	text, key, l := row[0].(*widget.Label), row[1].(*widget.Label), f.lines[i]
	text.TextStyle.Bold = l.heading
	text.Importance = widget.MediumImportance
	if l.off {
		text.Importance = widget.LowImportance
	}
	text.SetText(l.text)
	key.SetText(l.key)
}

func (f *finder) refresh() {
	f.lines, f.chosen = f.search(f.typed.Text), 0
	if len(f.lines) == 0 {
		f.lines = []line{{text: words.T("Nothing fits."), off: true}}
	}
	f.list.UnselectAll()
	f.list.Refresh()
	f.list.ScrollToTop()
	f.pick(0, 1)
}

// pick chooses line i or, where that is a heading, the next one in a direction.
func (f *finder) pick(i, by int) {
	for i >= 0 && i < len(f.lines) && f.lines[i].heading {
		i += by
	}
	if i >= 0 && i < len(f.lines) {
		f.list.Select(i)
		f.list.ScrollTo(i)
	}
}

// key goes through the lines, does one or closes.
func (f *finder) key(k *fyne.KeyEvent) bool {
	const page = 10
	last := len(f.lines) - 1
	switch k.Name {
	case fyne.KeyUp:
		f.pick(f.chosen-1, -1)
	case fyne.KeyDown:
		f.pick(f.chosen+1, 1)
	case fyne.KeyPageUp:
		f.pick(max(f.chosen-page, 0), 1)
	case fyne.KeyPageDown:
		f.pick(min(f.chosen+page, last), -1)
	case fyne.KeyReturn, fyne.KeyEnter:
		f.run()
	case fyne.KeyEscape:
		f.dialog.Hide()
	default:
		return false
	}
	return true
}

// run closes and does the line chosen; one that cannot be done stays, and the
// status line has said why.
func (f *finder) run() {
	if f.chosen >= len(f.lines) || f.lines[f.chosen].do == nil {
		return
	}
	do := f.lines[f.chosen].do
	f.dialog.Hide()
	do()
}
