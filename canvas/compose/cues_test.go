package compose

import (
	"testing"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// A closed fist says stay, an open hand switch: common practice of the trade. A
// fake looks like a switch; the word beside the hand tells which.
func TestSignalHand(t *testing.T) {
	for meaning, fingers := range map[lesson.Meaning]int{lesson.Stay: 0, lesson.Switch: 5, lesson.Fake: 5} {
		l := invented()
		l.Plays[0].Cues[1].Meaning = meaning
		p := pictureOf(t, l, 0, canvas.Upright)
		s := p.Moving(360, 640, 0)
		shapes, drawn := shapesOf(s), extentsOf(s)
		if got := len(shapes["court/signal.1.fingers"].Path) / 2; got != fingers {
			t.Errorf("%v: the hand has %d fingers, want %d", meaning, got, fingers)
		}
		if got := shapes["court/signal.1.meaning"].Text; got == nil || got.Text != meaning.String() {
			t.Errorf("%v: the word beside the hand is %+v", meaning, got)
		}
		if got := shapes["court/signal.1.answer"].Text; got == nil || got.Text != "yes" {
			t.Errorf("%v: the answer is %+v, want yes", meaning, got)
		}
		// Behind far2's back, who faces down the page: above the disc.
		if tag, disc := drawn["court/signal.1.meaning.plate"], drawn["court/player.far2"]; tag.overlaps(disc) {
			t.Errorf("what the hand says, %+v, hides the giver at %+v", tag, disc)
		}
		if hand, disc := drawn["court/signal.1"], drawn["court/player.far2"]; !(hand.bottom < disc.top) {
			t.Errorf("%v: the hand %+v is not behind the back of %+v", meaning, hand, disc)
		}
	}
}

// A pair that has agreed on signs of its own shows those, from above and in perspective.
func TestSignalHandAsAgreed(t *testing.T) {
	for meaning, fingers := range map[lesson.Meaning]int{lesson.Stay: 2, lesson.Switch: 0, lesson.Fake: 5} {
		l := invented()
		l.Plays[0].Cues[1].Meaning = meaning
		l.Teams[court.Far].Signs = lesson.Signs{lesson.Switch, lesson.Fake, lesson.Stay}
		p := pictureOf(t, l, 0, canvas.Upright)
		for _, s := range []*canvas.Scene{p.Moving(360, 640, 0), p.Seen(Sight{Behind: BehindPlayer(game.Far1)}).Moving(360, 640, 0)} {
			shapes := shapesOf(s)
			if got := len(shapes["court/signal.1.fingers"].Path) / 2; got != fingers {
				t.Errorf("%v: the hand has %d fingers, want %d", meaning, got, fingers)
			}
			if _, ok := shapes["court/signal.1"]; !ok {
				t.Errorf("%v: there is no hand", meaning)
			}
		}
	}
}

// Cues and marks are drawn while they live and not a moment longer.
func TestCuesAndMarksLive(t *testing.T) {
	p := pictureOf(t, invented(), 0, canvas.Upright)
	for at, want := range map[units.Seconds]bool{-1.2: false, -1: true, 0: true, 1.01: false} {
		shapes := shapesOf(p.Moving(360, 640, at))
		for _, id := range []string{"caption/line.0", "court/signal.1", "court/mark.0.text", "court/mark.1", "court/mark.1.head"} {
			if _, got := shapes[id]; got != want {
				t.Errorf("at %v s %s is drawn: %v, want %v", at, id, got, want)
			}
		}
	}
}

// An arrow mark without a length has no head to point with, and no mark fails.
func TestArrowOfNoLength(t *testing.T) {
	l := invented()
	l.Plays[0].Marks[1].Tip = l.Plays[0].Marks[1].Place
	shapes := shapesOf(pictureOf(t, l, 0, canvas.Upright).Moving(360, 640, 0))
	if head := shapes["court/mark.1.head"]; len(head.Path) != 0 {
		t.Errorf("the head of an arrow without a length is %v, want nothing", head.Path)
	}
}

// The window measures a dragged player against the nearest line across and the
// nearest along, as words.Place says them.
func TestMeasure(t *testing.T) {
	for _, c := range []struct {
		id            game.Player
		at            court.Point
		across, along court.Point // where the measures end
		texts         [2]string
	}{
		{game.Near1, court.Pt(6.5, -24), court.Pt(6.5, -22), court.Pt(10, -24), [2]string{"2 ft behind the baseline", "3 ft 6 in inside the right sideline"}},
		{game.Near2, court.Pt(-0.5, -7.5), court.Pt(-0.5, -7), court.Pt(0, -7.5), [2]string{"6 in behind the kitchen line", "6 in left of the centreline"}},
		{game.Far1, court.Pt(-12, 6), court.Pt(-12, 7), court.Pt(-10, 6), [2]string{"1 ft in front of the kitchen line", "2 ft outside the right sideline"}},
		{game.Far2, court.Pt(4, 30), court.Pt(4, 22), court.Pt(0, 30), [2]string{"8 ft behind the baseline", "4 ft left of the centreline"}},
	} {
		p := pictureOf(t, invented(), 0, canvas.Upright)
		s := p.Moving(360, 640, 0)
		p.MeasureAt(s, c.id.Team(), c.at)
		shapes := shapesOf(s)
		for i, want := range []struct {
			id  string
			end court.Point
		}{{"court/measure.across", c.across}, {"court/measure.along", c.along}} {
			path := shapes[want.id].Path
			if len(path) != 2 || path[0].P[0] != canvas.On(c.at) || path[1].P[0] != canvas.On(want.end) {
				t.Errorf("%v at %v: %s is %v, want from there to %v", c.id, c.at, want.id, path, want.end)
			}
			if got := shapes[want.id+".text"].Label; got != c.texts[i] {
				t.Errorf("%v at %v: %s says %q, want %q", c.id, c.at, want.id, got, c.texts[i])
			}
		}
	}
}
