package session_test

import (
	"errors"
	"reflect"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/finding"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/model/rally"
	"homeside/model/rules"
)

// pairs is a lesson of two named pairs: the near one wants near2 on the right.
func pairs(f game.Format) lesson.Lesson {
	l := served(f)
	for _, id := range game.Players {
		l = l.WithPlayer(id, lesson.Player{Name: "P" + id.String()})
	}
	l.Teams[court.Near].Starter, l.Teams[court.Far].Starter = 1, 1
	return plan.Pair{Lesson: l}.With([2]lesson.Want{lesson.WantLeft, lesson.WantRight}).Lesson
}

func asking(p plan.Policy) session.PlanAsk {
	return session.PlanAsk{Policy: p, Chances: plan.Chances{0.5, 0.5}}
}

func TestMatchPlan(t *testing.T) {
	s := session.New(pairs(game.SideOut), "", nil)
	m, err := s.MatchPlan(asking(plan.Full()))
	must(t, err)
	if len(m.Rows) != 8 || len(m.Plays) != 8 {
		t.Fatalf("MatchPlan has %d rows and %d plays, want 8: serving or receiving, even or odd, either player", len(m.Rows), len(m.Plays))
	}
	for i, r := range m.Rows {
		want := -1
		if r.Situation == (plan.Situation{Serving: true, Lead: game.Near1}) { // near1 serves 0-0-2 from the right
			want = 0
		}
		if m.Plays[i] != want {
			t.Errorf("the play of %+v is %d, want %d", r.Situation, m.Plays[i], want)
		}
	}
	if m.Worth.With.Forehand <= 0 || m.Stacks <= 0 {
		t.Errorf("full stacking: %v stacks, worth %+v, want more than nothing", m.Stacks, m.Worth)
	}
}

// The plan is that of the team and of the starting server that the lesson says.
func TestMatchPlanFollowsTheLesson(t *testing.T) {
	l := pairs(game.SideOut)
	l.Teams[court.Near].Starter = 2
	s := session.New(l, "", nil)
	m, err := s.MatchPlan(asking(plan.Full()))
	must(t, err)
	if !reflect.DeepEqual(m.Plan, m.Starters[1]) || m.Starters[0].Stacks <= m.Starters[1].Stacks {
		t.Errorf("near2 starts: %v stacks of %v and %v, want the second, fewer, since near2 wants the right", m.Stacks, m.Starters[0].Stacks, m.Starters[1].Stacks)
	}
	far, err := s.MatchPlan(session.PlanAsk{Team: court.Far, Chances: plan.Chances{0.6, 0.4}})
	must(t, err)
	if far.Rows[0].Lead.Team() != court.Far || far.Win >= 0.5 {
		t.Errorf("the far team's plan is of %v with %v to win, want a far player and less than a half", far.Rows[0].Lead, far.Win)
	}
}

func TestWriteMatch(t *testing.T) {
	for _, f := range game.Formats {
		for _, policy := range session.Policies {
			writeMatch(t, f, policy)
		}
	}
}

func writeMatch(t *testing.T, f game.Format, policy plan.Policy) {
	t.Helper()
	s := session.New(pairs(f), "", nil)
	before := s.Lesson()
	n, err := s.WriteMatch(asking(policy))
	must(t, err)
	m, err := s.MatchPlan(asking(policy))
	must(t, err)
	if n != len(m.Rows) || len(s.Lesson().Plays) != 1+n || s.PlayIndex() != 1 {
		t.Errorf("%v %+v: WriteMatch = %d with %d plays, shown %d; want %d, all behind the first, the first new one shown", f, policy, n, len(s.Lesson().Plays), s.PlayIndex(), len(m.Rows))
	}
	for i, r := range m.Rows {
		if want := 1 + i; m.Plays[i] != want {
			t.Errorf("%v %+v: the play of %+v is %d, want %d", f, policy, r.Situation, m.Plays[i], want)
		}
		noFault(t, s.Lesson(), m.Plays[i])
	}
	if got := lesson.Validate(s.Lesson()); got != nil {
		t.Errorf("%v %+v: Validate = %v, want nil", f, policy, got)
	}
	if n, err := s.WriteMatch(asking(policy)); n != 0 || err != nil {
		t.Errorf("%v %+v: written again: %d, %v, want nothing", f, policy, n, err)
	}
	s.Undo()
	if !reflect.DeepEqual(s.Lesson(), before) {
		t.Errorf("%v %+v: one Undo leaves %d plays, want the lesson as before", f, policy, len(s.Lesson().Plays))
	}
}

func noFault(t *testing.T, l lesson.Lesson, play int) {
	t.Helper()
	r, err := rally.Solve(l, play)
	must(t, err)
	for _, found := range rules.Check(r, l) {
		if found.Severity == finding.Fault {
			t.Errorf("%s: the rules find %s, want no fault", l.Plays[play].Title, found.ID)
		}
	}
}

// What cannot be planned is refused in one line, and nothing is written.
func TestWriteMatchRefuses(t *testing.T) {
	bothRight := plan.Pair{Lesson: pairs(game.SideOut)}.With([2]lesson.Want{lesson.WantRight, lesson.WantRight}).Lesson
	full := pairs(game.SideOut)
	for len(full.Plays) < lesson.MaxPlays-3 {
		full = edit.AddPlay(full, full.Plays[0])
	}
	for _, c := range []struct {
		name string
		l    lesson.Lesson
		ask  session.PlanAsk
		want error
	}{
		{"both want one side", bothRight, asking(plan.Full()), plan.ErrWants},
		{"a chance above 1", pairs(game.SideOut), session.PlanAsk{Chances: plan.Chances{1.5, 0}}, plan.ErrChance},
		{"no server ever wins", pairs(game.SideOut), session.PlanAsk{}, plan.ErrEndless},
		{"a poach as a policy", pairs(game.SideOut), asking(plan.Policy{Serve: lesson.Poached}), plan.ErrPolicy},
		{"no room in the lesson", full, asking(plan.Full()), session.ErrFull},
	} {
		s := session.New(c.l, "", nil)
		if n, err := s.WriteMatch(c.ask); n != 0 || !errors.Is(err, c.want) {
			t.Errorf("%s: WriteMatch = %d, %v, want 0, %v", c.name, n, err, c.want)
		}
		if name, ok := s.CanUndo(); ok {
			t.Errorf("%s: a refused match made the step %q", c.name, name)
		}
	}
}

// Where a hall has no room beside the court the plan says so and switches.
func TestWriteMatchWithoutRoom(t *testing.T) {
	l := pairs(game.SideOut)
	l.Venue.BesideSideline = 0.5
	s := session.New(l, "", nil)
	m, err := s.MatchPlan(asking(plan.Full()))
	must(t, err)
	instead := 0
	for _, r := range m.Rows {
		if r.Refused != "" {
			instead++
			if r.Formation == lesson.Stacked {
				t.Errorf("%+v is refused and stacked all the same", r.Situation)
			}
		}
	}
	if _, err := formation.Write(formation.Situation{Lesson: l, State: m.States[0].State, Team: court.Far}, lesson.Stacked); errors.Is(err, formation.ErrRefused) != (instead > 0) {
		t.Errorf("a stack of the returning pair without room: %v, but %d rows are played otherwise", err, instead)
	}
	if n, err := s.WriteMatch(asking(plan.Full())); n != len(m.Rows) || err != nil {
		t.Errorf("WriteMatch = %d, %v, want %d plays", n, err, len(m.Rows))
	}
}

func TestWantFor(t *testing.T) {
	left, one := lesson.LeftHanded, game.Near1
	lefty := func(number int) lesson.Lesson {
		l := pairs(game.SideOut)
		who := l.Player(game.PlayerOf(court.Near, number))
		who.Hand = left
		return l.WithPlayer(game.PlayerOf(court.Near, number), who)
	}
	for _, c := range []struct {
		name string
		l    lesson.Lesson
		goal plan.Goal
		who  *game.Player
		want [2]lesson.Want
	}{
		{"a left-hander on the right has the forehand in the middle", lefty(1), plan.ForehandsMiddle, nil, [2]lesson.Want{lesson.WantRight, lesson.WantLeft}},
		{"near1 on the left", lefty(1), plan.OnTheLeft, &one, [2]lesson.Want{lesson.WantLeft, lesson.WantRight}},
		{"nobody changes sides", lefty(1), plan.LessRunning, nil, [2]lesson.Want{}},
		{"near1 hidden: near2's forehand takes the middle from the left", pairs(game.SideOut), plan.Hide, &one, [2]lesson.Want{lesson.WantRight, lesson.WantLeft}},
	} {
		s := session.New(c.l, "", nil)
		must(t, s.WantFor(court.Near, c.goal, c.who))
		for number := 1; number <= 2; number++ {
			p := s.Lesson().Player(game.PlayerOf(court.Near, number))
			if want := c.want[number-1]; p.Serving != want || p.Receiving != want {
				t.Errorf("%s: player %d wants %v serving and %v receiving, want %v", c.name, number, p.Serving, p.Receiving, want)
			}
		}
		if _, stepped := s.CanUndo(); stepped != (s.Lesson().Teams != c.l.Teams) {
			t.Errorf("%s: a step %v for sides that changed %v", c.name, stepped, s.Lesson().Teams != c.l.Teams)
		}
	}
	s := session.New(pairs(game.SideOut), "", nil)
	if err := s.WantFor(court.Near, plan.ForehandsMiddle, nil); !errors.Is(err, plan.ErrGoal) {
		t.Errorf("WantFor(forehands in the middle) of two right-handers = %v, want %v", err, plan.ErrGoal)
	}
}

func TestParsePercent(t *testing.T) {
	for _, c := range []struct {
		text string
		want float64
	}{{"45", 0.45}, {" 45.5 % ", 0.455}, {"45,5", 0.455}, {"0", 0}, {"100%", 1}} {
		if got, err := session.ParsePercent(c.text); got != c.want || err != nil {
			t.Errorf("ParsePercent(%q) = %v, %v, want %v", c.text, got, err, c.want)
		}
	}
	for _, text := range []string{"", "-1", "100.1", "NaN", "Inf", "half", "4,5,5", "0x", "a very long text that nobody should see twice"} {
		if got, err := session.ParsePercent(text); !errors.Is(err, session.ErrPercent) || len(err.Error()) > 100 {
			t.Errorf("ParsePercent(%q) = %v, %v, want %v in one short line", text, got, err, session.ErrPercent)
		}
	}
}

// The goal and its play are one step: a stack where the score puts the partners
// on each other's sides, ordinary places where it does not.
func TestPlayForGoal(t *testing.T) {
	one, two := game.Near1, game.Near2
	for _, c := range []struct {
		team  court.End
		who   game.Player
		title string
	}{
		{court.Near, one, "0-0-2: stack, Pnear1 serves from the right"}, // near1 starts on the right and wants the left
		{court.Near, two, "0-0-2: ordinary, Pnear1 serves from the right"},
		{court.Far, game.Far1, "0-0-2: stack, Pfar1 receives from the right"},
	} {
		l := pairs(game.SideOut)
		s := session.New(l, "", nil)
		must(t, s.PlayForGoal(c.team, plan.OnTheLeft, &c.who))
		p, _ := s.Play()
		if p.Title != c.title || s.PlayIndex() != 1 || s.Lesson().Player(c.who).Serving != lesson.WantLeft {
			t.Errorf("%v on the left: play %d %q, wants %v; want 1 %q and the left", c.who, s.PlayIndex(), p.Title, s.Lesson().Player(c.who).Serving, c.title)
		}
		noFault(t, s.Lesson(), 1)
		s.Undo()
		if !reflect.DeepEqual(s.Lesson(), l) {
			t.Errorf("%v on the left: one Undo leaves %d plays, want the lesson as before", c.who, len(s.Lesson().Plays))
		}
	}
}

func TestPlayForGoalRefuses(t *testing.T) {
	unsaid := pairs(game.SideOut)
	unsaid.Plays[0].Situation.Call = game.Call{}
	for _, c := range []struct {
		name string
		l    lesson.Lesson
		goal plan.Goal
		want error
	}{
		{"nobody named", pairs(game.SideOut), plan.OnTheLeft, plan.ErrGoal},
		{"no score", unsaid, plan.LessRunning, session.ErrNoScore},
	} {
		s := session.New(c.l, "", nil)
		if err := s.PlayForGoal(court.Near, c.goal, nil); !errors.Is(err, c.want) {
			t.Errorf("%s: PlayForGoal = %v, want %v", c.name, err, c.want)
		}
		if name, ok := s.CanUndo(); ok {
			t.Errorf("%s: a refused goal made the step %q", c.name, name)
		}
	}
}
