package plan

import (
	"errors"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// A right-hander's forehand is in the middle on the left, a left-hander's on the
// right (common practice of the trade).
func TestWants(t *testing.T) {
	right, left := lesson.RightHanded, lesson.LeftHanded
	const l, r = lesson.WantLeft, lesson.WantRight
	one, two, other := game.Near1, game.Near2, game.Far1
	for _, c := range []struct {
		hands [2]lesson.Hand
		goal  Goal
		x     *game.Player
		want  [2]lesson.Want
		err   error
	}{
		{[2]lesson.Hand{right, left}, ForehandsMiddle, nil, [2]lesson.Want{l, r}, nil},
		{[2]lesson.Hand{left, right}, ForehandsMiddle, nil, [2]lesson.Want{r, l}, nil},
		{[2]lesson.Hand{right, right}, ForehandsMiddle, &two, [2]lesson.Want{r, l}, nil},
		{[2]lesson.Hand{left, left}, ForehandsMiddle, &two, [2]lesson.Want{l, r}, nil},
		{[2]lesson.Hand{right, right}, ForehandsMiddle, nil, [2]lesson.Want{}, ErrGoal},
		{[2]lesson.Hand{right, right}, OnTheLeft, &one, [2]lesson.Want{l, r}, nil},
		{[2]lesson.Hand{right, right}, OnTheLeft, nil, [2]lesson.Want{}, ErrGoal},
		{[2]lesson.Hand{right, right}, Hide, &one, [2]lesson.Want{r, l}, nil},
		{[2]lesson.Hand{right, left}, Hide, &one, [2]lesson.Want{l, r}, nil},
		{[2]lesson.Hand{right, right}, Hide, &other, [2]lesson.Want{}, ErrGoal},
		{[2]lesson.Hand{right, left}, LessRunning, nil, [2]lesson.Want{}, nil},
	} {
		p := Pair{Team: court.Near}
		for i, h := range c.hands {
			p.Lesson = p.Lesson.WithPlayer(game.PlayerOf(court.Near, i+1), lesson.Player{Hand: h})
		}
		got, err := p.Wants(c.goal, c.x)
		if got != c.want || !errors.Is(err, c.err) {
			t.Errorf("hands %v, %v of %v: %v, %v, want %v, %v", c.hands, c.goal, c.x, got, err, c.want, c.err)
		}
		if err == nil && p.With(got).Check() != nil {
			t.Errorf("hands %v, %v: the sides %v clash", c.hands, c.goal, got)
		}
	}
}

// A right- and a left-hander reach more of the middle with a forehand where the
// goal puts them; the court they reach is the same for two alike pairs of legs.
func TestWorth(t *testing.T) {
	p := Pair{Team: court.Far, Policy: Full()}
	p.Lesson = p.Lesson.WithPlayer(game.Far2, lesson.Player{Hand: lesson.LeftHanded})
	wants, err := p.Wants(ForehandsMiddle, nil)
	if err != nil {
		t.Fatal(err)
	}
	plan := mustPlan(t, game.Settings{}, p.With(wants), Chances{0.5, 0.5})
	w, err := plan.Worth()
	if err != nil || !(w.With.Forehand > w.Without.Forehand) || off(w.With.Court, w.Without.Court) || !(w.With.Court > 0.5) {
		t.Errorf("worth %+v, %v, want more forehands in the middle and as much of the court", w, err)
	}
	set, err := p.coverWith(game.Far2)
	if err != nil || off(w.With.Forehand, set.Forehand) || off(w.With.Court, set.Court) {
		t.Errorf("a pair that stacks always reaches %+v, %v, want that of the wanted sides %+v", w.With, err, set)
	}
	none := mustPlan(t, game.Settings{}, Pair{Team: court.Far, Lesson: p.Lesson}, Chances{0.5, 0.5})
	if v, err := none.Worth(); err != nil || v.With != v.Without {
		t.Errorf("a pair that never stacks: %+v, %v, want the same with and without", v, err)
	}
}
