package app

import (
	"slices"

	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/panel"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/words"
)

// askMark asks for a mark's text and when it is seen. Enter accepts, Escape
// cancels.
func (e *Editor) askMark(i int) {
	p, ok := e.session.Play()
	r := e.session.Current()
	if !ok || r == nil || i >= len(p.Marks) {
		return
	}
	m := p.Marks[i]
	text := filledEntry(m.Text)
	from := newMoments(r, m.Span.From, words.T("From the beginning"), lesson.Always().From)
	to := newMoments(r, m.Span.To, words.T("To the end"), lesson.Always().To)
	form := widget.NewForm(
		widget.NewFormItem(words.T("Text"), text),
		widget.NewFormItem(words.T("Seen from"), from.list),
		widget.NewFormItem(words.T("until"), to.list),
	)
	change := func() {
		e.session.ChangeMark(words.T("change a mark"), i, func(m lesson.Mark) lesson.Mark {
			m.Text, m.Span = cut(text.Text, lesson.MaxText), lesson.Span{From: from.chosen(), To: to.chosen()}
			return m
		})
	}
	q := e.askWith(words.MarkName(m.Kind), container.NewVBox(form), answer{label: words.T("Cancel")}, answer{label: words.T("Change"), do: change})
	q.size(480, 260).focus(text)
	text.SelectAll()
	e.trace.say("asking about a mark")
}

// moments is a choice among the moments of a play: its edge, its events and
// what a mark says already.
type moments struct {
	list    *panel.Dropdown
	anchors []lesson.Anchor
}

func newMoments(r *rally.Rally, at lesson.Anchor, edge string, edgeAt lesson.Anchor) *moments {
	m := &moments{anchors: []lesson.Anchor{edgeAt}}
	names := []string{edge}
	for _, ev := range r.Events {
		if ev.Name != lesson.TheEnd {
			m.anchors = append(m.anchors, lesson.At(ev.Name))
			names = append(names, words.TheEvent(ev.Name)+" ("+words.Seconds(ev.At)+")")
		}
	}
	chosen := slices.Index(m.anchors, at)
	if chosen < 0 {
		m.anchors = append(m.anchors, at)
		names = append(names, words.Seconds(r.TimeAt(at)))
		chosen = len(names) - 1
	}
	m.list = panel.NewDropdown(names, nil)
	m.list.SetSelectedIndex(chosen)
	return m
}

// chosen is the moment chosen.
func (m *moments) chosen() lesson.Anchor { return m.anchors[max(m.list.SelectedIndex(), 0)] }
