package formation

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

const third = 2 // the number of the third shot

// runServers: both servers are in place, behind the baseline, when the return
// bounces; then one strikes the third and both walk in behind it.
func (w *writer) runServers() {
	bounce := event(1, lesson.Bounce)
	for _, id := range [2]game.Player{w.server, w.server.Partner()} {
		if w.p.Shots[third].By == id && w.s.Return == lesson.Short {
			w.waitForShort(id)
		} else {
			w.add(id, w.behindServer(id, stand(bounce, w.ready(id))))
		}
	}
	w.walkIn()
}

// ready is where a server stands at the return's bounce: in the middle of the
// half or, if it is the one who strikes the third, behind the ball.
func (w *writer) ready(id game.Player) court.Point {
	p := w.s.at(w.serving, halfMiddle*w.endHalf(id), readyBehind)
	if w.p.Shots[third].By == id {
		ball := w.strikes(third)
		_, most := w.s.room()
		p.X = rounded(ball.X)
		p.Y = min(max(rounded(ball.Y*w.serving.Sign()), serverBehind), most) * w.serving.Sign()
	}
	return p
}

// behindServer bends the partner's way behind the server's where they cross: by
// as much as keeps them apart.
func (w *writer) behindServer(id game.Player, k lesson.Keyframe) lesson.Keyframe {
	if id == w.server || !w.s.Serves() || w.kind != lesson.Switched {
		return k
	}
	from := w.p.AtServe(id).Place
	_, most := w.s.room()
	half := from.Toward(k.Place, 0.5)
	behind := min(max(serverBehind+passApart, half.Y*w.serving.Sign()), most)
	k.Via = new(court.Pt(half.X, behind*w.serving.Sign()))
	return k
}

// waitForShort: who takes a short return sees it early and runs in for it.
func (w *writer) waitForShort(id game.Player) {
	p := w.s.at(w.serving, halfMiddle*w.endHalf(id), serverBehind)
	w.add(id, stand(event(1, lesson.Contact), p))
}

// walkInTime is how long after the third's bounce the walk-in ends: the end of
// the rally if nobody strikes the ball again.
const walkInTime units.Seconds = 0.9

// walkIn: both go in behind the third, as far as the middle of the court or as
// far as they get. The striker recovers first.
func (w *writer) walkIn() {
	if w.poachesFourth() && !w.s.Lob {
		w.runPoachFourth()
		return
	}
	end := after(event(third, lesson.Bounce), walkInTime)
	if w.s.Lob && w.s.Serves() {
		end = event(fourth, lesson.Contact)
	}
	for _, id := range [2]game.Player{w.server, w.server.Partner()} {
		w.add(id, w.walk(id, end))
	}
}

// walk is one server's walk-in behind the third, done by a time.
func (w *writer) walk(id game.Player, end lesson.Anchor) lesson.Keyframe {
	legs := w.s.Lesson.Player(id).Legs()
	from, start, wait := w.ready(id), event(third, lesson.Contact), legs.Reaction
	if w.p.Shots[third].By == id {
		from, wait = w.strikes(third), legs.StrokeRecovery
	}
	window := w.ball.TimeAt(end) - w.ball.TimeAt(start) - wait
	to := w.s.at(w.serving, halfMiddle*w.endHalf(id), walkedIn)
	return leaving(stand(end, w.within(id, from, to, window)), after(start, wait))
}
