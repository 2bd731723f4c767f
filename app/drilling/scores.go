package drilling

import (
	"strconv"

	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// Scores is the page of the score drill.
type Scores struct {
	*sheet
	form *scoreForm
}

// NewScores is the page, to be set up.
func NewScores(o Options) *Scores {
	s := &Scores{}
	s.sheet = newSheet("scores", o, s.begin)
	s.form = newScoreForm(o, s.run)
	s.layOut(s.form.box, s.form.refresh, func() { s.form.seed.SetText(seedOf(o.Prefs, "scores")) })
	return s
}

func (s *Scores) begin() (course, error) {
	o, err := s.form.read()
	if err != nil {
		return nil, err
	}
	run, err := newScoreRun(o)
	if err != nil {
		return nil, err
	}
	keepNextSeed(s.options.Prefs, "scores", o.Seed)
	return &scoreCourse{scoreRun: run, refresh: s.refresh, lesson: s.options.Session.Lesson(), team: o.Team}, nil
}

// scoreCourse is a score drill as it is shown.
type scoreCourse struct {
	*scoreRun
	refresh func()
	lesson  lesson.Lesson
	team    court.End
	film    *film // of the question looked at
	filmed  int   // which one that is, from 1
}

func (c *scoreCourse) answering(do func()) func() {
	return func() { do(); c.refresh() }
}

// rows are what can be answered now.
func (c *scoreCourse) rows() []row {
	t := c.now()
	switch {
	case !c.last():
		return nil
	case t.outcome == shown:
		return []row{{words.T("Was it right?"), []choice{
			{text: words.T("It was right"), do: c.answering(func() { c.say(true) })},
			{text: words.T("It was wrong"), do: c.answering(func() { c.say(false) })},
		}}}
	case t.outcome != asked:
		return nil
	}
	return []row{
		{words.T("Who serves?"), c.people(t.ask.State.Serving(), t.server, c.serves)},
		{words.T("Who of %s stands on the right?", onButton(words.Team(c.lesson, c.team))), c.people(c.team, t.right, c.stands)},
	}
}

// people are a pair as answers, the one given marked.
func (c *scoreCourse) people(team court.End, given *game.Player, answer func(game.Player)) []choice {
	var all []choice
	for n := 1; n <= 2; n++ {
		id := game.PlayerOf(team, n)
		all = append(all, choice{text: c.nameOf(id), chosen: given != nil && *given == id, do: c.answering(func() { answer(id) })})
	}
	return all
}

// nameOf is a player on a button: by the initials on the court where the partner
// would be called the same.
func (c *scoreCourse) nameOf(id game.Player) string {
	name := onButton(c.lesson.NameOf(id))
	if name == onButton(c.lesson.NameOf(id.Partner())) {
		return c.lesson.Player(id).Letters()
	}
	return name
}

// board is the question looked at, or its answer on the court.
func (c *scoreCourse) board() board {
	t := c.now()
	b := board{foot: words.DrillCount(c.drill.Streak())}
	if t.outcome == asked {
		b.lines = c.question(t.ask)
		return b
	}
	b.film = c.filmOf(t.ask)
	b.lines = c.answer(t)
	return b
}

func (c *scoreCourse) question(a drill.ScoreAsk) []line {
	return []line{
		{words.DrillPairs(c.lesson, a.State), 15, false, quiet},
		{words.ScoreLed(c.lesson, a), 20, false, plain},
		{words.T("%s calls the score:", words.Capital(words.Team(c.lesson, a.State.Serving()))), 20, false, quiet},
		{a.State.Call().String(), 104, true, plain},
	}
}

func (c *scoreCourse) answer(t *scoreTurn) []line {
	a := t.ask.Answer()
	var all []line
	if t.judged() {
		all = append(all, verdictLine(t.outcome))
	}
	return append(all,
		line{t.ask.State.Call().String(), 44, true, plain},
		line{c.served(t, a), 22, true, c.toneOf(t, t.verdict.Server)},
		line{c.stood(t, a), 22, true, c.toneOf(t, t.verdict.Places)},
		line{words.ScoreServerWhy(c.lesson, t.ask), 15, false, quiet},
		line{words.ScorePlacesWhy(c.lesson, t.ask), 15, false, quiet},
	)
}

// toneOf is red for a part that was answered wrong.
func (c *scoreCourse) toneOf(t *scoreTurn, known bool) tone {
	if t.judged() && !known {
		return bad
	}
	return plain
}

func (c *scoreCourse) served(t *scoreTurn, a drill.ScoreAnswer) string {
	if t.server != nil && *t.server != a.Server {
		return words.T("%s serves, not %s.", c.lesson.NameOf(a.Server), c.lesson.NameOf(*t.server))
	}
	return words.T("%s serves.", c.lesson.NameOf(a.Server))
}

func (c *scoreCourse) stood(t *scoreTurn, a drill.ScoreAnswer) string {
	if t.right != nil && *t.right != a.Right {
		return words.T("%s is on the right, not %s.", c.lesson.NameOf(a.Right), c.lesson.NameOf(*t.right))
	}
	return words.T("%s is on the right.", c.lesson.NameOf(a.Right))
}

// filmOf is everybody at their places; nil where that cannot be drawn.
func (c *scoreCourse) filmOf(a drill.ScoreAsk) *film {
	if c.filmed == c.at+1 {
		return c.film
	}
	c.film, c.filmed = nil, c.at+1
	if r, err := placesAt(c.lesson, a.State); err == nil {
		c.film = newStill(r, c.lesson.Venue.Surface(), c.team)
	}
	return c.film
}

// name is the question looked at, for a trace.
func (c *scoreCourse) name() string {
	a := c.now().ask
	return traceName(c.at, a.State.Call().String()+" "+a.Answer().Server.String()+" "+a.Answer().Right.String()+" half="+strconv.FormatBool(c.half()), c.now().outcome, c.drill.Streak())
}

// half says whether one of the two is answered.
func (c *scoreCourse) half() bool {
	t := c.now()
	return t.outcome == asked && (t.server != nil || t.right != nil)
}
