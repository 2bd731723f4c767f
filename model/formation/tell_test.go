package formation

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

// Common practice: a stack shows before the serve, a switch never before the own
// side's contact.
func TestTellsOfTheKinds(t *testing.T) {
	for _, pace := range movement.Presets {
		for _, serves := range [2]bool{true, false} {
			for _, kind := range Kinds {
				s := plain(kind, serves)
				s.pace = pace
				w := s.write(t)
				tell, ok, err := w.Tell(TellOptions{})
				if err != nil || ok != (kind != lesson.Ordinary) {
					t.Fatalf("%v, serves %v: Tell says %v, %v", kind, serves, ok, err)
				}
				own := w.Rally.Strokes[w.Answer.Shot].At
				switch p := tell.Place; {
				case kind == lesson.Stacked && (p.Use != ShowsAtServe || p.At != w.Rally.From):
					t.Errorf("%s stack, serves %v: %+v, want from the start, before the serve", pace.Key, serves, p)
				case (kind == lesson.Switched || kind == lesson.Stayed) && (!p.Shows || p.At <= own):
					t.Errorf("%s %v, serves %v: %+v, want after the own contact at %.2f s", pace.Key, kind, serves, p, own)
				case kind == lesson.Poached && p.Shows && p.At <= w.Rally.Strokes[third].At:
					t.Errorf("%s poach, serves %v: %+v, want after the third at %.2f s", pace.Key, serves, p, w.Rally.Strokes[third].At)
				}
			}
		}
	}
}

// runner is a rally in which near1 stands, then shuffles 6 ft from a time on.
func runner(t *testing.T, leave units.Seconds, facing units.Degrees) *rally.Rally {
	t.Helper()
	w := plain(lesson.Ordinary, true).write(t)
	l := lessonOf(w)
	at, start := lesson.At(lesson.ContactOf(2)), lesson.Anchor{Offset: leave}
	from := w.Play.AtServe(game.Near1)
	to := lesson.Keyframe{At: at, Place: from.Place.Sub(court.Pt(6, 0)), Facing: facing, Leave: &start}
	l.Plays[0] = w.Play.WithTrack(game.Near1, []lesson.Keyframe{from, to})
	l.Plays[0].Shots[2].By = game.Near2
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// The moment is the one at which the leg itself has done a foot.
func TestTellIsTheFirstFoot(t *testing.T) {
	still, runs := runner(t, 3.4, 0), runner(t, 0.9, 0)
	tell := TellOf(runs, still, court.Near, TellOptions{})
	leg := runs.Tracks[game.Near1].Legs[0]
	done, _ := leg.Profile.At(tell.Place.At - leg.From)
	if !tell.Place.Shows || tell.Place.Who != game.Near1 || math.Abs(float64(done.Feet()-1)) > 1e-6 {
		t.Errorf("shows at %+v after %v ft of the run, want after 1 ft", tell.Place, done.Feet())
	}
	if want := runs.Strokes[1].At; tell.Place.Before != want-tell.Place.At {
		t.Errorf("shows at %v, %v before they hit; want before the return at %v", tell.Place.At, tell.Place.Before, want)
	}
	more := TellOf(runs, still, court.Near, TellOptions{Apart: 2})
	if !(more.Place.At > tell.Place.At) {
		t.Errorf("2 ft show at %v, 1 ft at %v: want later", more.Place.At, tell.Place.At)
	}
	if other := TellOf(runs, still, court.Far, TellOptions{}); other.Place.Shows {
		t.Errorf("the other pair shows %+v", other.Place)
	}
	if same := TellOf(runs, runs, court.Near, TellOptions{}); same.Place.Use != NeverShows || same.Facing.Shows {
		t.Errorf("a play against itself: %+v", same)
	}
}

func TestTellByFacing(t *testing.T) {
	a, b := runner(t, 0.9, 0), runner(t, 0.9, 300)
	tell := TellOf(a, b, court.Near, TellOptions{})
	if !tell.Facing.Shows || tell.Facing.Who != game.Near1 {
		t.Fatalf("facing: %+v, want near1 to show it", tell.Facing)
	}
	p := b.Tracks[game.Near1].RunAt(tell.Facing.At).Facing
	if math.Abs(float64(p-330)) > 1e-3 {
		t.Errorf("it shows when near1 faces %v, want 330: 30 degrees round", p)
	}
}

func TestUseOfASign(t *testing.T) {
	for _, c := range []struct {
		sign Sign
		want Use
	}{
		{Sign{}, NeverShows},
		{Sign{Shows: true, At: -1.5, Before: 3}, ShowsAtServe},
		{Sign{Shows: true, At: 1, Before: 0.41}, InTimeToUse},
		{Sign{Shows: true, At: 1, Before: 0.31}, TooLateToUse},
		{Sign{Shows: true, At: 1, Before: -0.1}, AfterTheyHit},
	} {
		if got := c.sign.use(tellNeeds); got != c.want {
			t.Errorf("use of %+v = %v, want %v", c.sign, got, c.want)
		}
	}
	if got := (Sign{Shows: true, At: 1, Before: 0.31}).use(0.2); got != InTimeToUse {
		t.Errorf("with 0.2 s: %v, want in time to use", got)
	}
}

// The serve, return and third of near, far and near at 0, 1 and 2 s, then a
// fourth at 3 s.
func TestContactAbout(t *testing.T) {
	r := &rally.Rally{To: 5, Strokes: []rally.Stroke{{By: game.Near1, At: 0}, {By: game.Far1, At: 1}, {By: game.Near2, At: 2}, {By: game.Far2, At: 3}}}
	for _, c := range []struct {
		team     court.End
		at, want units.Seconds
	}{
		{court.Near, -1, 1}, {court.Near, 0.5, 1}, {court.Near, 1.5, 1}, {court.Near, 2.5, 3}, {court.Near, 4, 3},
		{court.Far, -1, 2}, {court.Far, 1.5, 2}, {court.Far, 2.5, 2}, {court.Far, 4, 5},
	} {
		if got := contactAbout(r, c.team, c.at); got != c.want {
			t.Errorf("what the %v team shows at %v s is about the contact at %v s, want %v", c.team, c.at, got, c.want)
		}
	}
}
