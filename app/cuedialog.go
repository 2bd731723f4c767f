package app

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/session"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// cueForm asks for a caption or a signal.
type cueForm struct {
	session *session.Session
	cue     lesson.Cue
	text    *heard.Entry
	lasts   *heard.Entry
	giver   *panel.Dropdown
	meaning *panel.Dropdown
	accept  func(lesson.Cue)
}

// meanings are what a signal may say, in the order offered.
var meanings = []lesson.Meaning{lesson.Switch, lesson.Stay, lesson.Fake}

// askCue asks for a new caption or signal at a time.
func (e *Editor) askCue(k lesson.CueKind, t units.Seconds) {
	e.rest()
	e.session.Pause()
	p, ok := e.session.Play()
	if !ok || len(p.Cues) >= lesson.MaxCues {
		e.say(words.T("This play has no room for another text."))
		return
	}
	e.session.Seek(t)
	c, ok := e.session.NewCue(k)
	if !ok {
		return
	}
	title, step := words.T("New caption"), words.T("add a caption")
	if k == lesson.Signal {
		title, step = words.T("New signal"), words.T("add a signal")
	}
	e.showCue(title, words.T("Add"), c, func(c lesson.Cue) { e.session.AddCue(step, c) })
}

// askChangeCue asks for another text and time of cue i.
func (e *Editor) askChangeCue(i int) {
	e.rest()
	e.session.Pause()
	p, ok := e.session.Play()
	if !ok || i >= len(p.Cues) {
		return
	}
	title, step := words.T("Caption"), words.T("change a caption")
	if p.Cues[i].Kind == lesson.Signal {
		title, step = words.T("Signal"), words.T("change a signal")
	}
	e.showCue(title, words.T("Change"), p.Cues[i], func(c lesson.Cue) { e.session.ChangeCue(step, i, c) })
}

func (e *Editor) showCue(title, confirm string, c lesson.Cue, accept func(lesson.Cue)) {
	f := &cueForm{session: e.session, cue: c, accept: accept}
	f.text, f.lasts = filledEntry(c.Text), filledEntry(strconv.FormatFloat(float64(e.session.CueLasts(c)), 'f', 2, 64))
	items := []*widget.FormItem{widget.NewFormItem(words.T("Begins"), widget.NewLabel(words.When(c.Span.From)))}
	if c.Kind == lesson.Signal {
		items = append(items, f.signalItems()...)
		items = append(items, widget.NewFormItem(words.T("Answer"), f.text))
	} else {
		items = append(items, widget.NewFormItem(words.T("Text"), f.text))
	}
	items = append(items, widget.NewFormItem(words.T("Shown for (s)"), f.lasts))
	q := e.askWith(title, widget.NewForm(items...), answer{label: words.T("Cancel")}, answer{label: confirm, do: f.take})
	q.size(560, 220).focus(f.text)
	e.trace.say("asking a cue")
}

// signalItems ask who shows the signal and what it says.
func (f *cueForm) signalItems() []*widget.FormItem {
	l := f.session.Lesson()
	names := make([]string, len(game.Players))
	for i, id := range game.Players {
		names[i] = l.NameOf(id)
	}
	f.giver = panel.NewDropdown(names, nil)
	f.giver.SetSelectedIndex(int(f.cue.Giver))
	says := make([]string, len(meanings))
	for i, m := range meanings {
		says[i] = words.Meaning(m)
	}
	f.meaning = panel.NewDropdown(says, nil)
	for i, m := range meanings {
		if m == f.cue.Meaning {
			f.meaning.SetSelectedIndex(i)
		}
	}
	return []*widget.FormItem{widget.NewFormItem(words.T("Shown by"), f.giver), widget.NewFormItem(words.T("Says"), f.meaning)}
}

// take accepts what is typed; a caption without a word is not taken.
func (f *cueForm) take() {
	if c := f.read(); c.Kind == lesson.Signal || c.Text != "" {
		f.accept(c)
	}
}

// read is the cue as it is typed; a time that is no number leaves it as it was.
func (f *cueForm) read() lesson.Cue {
	c := f.cue
	c.Text = cut(strings.TrimSpace(f.text.Text), lesson.MaxText)
	if f.giver != nil {
		c.Giver = game.Player(f.giver.SelectedIndex())
		c.Reader, c.Meaning = c.Giver.Partner(), meanings[f.meaning.SelectedIndex()]
	}
	long, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(f.lasts.Text), ",", ".", 1), 64)
	if was := f.session.CueLasts(c); err == nil && abs(units.Seconds(long)-was) > 0.005 {
		c = f.session.Lasting(c, units.Seconds(long))
	}
	return c
}

func abs(t units.Seconds) units.Seconds { return max(t, -t) }
