package formation

import (
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// The lob over the one who fills in, in seconds: our choice. It is turned to
// and run down, never backpedalled; the other changes sides (common practice).
const (
	turnAfter  units.Seconds = 0.55 // the lob's contact: reaction and a turn
	turnBefore units.Seconds = 0.3  // the own contact: to face the net again
)

// lobShot is the number of the lob: the opponents' next ball after the pair's
// formation has played out.
func (w *writer) lobShot() int {
	if w.s.Serves() {
		return fourth
	}
	return third
}

// lob adds the lob, where it is not the third itself, and the answer to it.
func (w *writer) lob() {
	team := w.s.Team
	if w.s.Serves() {
		w.p.Shots = append(w.p.Shots, w.s.hit(w.receiver, lesson.Lob, w.overFiller()))
	}
	w.p.Shots = append(w.p.Shots, w.s.hit(w.filler(), lesson.Lob, w.s.at(team.Other(), 0, lobDeep)))
}

// overFiller is where the lob lands: on the forehand side of the lane in which
// the one who fills in runs straight back.
func (w *writer) overFiller() court.Point {
	id := w.filler()
	lane := w.s.at(id.Team(), halfMiddle*w.endHalf(id), lobDeep)
	return lane.Add(w.s.Lesson.Player(id).Hand.Forehand(id.Team().Facing()).Times(float64(rally.PaddleSide)))
}

// runLob: the one who is lobbed turns, runs and turns again to strike.
func (w *writer) runLob() {
	if !w.s.Lob {
		return
	}
	id, n := w.filler(), w.lobShot()
	other := id.Partner()
	to, away := w.strikes(n+1), id.Team().Other().Facing()
	from := w.p.Tracks[id][len(w.p.Tracks[id])-1].Place
	turn, run := stand(after(event(n, lesson.Contact), turnAfter), from), stand(after(event(n+1, lesson.Contact), -turnBefore), to)
	turn.Facing, run.Facing = away, away
	w.add(id, turn, run, stand(event(n+1, lesson.Contact), to))

	last := w.p.Tracks[other][len(w.p.Tracks[other])-1].Place
	last.X = -last.X
	w.add(other, leaving(stand(event(n+1, lesson.Bounce), last), event(n, lesson.Contact)))
}
