package words

import (
	"errors"
	"testing"

	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Every kind that can be written has a title and says what is done, on the serve
// and on the return; no two say the same.
func TestKindsAreSaid(t *testing.T) {
	seen := map[string]formation.Kind{}
	for _, k := range formation.Kinds {
		if KindTitle(k) == "" {
			t.Errorf("KindTitle(%v) is empty", k)
		}
		for _, serves := range []bool{true, false} {
			does := KindDoes(k, serves)
			if other, ok := seen[does]; does == "" || ok && other != k {
				t.Errorf("KindDoes(%v, %v) = %q, want words of its own", k, serves, does)
			}
			seen[does] = k
		}
	}
	if got, want := len(ServesTo()), len(formation.ServesTo); got != want {
		t.Errorf("%d places of a serve are said, want %d", got, want)
	}
}

func TestFormationRefused(t *testing.T) {
	l := lesson.Lesson{}.WithPlayer(game.Near1, lesson.Player{Name: "Ivo"}).WithPlayer(game.Near2, lesson.Player{Name: "Mara"})
	for _, c := range []struct{ err, want string }{
		{"near1 and near2 both want the left side: one of them has to take the other", "Ivo and Mara both want the left side: one of them has to take the other."},
		{"far1 already stands there", "Far1 already stands there."},
	} {
		if got := FormationRefused(errors.New(c.err), l); got != c.want {
			t.Errorf("FormationRefused(%q) = %q, want %q", c.err, got, c.want)
		}
	}
}

func TestTellSentence(t *testing.T) {
	l := lesson.Lesson{}.WithPlayer(game.Near1, lesson.Player{Name: "Ivo"}).WithPlayer(game.Near2, lesson.Player{Name: "Mara"})
	l.Plays = make([]lesson.Play, 3)
	l.Plays[1].Situation.Serving = court.Far
	late := formation.Sign{Shows: true, Before: 0.31, Use: formation.TooLateToUse, Who: game.Near2}
	early := formation.Sign{Shows: true, At: -1, Use: formation.ShowsAtServe, Who: game.Near1}
	for _, c := range []struct {
		tell  formation.Tell
		other int
		want  string
	}{
		{formation.Tell{}, 1, "Beside play 2, at another score: the two plays look alike to the end."},
		{formation.Tell{}, 2, "Beside play 3: the two plays look alike to the end."},
		{formation.Tell{Place: late}, 2, "Beside play 3: Mara's place shows 0.31 s before they hit: seen, too late to use."},
		{formation.Tell{Place: late, Facing: early}, 2, "Beside play 3: Mara's place shows 0.31 s before they hit: seen, too late to use; Ivo's facing shows before the serve."},
	} {
		if got := TellSentence(l, c.tell, 0, c.other); got != c.want {
			t.Errorf("TellSentence(%+v) = %q, want %q", c.tell, got, c.want)
		}
	}
}
