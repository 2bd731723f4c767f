package panel

import (
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/words"
)

// longestTab is how many letters of a lesson's title its tab shows.
const longestTab = 28

// Tabs are the lessons open at once, a tab each; hidden while there is one.
type Tabs struct {
	Box    fyne.CanvasObject
	desk   *session.Desk
	row    *fyne.Container
	tabs   []*tab
	show   func(i int)
	close  func(i int)
	titles []string // as shown
	shown  int
}

// tab is one lesson's: its title, a line under the one shown, and the way to close it.
type tab struct {
	box   *fyne.Container
	title *heard.Button
	close *heard.Button
	line  *fynecanvas.Rectangle
}

// NewTabs are a desk's tabs; show and close are asked for with a lesson's number.
func NewTabs(d *session.Desk, show, closed func(i int)) *Tabs {
	t := &Tabs{desk: d, row: container.NewHBox(), show: show, close: closed}
	t.Box = container.NewHScroll(t.row)
	t.Box.Hide()
	return t
}

// Refresh shows the desk as it is.
func (t *Tabs) Refresh() {
	var titles []string
	for _, p := range t.desk.Papers() {
		titles = append(titles, tabTitle(p))
	}
	if slices.Equal(titles, t.titles) && t.shown == t.desk.Shown() {
		return
	}
	t.titles, t.shown = titles, t.desk.Shown()
	for len(t.tabs) < len(titles) {
		t.add()
	}
	for i, tab := range t.tabs {
		show(tab.box, i < len(titles))
		if i < len(titles) {
			tab.title.SetText(titles[i])
			tab.title.Importance = map[bool]widget.Importance{true: widget.MediumImportance, false: widget.LowImportance}[i == t.shown]
			tab.title.Refresh()
			show(tab.line, i == t.shown)
		}
	}
	show(t.Box, len(titles) > 1)
}

func (t *Tabs) add() {
	i := len(t.tabs)
	b := &tab{line: fynecanvas.NewRectangle(theme.Color(theme.ColorNamePrimary))}
	b.title = heard.NewButtonWithIcon("", nil, func() { t.show(i) }).Says(func() string { return t.tip(i) })
	b.close = heard.NewButtonWithIcon("", theme.WindowCloseIcon(), func() { t.close(i) }).Says(func() string { return words.T("Closes this lesson; what is unsaved is asked about") })
	b.close.Importance = widget.LowImportance
	b.line.SetMinSize(fyne.NewSize(0, 3))
	b.box = container.NewBorder(nil, b.line, nil, b.close, b.title)
	t.tabs = append(t.tabs, b)
	t.row.Add(b.box)
}

// tip is the whole title of a lesson and where it is kept.
func (t *Tabs) tip(i int) string {
	if i >= t.desk.Len() {
		return ""
	}
	p := t.desk.Paper(i)
	where := p.Path
	if where == "" {
		where = words.T("in no file yet")
	}
	return LessonTitle(p.Lesson.Title) + ": " + where
}

// LessonTitle is what a lesson is called in the window.
func LessonTitle(title string) string {
	if title == "" {
		return words.T("Untitled lesson")
	}
	return title
}

func tabTitle(p session.Paper) string {
	title := brief(LessonTitle(p.Lesson.Title), longestTab)
	if p.Modified {
		return "• " + title
	}
	return title
}

// brief is a text of at most so many letters; an ellipsis stands for the rest.
func brief(text string, most int) string {
	r := []rune(text)
	if len(r) > most {
		return string(r[:most-1]) + "…"
	}
	return text
}

// Named are the tabs by name, for tests of the window.
func (t *Tabs) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{}
	for i := range t.titles {
		named["tab-"+string(rune('1'+i))] = t.tabs[i].title
		named["close-tab-"+string(rune('1'+i))] = t.tabs[i].close
	}
	return named
}
