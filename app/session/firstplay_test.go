package session_test

import (
	"errors"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/model/rally"
	"homeside/model/rules"
)

func pairOf(call string, returns bool, lead int, g plan.Goal, about int) session.PairStart {
	p := session.PairStart{Goal: g, About: about, Call: call, Returns: returns, Lead: lead}
	p.Players = [2]lesson.Player{{Name: "Ana", Hand: lesson.RightHanded}, {Name: "Luis", Hand: lesson.LeftHanded}}
	return p
}

// Whatever a pair says, its first play is at that score, led by the player
// named, legal, and brings both to the sides that the goal asks for.
func TestFirstLesson(t *testing.T) {
	for _, call := range []string{"0-0-2", "0-0-1", "4-7-2", "3-3-1", "10-9-1"} {
		for _, returns := range []bool{false, true} {
			for lead := 1; lead <= 2; lead++ {
				p := pairOf(call, returns, lead, plan.ForehandsMiddle, 0)
				l, w, err := session.FirstLesson(p)
				if errors.Is(err, session.ErrNotThere) {
					continue // not everybody can serve or receive there: counted below
				}
				if err != nil {
					t.Errorf("FirstLesson(%+v) = %v", p, err)
					continue
				}
				checkFirst(t, l, p)
				if w.Situation.Lead() != game.PlayerOf(court.Near, lead) {
					t.Errorf("at %s player %d was to lead, %v does", call, lead, w.Situation.Lead())
				}
			}
		}
	}
}

func checkFirst(t *testing.T, l lesson.Lesson, p session.PairStart) {
	t.Helper()
	if problems := lesson.Validate(l); len(problems) > 0 {
		t.Errorf("the lesson at %s is out of bounds: %v", p.Call, problems)
	}
	if got := l.Plays[0].Situation.Call.String(); got != p.Call || len(l.Plays) != 1 {
		t.Errorf("%d plays, the first at %s, want one at %s", len(l.Plays), got, p.Call)
	}
	if l.Player(game.Near1).Serving != lesson.WantLeft || l.Player(game.Near2).Serving != lesson.WantRight {
		t.Errorf("forehands in the middle: %v and %v, want left and right", l.Player(game.Near1).Serving, l.Player(game.Near2).Serving)
	}
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	if all := rules.Check(r, l); finding.Faults(all) {
		t.Errorf("at %s, returns %v, led by %d: faults %+v", p.Call, p.Returns, p.Lead, all)
	}
	if q, err := l.QueryOf(l.Plays[0]).Questions(); err != nil || len(q) > 1 {
		t.Errorf("at %s something is still asked: %v, %v", p.Call, q, err)
	}
	left, right := r.Tracks[game.Near1].RunAt(r.To).Place, r.Tracks[game.Near2].RunAt(r.To).Place
	if left.X >= 0 || right.X <= 0 {
		t.Errorf("at %s, returns %v, led by %d: they end at %v and %v, want left and right", p.Call, p.Returns, p.Lead, left, right)
	}
}

// At most scores either can lead, since nobody has said who started.
func TestEitherCanLead(t *testing.T) {
	for _, call := range []string{"0-0-2", "4-7-1", "4-7-2"} {
		for lead := 1; lead <= 2; lead++ {
			if _, _, err := session.FirstLesson(pairOf(call, false, lead, plan.ForehandsMiddle, 0)); err != nil {
				t.Errorf("%s served by %d: %v", call, lead, err)
			}
		}
	}
}

func TestFirstLessonSaysWhatIsWrong(t *testing.T) {
	for _, p := range []session.PairStart{
		pairOf("", false, 1, plan.ForehandsMiddle, 0), pairOf("4-7", false, 1, plan.ForehandsMiddle, 0), pairOf("11-3-1", false, 1, plan.ForehandsMiddle, 0),
		pairOf("0-0-2", false, 1, plan.OnTheLeft, 0),
	} {
		if l, _, err := session.FirstLesson(p); err == nil || len(l.Plays) > 0 {
			t.Errorf("FirstLesson(%+v) = %d plays, want an error", p, len(l.Plays))
		}
	}
}
