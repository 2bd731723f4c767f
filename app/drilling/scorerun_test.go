package drilling

import (
	"testing"

	"homeside/model/court"
	"homeside/model/drill"
)

func scoreRunOf(t *testing.T) *scoreRun {
	t.Helper()
	r, err := newScoreRun(drill.ScoreOptions{Team: court.Far, Seed: 5})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// A question is judged when both parts are answered, in either order; an answer
// can be changed before.
func TestScoreRun(t *testing.T) {
	r := scoreRunOf(t)
	a := r.now().ask.Answer()
	r.stands(a.Right.Partner())
	r.stands(a.Right)
	if r.now().outcome != asked {
		t.Errorf("half answered it is %v", r.now().outcome)
	}
	r.serves(a.Server)
	if r.now().outcome != right || r.drill.Streak().Run != 1 {
		t.Errorf("both right: %v, %+v", r.now().outcome, r.drill.Streak())
	}
	r.serves(a.Server.Partner())
	r.step()
	a = r.now().ask.Answer()
	r.serves(a.Server)
	r.stands(a.Right.Partner())
	if v := r.now().verdict; r.now().outcome != wrong || !v.Server || v.Places || r.drill.Streak() != (drill.Streak{Asked: 2, Right: 1, Best: 1}) {
		t.Errorf("one right: %v, %+v, %+v", r.now().outcome, v, r.drill.Streak())
	}
}

// An answer by half is dropped where the answer is shown, and the pair says
// whether it was known.
func TestScoreShown(t *testing.T) {
	r := scoreRunOf(t)
	r.serves(r.now().ask.Answer().Server.Partner())
	r.step()
	if q := r.now(); q.outcome != shown || q.server != nil || r.drill.Streak().Asked != 0 {
		t.Errorf("shown: %v, answered %v, %+v", q.outcome, q.server, r.drill.Streak())
	}
	r.say(false)
	if q := r.now(); q.outcome != wrong || q.verdict.Server || q.verdict.Places || r.drill.Streak().Asked != 1 {
		t.Errorf("not known: %v, %+v, %+v", q.outcome, q.verdict, r.drill.Streak())
	}
	r.step()
	r.step()
	r.say(true)
	if r.now().outcome != right || r.drill.Streak() != (drill.Streak{Asked: 2, Right: 1, Run: 1, Best: 1}) {
		t.Errorf("known: %v, %+v", r.now().outcome, r.drill.Streak())
	}
}
