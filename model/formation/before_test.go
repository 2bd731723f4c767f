package formation

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// The play begins with a walk from the last rally's places; then the signal,
// the call, the serve.
func TestWalkOn(t *testing.T) {
	s := plain(lesson.Switched, false).situation(t)
	s.Places = &[4]court.Point{court.Pt(4, -8), court.Pt(-5, -15), court.Pt(3, 9), court.Pt(-6, 20)}
	w, err := Write(s, lesson.Switched)
	if err != nil {
		t.Fatal(err)
	}
	if bad := lesson.Validate(lessonOf(w)); bad != nil {
		t.Fatal(bad)
	}
	still := plain(lesson.Switched, false).write(t)
	for _, id := range game.Players {
		if got := w.Rally.At(w.Rally.From).Players[id].Run.Place; got != s.Places[id] {
			t.Errorf("%v begins at %v, want %v", id, got, s.Places[id])
		}
		for at := w.Rally.From; at < 0; at += 0.05 {
			pose := w.Rally.Tracks[id].RunAt(at)
			if pose.Speed > movement.WalkingSpeed+1e-9 {
				t.Fatalf("%v moves at %v m/s at %.2f s, want a walk", id, pose.Speed, at)
			}
			if at >= -readyFor && pose.Place.Distance(still.Contact(id)) > 1e-6 {
				t.Fatalf("%v is at %v %.2f s before the serve, want in place at %v", id, pose.Place, -at, still.Contact(id))
			}
		}
		if got, want := w.End(id), still.End(id); got.Distance(want) > 1e-6 {
			t.Errorf("%v ends at %v, without the walk at %v", id, got, want)
		}
	}
}

func TestSignalThenCallThenServe(t *testing.T) {
	w := plain(lesson.Stayed, false).write(t)
	if len(w.Play.Cues) != 2 {
		t.Fatalf("%d cues, want the signal and the call", len(w.Play.Cues))
	}
	times := make([]units.Seconds, 0, 4)
	for _, c := range w.Play.Cues {
		times = append(times, w.Rally.TimeAt(c.Span.From), w.Rally.TimeAt(c.Span.To))
	}
	if !(times[0] >= w.Rally.From && times[0] < times[1] && times[1] <= times[2] && times[2] < times[3] && times[3] == 0) {
		t.Errorf("signal and call at %v, want one after the other before 0", times)
	}
	signal, call := w.Play.Cues[0], w.Play.Cues[1]
	if signal.Giver != game.Near2 || signal.Reader != game.Near1 || signal.Meaning != lesson.Stay || signal.Text == "" {
		t.Errorf("signal %+v, want near2 to show stay and near1 to answer", signal)
	}
	if call.Text != w.Situation.State.Call().String() {
		t.Errorf("call %q, want %v", call.Text, w.Situation.State.Call())
	}
	if cues := plain(lesson.Stacked, false).write(t).Play.Cues; len(cues) != 1 {
		t.Errorf("a stack has %d cues, want the call alone", len(cues))
	}
}
