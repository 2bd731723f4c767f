package drilling

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/looks"
	"homeside/app/panel"
	"homeside/app/session"
	"homeside/canvas/look"
	"homeside/words"
)

// Options are what the pages need of the window.
type Options struct {
	Session *session.Session
	Prefs   fyne.Preferences                 // keeps what was set up last
	Reduced func() bool                      // nothing is to move by itself
	Painted func()                           // called when a question is painted, before that is said; nil for nobody
	Say     func(format string, args ...any) // told what happens; nil for nobody
}

func (o Options) say(format string, args ...any) {
	if o.Say != nil {
		o.Say(format, args...)
	}
}

// course is a drill under way.
type course interface {
	board() board
	rows() []row // what can be answered now
	step()       // to the answer, or to the next question
	back() bool  // to the question before
	first() bool // there is none
	last() bool  // the present question is looked at
	open() bool
	name() string // of what is looked at, for a trace
}

// sheet is a page of a drill: it is set up, and then under way.
type sheet struct {
	options Options
	topic   string // "signals", "scores"
	content *fyne.Container
	form    fyne.CanvasObject
	drill   fyne.CanvasObject
	start   *heard.Button
	wrong   *widget.Label // why it cannot start
	begin   func() (course, error)

	course             course // nil while it is set up
	stage              *stage
	answers            *answers
	next, before, edit *heard.Button
	keys               *widget.Label

	rename func() // says in the form what the lesson says
	reseed func() // puts the next seed into the form
	named  named

	grown float32 // see larger
	sized []*container.ThemeOverride
}

// newSheet is a page that is being set up. begin makes the drill as it is set up.
func newSheet(topic string, o Options, begin func() (course, error)) *sheet {
	s := &sheet{options: o, topic: topic, begin: begin, wrong: widget.NewLabel(""), keys: widget.NewLabel(""), grown: 1}
	s.stage = newStage(s.painted)
	s.answers = newAnswers(&s.grown)
	s.wrong.Importance = widget.DangerImportance
	s.wrong.Wrapping = fyne.TextWrapWord
	s.wrong.Alignment, s.wrong.TextStyle.Bold = fyne.TextAlignCenter, true
	line := panel.NewLineOrTip(s.keys, widget.NewLabel(""))
	line.Centre()
	s.start = heard.NewButton(words.T("Start the drill"), s.run)
	s.start.Importance = widget.HighImportance
	s.next = heard.NewButton("", s.step)
	s.next.Importance = widget.HighImportance
	s.before = heard.NewButton(words.T("Question before"), s.back).Tell(line.Tell)
	s.before.Then = func() fyne.Focusable { return s.next }
	s.edit = heard.NewButton(words.T("Set up"), s.setUp)
	foot := container.NewBorder(nil, nil, s.edit, nil, container.NewCenter(container.NewHBox(s.before, s.next)))
	s.drill = container.NewBorder(nil, container.NewVBox(s.answers.box, s.enlarged(foot, buttonText), s.enlarged(line.Box, 1)), nil, nil, s.stage)
	s.sized = append(s.sized, s.answers.box)
	s.drill.Hide()
	return s
}

// enlarged is a part with larger letters, that grow with the page.
func (s *sheet) enlarged(part fyne.CanvasObject, text float32) fyne.CanvasObject {
	o := container.NewThemeOverride(part, larger{text: text, grown: &s.grown})
	s.sized = append(s.sized, o)
	return o
}

// fit has letters grow with the page. It is called while the page is laid out, so
// that it lays its parts out later.
func (s *sheet) fit(size fyne.Size) {
	if k := grownFor(size); k != s.grown {
		s.grown = k
		fyne.Do(func() {
			for _, o := range s.sized {
				o.Refresh()
			}
		})
	}
}

// layOut puts the form and the drill into one place. rename says in the form what
// the lesson says, reseed which seed is the next.
func (s *sheet) layOut(form fyne.CanvasObject, rename, reseed func()) {
	s.rename, s.reseed = rename, reseed
	foot := container.NewVBox(s.enlarged(s.wrong, 1), s.enlarged(container.NewCenter(s.start), buttonText))
	s.form = container.NewBorder(nil, foot, nil, nil, container.NewVScroll(s.enlarged(form, 1)))
	s.content = container.New(whole{s.fit}, s.form, s.drill)
	s.tell(nil)
}

// named is what the names in the form and the hands in it were made of.
type named struct {
	revision int
	look     *look.Look
}

// Refresh says in the form what the lesson says now. A drill under way goes on
// with the lesson as it was.
func (s *sheet) Refresh() {
	n := named{s.options.Session.Revision(), looks.Now()}
	if n != s.named {
		s.named = n
		s.rename()
		s.stage.Refresh()
	}
}

// Content is the page.
func (s *sheet) Content() fyne.CanvasObject { return s.content }

// Close stops what moves.
func (s *sheet) Close() {
	s.stage.show(board{})
	s.options.say("drill %s closed", s.topic)
}

// run starts the drill as it is set up, or says why it cannot.
func (s *sheet) run() {
	c, err := s.begin()
	s.tell(err)
	if err != nil {
		s.options.say("drill %s refused", s.topic)
		return
	}
	s.course = c
	s.form.Hide()
	s.drill.Show()
	s.moveFocus(s.next)
	s.refresh()
}

func (s *sheet) tell(err error) {
	text := ""
	if err != nil {
		text = words.Sentence(err)
	}
	s.wrong.SetText(text)
	visible(s.wrong, text != "")
}

// setUp goes back to what is set up; the drill under way ends.
func (s *sheet) setUp() {
	if s.course == nil {
		return
	}
	s.course = nil
	s.reseed()
	s.stage.show(board{})
	s.drill.Hide()
	s.form.Show()
	s.moveFocus(s.start)
	s.options.say("drill %s set up", s.topic)
}

func (s *sheet) step() {
	if s.course == nil {
		s.run()
		return
	}
	s.course.step()
	s.refresh()
}

func (s *sheet) back() {
	if s.course != nil && s.course.back() {
		s.refresh()
	}
}

func (s *sheet) reduced() bool { return s.options.Reduced != nil && s.options.Reduced() }

// refresh shows the question looked at.
func (s *sheet) refresh() {
	c := s.course
	s.answers.show(c.rows())
	s.next.SetText(nextText(c))
	s.stage.show(c.board())
	s.keys.SetText(s.keysLine())
	s.before.Unless(noneBefore(c))
	s.keepFocus()
	s.options.say("drill %s %s", s.topic, c.name())
}

func nextText(c course) string {
	switch {
	case !c.last():
		return words.T("Question after")
	case c.open():
		return words.T("Show the answer")
	}
	return words.T("Next question")
}

// painted is called from within the first paint of a board.
func (s *sheet) painted() {
	if s.course != nil {
		if s.options.Painted != nil {
			s.options.Painted()
		}
		s.options.say("painted drill %s %s", s.topic, s.course.name())
	}
}

// Named are the controls by name, for tests of the window.
func (s *sheet) Named() map[string]fyne.CanvasObject {
	if s.course == nil {
		return map[string]fyne.CanvasObject{"drill.start": s.start}
	}
	named := map[string]fyne.CanvasObject{"drill.next": s.next, "drill.before": s.before, "drill.setup": s.edit}
	for i := range s.answers.shown {
		named["drill.answer"+strconv.Itoa(i+1)] = s.answers.button(i + 1)
	}
	return named
}
