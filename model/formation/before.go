package formation

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// Before the serve, in seconds: our choice. The score is called last, whole,
// and the serve follows (rulebook 2026, 6.C and 6.D).
const (
	callFor   units.Seconds = 0.7
	signalFor units.Seconds = 0.8
	readyFor  units.Seconds = 2 // everybody in place before the serve
	longest   units.Seconds = 30
)

// before adds what comes before the serve: the walk from the last rally's
// places, the signal and its answer, the call.
func (w *writer) before() {
	if w.s.Places != nil {
		w.walkOn(*w.s.Places)
	}
	called := after(serveContact, -callFor)
	if m, ok := w.signal(); ok {
		mate := w.s.Lead().Partner()
		w.p.Cues = append(w.p.Cues, lesson.Cue{
			Kind: lesson.Signal, Giver: mate, Reader: mate.Partner(), Meaning: m, Text: "yes",
			Span: lesson.Span{From: after(called, -signalFor), To: called},
		})
	}
	w.p.Cues = append(w.p.Cues, lesson.Cue{
		Kind: lesson.Caption, Text: w.s.State.Call().String(), Span: lesson.Span{From: called, To: serveContact},
	})
}

// signal is what the pair signals: the receiver's partner behind the back; on
// the serve it is agreed before stepping up (common practice).
func (w *writer) signal() (lesson.Meaning, bool) {
	switch w.kind {
	case lesson.Switched:
		return lesson.Switch, true
	case lesson.Stayed:
		return lesson.Stay, true
	}
	return 0, false
}

// walkOn begins the play where the last rally left the players, who walk.
func (w *writer) walkOn(places [4]court.Point) {
	var walk units.Seconds
	for _, id := range game.Players {
		d := places[id].Distance(w.p.AtServe(id).Place).Metres()
		legs := w.s.Lesson.Player(id).Legs()
		legs.TopSpeed = min(legs.TopSpeed, movement.WalkingSpeed)
		walk = max(walk, walkTime(legs, d))
	}
	w.p.Lead = min(walk+readyFor, longest)
	for _, id := range game.Players {
		first := w.p.Tracks[id][0] // and stays until the serve
		first.At = after(serveContact, -readyFor)
		last := stand(after(serveContact, -w.p.Lead), places[id])
		last.Facing = first.Facing
		w.p.Tracks[id] = append([]lesson.Keyframe{last, first}, w.p.Tracks[id]...)
	}
}

// walkTime is how long a walk from rest to rest takes, with whatever gait.
func walkTime(legs movement.Pace, d units.Metres) units.Seconds {
	slow := legs.Shuffling()
	slow.TopSpeed = min(slow.TopSpeed, legs.Backward().TopSpeed)
	run, err := slow.Fastest(movement.Run{Distance: d})
	if err != nil {
		return longest
	}
	return rounded(run.Duration() + grain)
}
