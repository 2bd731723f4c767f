package formation

import (
	"fmt"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// writer writes one play.
type writer struct {
	s                Situation
	kind             Kind
	server, receiver game.Player
	serving          court.End
	apex             units.Feet // of the pair's own shot; 0 leaves it as the lesson means it

	p    lesson.Play
	ball *rally.Rally // the shots alone, solved
}

func newWriter(s Situation, k Kind) *writer {
	return &writer{s: s, kind: k, server: s.State.Server(), receiver: s.State.Receiver(), serving: s.State.Serving()}
}

// own is the number of the pair's first shot, whose height buys the time: the
// serve or the return.
func (w *writer) own() int {
	if w.s.Serves() {
		return 0
	}
	return 1
}

// write is the play with the own shot at the writer's height, solved.
func (w *writer) write() (*rally.Rally, error) {
	w.p = lesson.Play{
		Lead:      lesson.DefaultLead,
		Situation: lesson.Situation{Call: w.s.State.Call(), Serving: w.serving},
	}
	w.p.Title = fmt.Sprintf("%v: %v, %v %s from the %v", w.s.State.Call(), w.kind, w.s.Lesson.NameOf(w.s.Lead()), verb(w.s.Serves()), w.s.State.From())
	if front, ok := w.s.front(w.kind); ok {
		w.p.Front = &front
	}
	w.shots()
	w.starts()
	if err := w.fly(); err != nil {
		return nil, err
	}
	w.runServers()
	w.runReceivers()
	w.runLob()
	w.before()
	return w.solve()
}

func verb(serves bool) string {
	if serves {
		return "serves"
	}
	return "receives"
}

// shots are the play's shots.
func (w *writer) shots() {
	w.p.Shots = []lesson.Shot{w.s.serve(), w.returnShot(), w.third()}
	if w.apex > 0 {
		w.p.Shots[w.own()].Intent = lesson.Apex(w.apex)
	}
	w.more()
}

// fly solves the ball: the times of the shots do not depend on the runs.
func (w *writer) fly() (err error) {
	w.ball, err = w.solve()
	return err
}

func (w *writer) solve() (*rally.Rally, error) {
	l := w.s.Lesson
	l.Plays = []lesson.Play{w.p}
	r, err := rally.Solve(l, 0)
	if err != nil {
		return nil, fmt.Errorf("write a formation: %w", err)
	}
	return r, nil
}

// add appends places to a player's track.
func (w *writer) add(id game.Player, k ...lesson.Keyframe) {
	w.p.Tracks[id] = append(w.p.Tracks[id], k...)
}

// strikes is where a player stands to strike a shot, as the rally implies it.
func (w *writer) strikes(shot int) court.Point {
	for _, stop := range w.ball.Tracks[w.p.Shots[shot].By].Stops {
		if stop.Index == rally.Implied && stop.Keyframe.At == event(shot, lesson.Contact) {
			return stop.Keyframe.Place
		}
	}
	return w.ball.Tracks[w.p.Shots[shot].By].At(w.ball.Strokes[shot].At).Place
}
