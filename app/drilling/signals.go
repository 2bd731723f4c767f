package drilling

import (
	"homeside/model/drill"
	"homeside/model/lesson"
	"homeside/words"
)

// Signals is the page of the signal drill.
type Signals struct {
	*sheet
	form *signalForm
}

// NewSignals is the page, to be set up.
func NewSignals(o Options) *Signals {
	s := &Signals{}
	s.sheet = newSheet("signals", o, s.begin)
	s.form = newSignalForm(o, s.run)
	s.layOut(s.form.box, s.form.refresh, func() { s.form.seed.SetText(seedOf(o.Prefs, "signals")) })
	return s
}

// begin is the drill as it is set up.
func (s *Signals) begin() (course, error) {
	o, err := s.form.read()
	if err != nil {
		return nil, err
	}
	run, err := newSignalRun(o)
	if err != nil {
		return nil, err
	}
	s.form.keep(o)
	return &signalCourse{signalRun: run, refresh: s.refresh, reduced: s.reduced,
		lesson: s.options.Session.Lesson(), movements: newMovements(s.options.Session, s.form.team(), s.form.serves())}, nil
}

// signalCourse is a signal drill as it is shown.
type signalCourse struct {
	*signalRun
	refresh   func() // after an answer
	reduced   func() bool
	lesson    lesson.Lesson
	movements *movements
	film      *film // of the question looked at
	filmed    int   // which one that is, from 1
}

// answering gives an answer and shows what comes of it.
func (c *signalCourse) answering(do func()) func() {
	return func() { do(); c.refresh() }
}

// rows are what can be answered now: the sign, or whether it was known.
func (c *signalCourse) rows() []row {
	switch {
	case !c.last():
		return nil
	case c.now().outcome == shown:
		return []row{{words.T("Was it right?"), c.known()}}
	case c.now().outcome != asked:
		return nil
	case c.options.Role == drill.Reader:
		return []row{{"", c.moves()}}
	}
	return []row{{"", c.signs()}}
}

func (c *signalCourse) known() []choice {
	return []choice{
		{text: words.T("It was right"), do: c.answering(func() { c.say(true) })},
		{text: words.T("It was wrong"), do: c.answering(func() { c.say(false) })},
	}
}

// asks says whether a meaning is ever asked.
func (c *signalCourse) asks(m lesson.Meaning) bool { return m != lesson.Fake || c.options.Fake > 0 }

func (c *signalCourse) moves() []choice {
	var all []choice
	for m := lesson.Stay; m <= lesson.Fake; m++ {
		if c.asks(m) {
			all = append(all, choice{text: words.MeaningName(m), do: c.answering(func() { c.read(m) })})
		}
	}
	return all
}

func (c *signalCourse) signs() []choice {
	var all []choice
	for sign := drill.Fist; sign < drill.Unclear; sign++ {
		if c.asks(c.options.Meanings.Of(sign)) {
			all = append(all, choice{text: words.SignName(sign), icon: icon(sign), do: c.answering(func() { c.give(sign) })})
		}
	}
	return append(all, choice{text: words.T("Made it for real"), do: c.answering(c.reveal)})
}

// board is the question looked at, or its answer.
func (c *signalCourse) board() board {
	t := c.now()
	b := board{foot: words.DrillCount(c.drill.Streak())}
	reader := c.options.Role == drill.Reader
	if t.outcome == asked {
		b.lines = c.question(reader)
		if reader {
			b.sign = &t.ask.Sign
		}
		return b
	}
	b.sign = &t.ask.Sign
	b.lines = c.answer(t)
	if reader {
		b.film = c.filmOf(t)
	}
	return b
}

func (c *signalCourse) question(reader bool) []line {
	lead := c.movements.lead()
	if reader {
		return []line{
			{words.T("Just before the serve"), 18, false, quiet},
			{words.T("%s, what does %s ask for?", c.lesson.NameOf(lead), c.lesson.NameOf(lead.Partner())), 32, true, plain},
			{words.T("Unsure means stay."), 16, false, quiet},
		}
	}
	return []line{
		{words.T("%s, show %s behind your back:", c.lesson.NameOf(lead.Partner()), c.lesson.NameOf(lead)), 22, false, quiet},
		{words.MeaningName(c.now().ask.Meaning), 96, true, plain},
	}
}

// answer says whether it was right, what the sign meant, and what is done then.
func (c *signalCourse) answer(t *signalTurn) []line {
	what := words.MeaningName(t.ask.Meaning)
	said := line{what, 46, true, plain}
	verdict := line{words.SignMeans(t.ask), 19, false, plain}
	all := []line{said, verdict, {words.SignalDoes(t.ask.Meaning, c.movements.serves), 17, false, quiet}}
	if t.judged() {
		all = append([]line{verdictLine(t.outcome)}, all...)
	}
	if t.outcome == wrong && !t.own {
		all = append(all, line{c.mistake(t), 17, false, bad})
	}
	if m := c.movements.of(t.ask.Meaning); m.rally == nil && c.options.Role == drill.Reader {
		all = append(all, line{m.why, 14, false, quiet})
	}
	return all
}

func verdictLine(o outcome) line {
	if o == right {
		return line{words.T("Right."), 34, true, good}
	}
	return line{words.T("Wrong."), 34, true, bad}
}

// mistake says what was answered instead.
func (c *signalCourse) mistake(t *signalTurn) string {
	if c.options.Role == drill.Reader {
		return words.T("The answer was: %s.", words.MeaningName(t.move))
	}
	return words.T("The sign was: %s.", words.SignName(t.sign))
}

// filmOf is the movement that a question's sign asks for; nil where there is none.
func (c *signalCourse) filmOf(t *signalTurn) *film {
	if c.filmed == c.at+1 {
		return c.film
	}
	c.film, c.filmed = nil, c.at+1
	if m := c.movements.of(t.ask.Meaning); m.rally != nil {
		c.film = newFilm(m.rally, c.lesson.Venue.Surface(), c.movements.lead(), c.reduced())
	}
	return c.film
}

var outcomeNames = [...]string{"asked", "shown", "right", "wrong"}

// name is the question looked at, for a trace: "3 fist asked run=2".
func (c *signalCourse) name() string {
	return traceName(c.at, c.now().ask.Sign.String()+" "+c.now().ask.Meaning.String(), c.now().outcome, c.drill.Streak())
}
