package formation

import (
	"math"
	"testing"

	"homeside/model/advice"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// The least return with which a receiver who changes sides is set when a third
// of 15 m/s comes, by pace: computed once with an independent program (RK4) for
// a serve of 18 m/s at 10 degrees and a run from (5, -24). The serve here is
// another and heights go by half feet: the figures agree to within 2 ft.
func TestReturnThatIsNeeded(t *testing.T) {
	for _, c := range []struct {
		v, tau, brake float64
		want          units.Feet
	}{{5, 1, 5, 10}, {4, 1, 3, 15.5}, {3, 0.8, 3, 19}} {
		s := plain(lesson.Stacked, false)
		s.pace.Pace.TopSpeed, s.pace.Pace.Tau, s.pace.Pace.Braking = units.MetresPerSecond(c.v), units.Seconds(c.tau), c.brake
		situation := s.situation(t)
		situation.Lesson.Vocabulary[lesson.Drive] = &lesson.Manner{Intent: lesson.Speed(15)}
		situation.Lesson.Vocabulary[lesson.DeepReturn] = &lesson.Manner{Intent: lesson.Apex(7)}
		w, err := Write(situation, lesson.Stacked)
		if err != nil {
			t.Fatal(err)
		}
		if got := w.Answer.Needed; math.Abs(float64(got-c.want)) > 2 {
			t.Errorf("at %v m/s the return has to rise to %v ft, want about %v", c.v, got, c.want)
		}
		if want := map[bool]Verdict{true: Raised, false: TooLate}[c.want <= MostApex]; w.Answer.Verdict != want {
			t.Errorf("at %v m/s: %v, want %v", c.v, w.Answer.Verdict, want)
		}
	}
}

// The least height: half a foot lower somebody is late.
func TestNeededIsTheLeast(t *testing.T) {
	s := plain(lesson.Switched, false)
	s.pace, _ = movement.PresetByKey("50-plus")
	w := s.write(t)
	if w.Answer.Verdict != Raised || w.Play.Shots[1].Intent != lesson.Apex(w.Answer.Apex) {
		t.Fatalf("answer %+v, return %+v, want a higher return", w.Answer, w.Play.Shots[1].Intent)
	}
	lower, err := writeOnce(w.Situation, w.Kind, w.Answer.Apex-heightStep)
	if err != nil || lower.InTime() || !w.InTime() {
		t.Errorf("half a foot below %v ft in time: %v, %v; at it: %v", w.Answer.Apex, lower.InTime(), err, w.InTime())
	}
}

// Slow legs make a switch on the serve late; a higher serve buys the time.
func TestServeThatIsNeeded(t *testing.T) {
	s := plain(lesson.Switched, true)
	s.pace.Pace.TopSpeed = 2.2
	w := s.write(t)
	if w.Answer.Verdict != Raised || w.Answer.Shot != 0 || w.Play.Shots[0].Intent != lesson.Apex(w.Answer.Apex) {
		t.Errorf("at 2.2 m/s: %+v, want a higher serve", w.Answer)
	}
	s.pace.Pace.TopSpeed = 0.5
	if w = s.write(t); w.Answer.Verdict != TooLate || w.Answer.Needed != 0 || w.InTime() {
		t.Errorf("at 0.5 m/s: %+v, want too late whatever the serve", w.Answer)
	}
}

// The margin of a server is that of the leg to the place at the return's bounce.
func TestMarginIsTheLegs(t *testing.T) {
	w := plain(lesson.Stacked, true).write(t)
	leg := w.Rally.Tracks[game.Near1].Legs[0]
	run, err := movement.DefaultPace().Shuffling().Fastest(movement.Run{Distance: w.Contact(game.Near1).Distance(w.Rally.Tracks[game.Near1].Stops[1].Keyframe.Place).Metres()})
	if err != nil {
		t.Fatal(err)
	}
	bounce, _ := w.Rally.TimeOf(lesson.Event{Shot: 1, Moment: lesson.Bounce})
	want := bounce - movement.DefaultPace().StrokeRecovery - run.Duration()
	if got := w.Margins[game.Near1]; math.Abs(float64(got-want)) > 1e-9 || got != leg.Margin {
		t.Errorf("near1 has %v s to spare, want %v", got, want)
	}
}

// A poacher's margin is that of getting within arm, paddle and lunge.
func TestMarginOfAPoach(t *testing.T) {
	for _, preset := range movement.Presets {
		for _, serves := range [2]bool{true, false} {
			s := plain(lesson.Poached, serves)
			s.pace = preset
			w := s.write(t)
			last := len(w.Rally.Strokes) - 1
			m := advice.Meet(w.Rally, last)
			margin := w.Margins[w.Rally.Strokes[last].By]
			if late := margin < 0; late && m.Stretch != advice.Beyond && w.InTime() || w.InTime() && m.Stretch == advice.Beyond {
				t.Errorf("%s, serves %v: %v s to spare, but meets the ball at %v", preset.Key, serves, margin, m.Stretch)
			}
		}
	}
}
