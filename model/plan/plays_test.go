package plan

import (
	"errors"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
)

func planOfPlays(t testing.TB, set game.Settings, pair Pair) Plan {
	t.Helper()
	p, err := Of(mustStart(t, set), pair, Chances{0.45, 0.45}, Plays{})
	if err != nil {
		t.Fatalf("Of(%+v, %+v): %v", set, pair.Policy, err)
	}
	return p
}

// Every row of a stacking pair is legal, has its worst margin, and a stack never
// runs less than ordinary places do.
func TestPlaysAreLegal(t *testing.T) {
	for _, f := range []game.Format{game.SideOut, game.RallyParity} {
		for _, team := range court.Ends {
			full := planOfPlays(t, game.Settings{Format: f}, pairOf(team, lesson.WantLeft, Full()))
			none := planOfPlays(t, game.Settings{Format: f}, pairOf(team, lesson.WantLeft, None()))
			for i, r := range full.Rows {
				if r.Legal == nil || !*r.Legal || r.Margin == nil || r.Refused != "" || !r.Wanted() {
					t.Errorf("%v, %v: %+v, want a legal play with a margin that ends as wanted", f, team, r)
				}
				sum, plain := r.Feet[0]+r.Feet[1], none.Rows[i].Feet[0]+none.Rows[i].Feet[1]
				if r.Formation == lesson.Stacked && sum <= plain || !(plain > 0) {
					t.Errorf("%v, %v: %+v runs %v ft, in ordinary places %v", f, team, r.Situation, sum, plain)
				}
			}
			if !(full.Feet[0]+full.Feet[1] > none.Feet[0]+none.Feet[1]) {
				t.Errorf("%v, %v: stacking %v ft a game, not stacking %v", f, team, full.Feet, none.Feet)
			}
		}
	}
}

// The receiver of a stacked return crosses to the other half: by the base positions
// some 19.3 ft to the kitchen line and not 16.5 (computed once apart from
// this program); the partner slides in from beside the court.
func TestPlaysFeet(t *testing.T) {
	pair := pairOf(court.Near, lesson.WantLeft, Full())
	start := mustStart(t, game.Settings{First: court.Far}) // near1 receives on the right
	stack, err := Plays{}.Effort(pair, start, lesson.Stacked)
	if err != nil {
		t.Fatal(err)
	}
	plain, err := Plays{}.Effort(pair, start, lesson.Ordinary)
	if err != nil {
		t.Fatal(err)
	}
	if d := stack.Feet[0] - plain.Feet[0]; d < 1.5 || d > 5 {
		t.Errorf("the receiver runs %v ft stacked and %v in ordinary places, want some 3 ft more", stack.Feet[0], plain.Feet[0])
	}
	if d := stack.Feet[1] - plain.Feet[1]; d < 4 || d > 10 {
		t.Errorf("the partner runs %v ft stacked and %v in ordinary places, want some 7 ft more", stack.Feet[1], plain.Feet[1])
	}
}

// Slow legs have less time to spare.
func TestPlaysMargin(t *testing.T) {
	pair := pairOf(court.Near, lesson.WantLeft, Full())
	slow := pair
	pace, _ := movement.PresetByKey("cautious")
	for _, id := range [2]game.Player{game.Near1, game.Near2} {
		who := slow.Lesson.Player(id)
		who.Pace = &pace.Pace
		slow.Lesson = slow.Lesson.WithPlayer(id, who)
	}
	start := mustStart(t, game.Settings{First: court.Far})
	a, err := Plays{}.Effort(pair, start, lesson.Stacked)
	b, err2 := Plays{}.Effort(slow, start, lesson.Stacked)
	if err != nil || err2 != nil || !(*b.Margin < *a.Margin) {
		t.Errorf("worst margin %v with usual legs and %v with slow ones, %v, %v", a.Margin, b.Margin, err, err2)
	}
}

// Where there is no room beside the court the pair switches on the return, and
// the row says why.
func TestNoRoomSwitches(t *testing.T) {
	pair := pairOf(court.Near, lesson.WantLeft, Full())
	pair.Lesson.Venue.BesideSideline = 0.5
	p := planOfPlays(t, game.Settings{}, pair)
	found := false
	for _, r := range p.Rows {
		if !r.Serving && moves(r.Formation) {
			found = true
			if r.Formation != lesson.Switched || !strings.Contains(r.Refused, "room") {
				t.Errorf("%+v with half a foot beside the court: %v, %q, want a switch for want of room", r.Situation, r.Formation, r.Refused)
			}
		}
	}
	if !found {
		t.Error("no return changes sides, want some")
	}
}

// stubborn refuses a formation or fails for another reason.
type stubborn struct{ err error }

func (s stubborn) Effort(Pair, game.State, lesson.Formation) (Effort, error) { return Effort{}, s.err }

func TestEffortsThatFail(t *testing.T) {
	for _, want := range []error{errors.New("broken"), formation.ErrRefused} {
		if _, err := Of(mustStart(t, game.Settings{}), pairOf(court.Near, lesson.WantLeft, Full()), Chances{0.5, 0.5}, stubborn{want}); !errors.Is(err, want) {
			t.Errorf("efforts that fail with %v: %v", want, err)
		}
	}
}
