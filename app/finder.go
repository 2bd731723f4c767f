package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"homeside/words"
)

// line is one line of a finder.
type line struct {
	text, key string
	heading   bool
	off       bool   // cannot be done now
	stays     bool   // the finder stays open when it is done
	do        func() // nil: there is nothing to do
}

// finder is a dialog with a field to type into and the lines that fit. The arrow
// keys go through them, Enter does one.
type finder struct {
	*question
	typed  *finderEntry
	list   *finderList
	lines  []line
	chosen int
	search func(typed string) []line
}

// showFinder opens a finder; search gives the lines that fit what is typed.
func (e *Editor) showFinder(title, hint string, search func(typed string) []line) *finder {
	e.court.Cancel()
	e.session.Pause()
	f := &finder{search: search, typed: &finderEntry{}}
	f.typed.ExtendBaseWidget(f.typed)
	f.typed.SetPlaceHolder(hint)
	f.typed.keys = f.key
	f.typed.OnChanged = func(string) { f.refresh() }
	f.list = newFinderList(f, f.key)
	content := container.New(layout.NewBorderLayout(f.typed, nil, nil, nil), f.typed, f.list)
	f.question = e.askWith(title, content, answer{label: words.T("Close")})
	f.size(720, 600)
	f.refresh()
	f.focus(f.typed)
	return f
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

// key goes through the lines or does one.
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
	default:
		return false
	}
	return true
}

// run does the line chosen and closes, unless it stays. One that cannot be done
// stays as well, and the status line has said why.
func (f *finder) run() {
	if f.chosen >= len(f.lines) || f.lines[f.chosen].do == nil {
		return
	}
	l := f.lines[f.chosen]
	if l.stays {
		l.do()
		return
	}
	f.give(l.do)
}
