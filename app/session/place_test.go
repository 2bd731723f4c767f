package session_test

import (
	"math"
	"reflect"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// drill is a lesson of two plays: near1 serves, far1 returns without a place of
// its own at the return.
func drill() lesson.Lesson {
	p := lesson.Play{
		Title: "first", Lead: 1.5,
		Shots: []lesson.Shot{
			{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(8)},
			{By: game.Far1, Aim: court.Pt(4, -18), Intent: lesson.Apex(9)},
		},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(5, -23)}},
			{{Place: court.Pt(-5, -23)}, {At: lesson.Anchor{Offset: 1}, Place: court.Pt(-5, -20)}, {At: lesson.At(lesson.TheEnd), Place: court.Pt(-5, -8)}},
			{{Place: court.Pt(-5, 24), Facing: 180}},
			{{Place: court.Pt(5, 7.5), Facing: 180}},
		},
	}
	second := p
	second.Title = "second"
	return lesson.Lesson{Plays: []lesson.Play{p, second}}
}

func solve(t *testing.T, l lesson.Lesson) *rally.Rally {
	t.Helper()
	if bad := lesson.Validate(l); bad != nil {
		t.Fatalf("the lesson is out of bounds: %v", bad)
	}
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// A drag moves the keyframe of the moment or, where there is none, makes one in
// its place in the list, hanging on the last contact.
func TestPlaceAt(t *testing.T) {
	to := court.Pt(2, -15)
	returned := solve(t, drill()).Strokes[1].At
	for _, c := range []struct {
		name   string
		id     game.Player
		at     units.Seconds
		index  int // of the keyframe that is moved or made
		made   bool
		anchor lesson.Anchor
	}{
		{"the keyframe at the moment", game.Near2, 1, 1, false, lesson.Anchor{Offset: 1}},
		{"a frame before it", game.Near2, 0.97, 1, false, lesson.Anchor{Offset: 1}},
		{"a frame after it", game.Near2, 1.03, 1, false, lesson.Anchor{Offset: 1}},
		{"too far from it", game.Near2, 1.05, 2, true, lesson.Anchor{Offset: 1.05}},
		{"between two", game.Near2, 0.5, 1, true, lesson.Anchor{Offset: 0.5}},
		{"before all", game.Near2, -1, 0, true, lesson.Anchor{Offset: -1}},
		{"after all", game.Near1, 1.2, 1, true, lesson.Anchor{Offset: 1.2}},
		{"after the return", game.Far2, returned + 0.25, 1, true, lesson.Anchor{Event: lesson.ContactOf(1), Offset: 0.25}},
		{"an implied place", game.Far1, returned, 1, true, lesson.At(lesson.ContactOf(1))},
	} {
		l := drill()
		s := session.New(l, "", nil)
		s.Seek(c.at)
		got, ok := s.PlaceAt(c.id, to)
		if !ok {
			t.Errorf("%s: PlaceAt says there is no play", c.name)
			continue
		}
		before, track := l.Plays[0].Tracks[c.id], got.Plays[0].Tracks[c.id]
		if made := len(track) == len(before)+1; made != c.made || len(track) < len(before) {
			t.Errorf("%s: %d keyframes became %d, want one more: %v", c.name, len(before), len(track), c.made)
			continue
		}
		k := track[c.index]
		if k.Place != to || k.At.Event != c.anchor.Event || math.Abs(float64(k.At.Offset-c.anchor.Offset)) > 1e-9 {
			t.Errorf("%s: keyframe %d is %+v, want %v at %+v", c.name, c.index, k, to, c.anchor)
		}
		if shown := solve(t, got).At(c.at).Players[c.id].Drawn.Place; c.made && shown.Distance(to) > 1e-6 {
			t.Errorf("%s: the player is then shown at %v, want %v", c.name, shown, to)
		}
		if !reflect.DeepEqual(l, drill()) || !reflect.DeepEqual(s.Lesson(), l) || !reflect.DeepEqual(got.Plays[1], l.Plays[1]) {
			t.Errorf("%s: PlaceAt changed what was there", c.name)
		}
	}
}

// Of two keyframes close together the one shown at the moment moves: the
// nearest, the later of two at one time.
func TestPlaceAtTheNearest(t *testing.T) {
	to := court.Pt(0, 20)
	at := func(s units.Seconds, x units.Feet) lesson.Keyframe {
		return lesson.Keyframe{At: lesson.Anchor{Offset: s}, Place: court.Pt(x, 9)}
	}
	for _, c := range []struct {
		name  string
		track []lesson.Keyframe
		want  int
	}{
		{"two within reach", []lesson.Keyframe{at(0, 1), at(0.98, 2), at(1.01, 3)}, 2},
		{"the earlier nearer", []lesson.Keyframe{at(0, 1), at(1, 2), at(1.03, 3)}, 1},
		{"one clamped onto the other", []lesson.Keyframe{at(0, 1), at(1, 2), at(0.5, 3)}, 2},
	} {
		l := drill()
		l.Plays[0] = l.Plays[0].WithTrack(game.Far2, c.track)
		s := session.New(l, "", nil)
		s.Seek(1)
		got, _ := s.PlaceAt(game.Far2, to)
		for i, k := range got.Plays[0].Tracks[game.Far2] {
			if moved := k.Place == to; moved != (i == c.want) {
				t.Errorf("%s: keyframe %d moved: %v, want keyframe %d", c.name, i, moved, c.want)
			}
		}
	}
	// A stated place just before an implied one: the implied one is shown.
	l := drill()
	contact := lesson.ContactOf(1)
	l.Plays[0] = l.Plays[0].WithTrack(game.Far1, append(l.Plays[0].Tracks[game.Far1], lesson.Keyframe{At: lesson.Anchor{Event: contact, Offset: -0.03}, Place: court.Pt(-4, 22), Facing: 180}))
	s := session.New(l, "", nil)
	s.Seek(solve(t, l).Strokes[1].At)
	got, _ := s.PlaceAt(game.Far1, to)
	if track := got.Plays[0].Tracks[game.Far1]; len(track) != 3 || track[2].Place != to || track[2].At != lesson.At(contact) {
		t.Errorf("a place just before an implied one: the track is %+v, want the implied place stated last", track)
	}
}

func TestPlaceAtWithoutAPlay(t *testing.T) {
	s := session.New(lesson.Lesson{}, "", nil)
	if _, ok := s.PlaceAt(game.Near1, court.Pt(0, 0)); ok {
		t.Error("PlaceAt in an empty lesson says it worked")
	}
}
