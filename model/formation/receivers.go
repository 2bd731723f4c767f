package formation

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// runReceivers: the receiver returns and runs to the kitchen line, set when the
// third comes; the partner takes the other half or stays in it.
func (w *writer) runReceivers() {
	back, mate := w.receiver, w.receiver.Partner()
	if w.poachesThird() {
		w.runPoachThird()
		return
	}
	set := w.deadlineOfReturn()
	if w.s.Third == DriveAtRunner {
		w.volleysThird(set)
		return
	}
	if w.s.Serves() || !Moves(w.kind) {
		w.add(back, stand(set, w.ordinaryLine(back, set)))
		return
	}
	w.add(back, stand(set, w.line(back)))
	w.add(mate, leaving(stand(set, w.line(mate)), w.slides()))
}

// volleysThird: the receiver takes the third on the run and goes on to the line.
func (w *writer) volleysThird(set lesson.Anchor) {
	back, mate := w.receiver, w.receiver.Partner()
	w.add(back, stand(after(event(fourth, lesson.Bounce), walkInTime), w.line(back)))
	if Moves(w.kind) && !w.s.Serves() {
		w.add(mate, leaving(stand(set, w.line(mate)), w.slides()))
	}
}

// line is a receiver's place at the kitchen line at the end.
func (w *writer) line(id game.Player) court.Point {
	return w.s.at(id.Team(), halfMiddle*w.endHalf(id), atKitchen)
}

// deadlineOfReturn is when the receivers are set: when the third comes to them
// or, if it is to go over them, when it is struck.
func (w *writer) deadlineOfReturn() lesson.Anchor {
	if w.s.Lob && !w.s.Serves() {
		return event(third, lesson.Contact)
	}
	return w.thirdReaches()
}

// ordinaryLine is how far a receiver who stays in the own half gets on the way
// to the line by then.
func (w *writer) ordinaryLine(id game.Player, by lesson.Anchor) court.Point {
	window := w.ball.TimeAt(by) - w.ball.Strokes[1].At - w.s.Lesson.Player(id).Legs().StrokeRecovery
	return w.within(id, w.strikes(1), w.line(id), window)
}

// slides is when the partner leaves for the other half: with the return, or as
// soon as the serve has bounced where a return down the line would come too near
// to one who waits beside the court.
func (w *writer) slides() lesson.Anchor {
	if w.inTheLine() {
		return event(0, lesson.Bounce)
	}
	return event(1, lesson.Contact)
}

// clearOfBall is how far a return must pass from the partner's middle: half a
// body and a long step, our choice.
const clearOfBall units.Feet = 3

// inTheLine says whether the return flies past the waiting partner too near.
func (w *writer) inTheLine() bool {
	mate := w.p.AtServe(w.receiver.Partner()).Place
	flown := w.ball.Strokes[1].Flown
	t, ok := flown.Reaches(mate.Y.Metres())
	if !ok {
		return false
	}
	x := groundOf(flown.At(t).At).X
	return max(x-mate.X, mate.X-x) < clearOfBall
}

// thirdReaches is when the third comes to the kitchen line of the receivers, in
// the air or after its bounce.
func (w *writer) thirdReaches() lesson.Anchor {
	s := w.ball.Strokes[third]
	y := (atKitchen * w.receiver.Team().Sign()).Metres()
	if t, ok := s.Planned.Reaches(y); ok {
		return after(event(third, lesson.Contact), before(t))
	}
	t, ok := s.Rebound.Reaches(y)
	if !ok {
		t = s.Rebound.Top()
	}
	return after(event(third, lesson.Bounce), before(t))
}
