package formation

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

const fourth = 3 // the number of the fourth shot

// Where a poach takes the ball: common practice, the figures our choice.
const (
	poachAside  units.Feet = 1.5           // third, in the receiver's half but near the middle
	blockAside  units.Feet = 3.5           // third at the receiver's partner, who blocks it
	weakAside   units.Feet = 4.5           // the weak fourth, in the poacher's half
	coverAside  units.Feet = 1             // the least that a half is covered from
	weakDeep    units.Feet = 12            // the weak fourth
	weakHeight  units.Feet = 7             // its apex
	blockHeight units.Feet = 6             // apex of the poacher's deep volley
	volleyAt    units.Feet = 4             // height at which it is taken
	coverBehind            = atKitchen + 5 // the receiver who covers
)

// poachesThird says whether the receiver's partner leaves for the third.
func (w *writer) poachesThird() bool { return w.kind == lesson.Poached && !w.s.Serves() }

// poachesFourth says whether a server goes forward for a weak fourth.
func (w *writer) poachesFourth() bool { return w.kind == lesson.Poached && w.s.Serves() }

// more are the shots after the third.
func (w *writer) more() {
	mate := w.receiver.Partner()
	switch {
	case w.s.Lob:
		w.lob()
	case w.s.Third == DriveAtRunner:
		w.meet(third, 0)
		w.p.Shots = append(w.p.Shots, lesson.Shot{By: w.receiver, Aim: w.s.at(w.serving, 0, driveDeep), Intent: lesson.Apex(blockHeight)})
	case w.poachesThird():
		w.p.Shots[third] = w.s.hit(w.thirdBy(), lesson.Drive, w.s.at(mate.Team(), poachAside, driveDeep))
		w.meet(third, 0)
		w.p.Shots = append(w.p.Shots, lesson.Shot{By: mate, Aim: w.s.at(w.serving, 0, driveDeep), Intent: lesson.Apex(blockHeight)})
	case w.poachesFourth():
		w.p.Shots[third] = w.s.hit(w.thirdBy(), lesson.Drive, w.s.at(mate.Team(), -blockAside, driveDeep))
		w.meet(third, 0)
		by := w.thirdBy().Partner()
		weak := lesson.Shot{By: mate, Aim: w.s.at(w.serving, weakAside*w.endHalf(by), weakDeep), Intent: lesson.Apex(weakHeight)}
		fifth := w.s.hit(by, lesson.Drive, w.s.at(mate.Team(), poachAside, driveDeep))
		w.p.Shots = append(w.p.Shots, weak, fifth)
		w.meet(fourth, volleyAt)
	}
}

// meet has the ball of a shot volleyed, falling through a height or, at height
// 0, as early as it comes over.
func (w *writer) meet(shot int, height units.Feet) {
	w.p.Shots[shot].Meet = lesson.Meet{How: lesson.OnVolley, Height: height}
}

// runPoachThird: the partner leaves at third contact and volleys, then takes the
// receiver's half. Until then both look as if they stayed; the receiver covers
// the half that the partner leaves, behind the partner.
func (w *writer) runPoachThird() {
	back, mate := w.receiver, w.receiver.Partner()
	contact, volley := event(third, lesson.Contact), event(fourth, lesson.Contact)
	end := after(event(fourth, lesson.Bounce), walkInTime)
	w.add(mate, stand(contact, w.p.AtServe(mate).Place))
	w.add(mate, w.carryOn(mate, volley, end))

	way := w.p.Tracks[back] // three places keep the receiver at the pace of the ordinary run: nothing shows
	for _, at := range [...]lesson.Anchor{event(1, lesson.Net), event(1, lesson.Bounce), contact} {
		on := stand(at, w.onTheWay(back, at, way))
		on.Through = true
		w.add(back, on)
	}
	w.add(back, w.cover(back, w.p.Tracks[back][len(w.p.Tracks[back])-1], end))
}

// carryOn is the run of a poacher, after the volley, into the receiver's half.
func (w *writer) carryOn(id game.Player, volley, end lesson.Anchor) lesson.Keyframe {
	wait := w.s.Lesson.Player(id).Legs().StrokeRecovery
	window := w.ball.TimeAt(end) - w.ball.TimeAt(volley) - wait
	from := w.runAt(id, after(volley, wait), w.p.Tracks[id])
	to := w.within(id, from, w.s.at(id.Team(), halfMiddle, atKitchen), window)
	return leaving(stand(end, w.across(id, to, coverAside, atKitchen)), after(volley, wait))
}

// cover is the run of a receiver, already on the way to the line, to the half
// that the poacher leaves, behind the poacher: as far as it goes by then, and at
// least across the centreline.
func (w *writer) cover(id game.Player, on lesson.Keyframe, end lesson.Anchor) lesson.Keyframe {
	window := w.ball.TimeAt(end) - w.ball.TimeAt(on.At)
	to := w.within(id, on.Place, w.s.at(id.Team(), -halfMiddle, coverBehind), window)
	return stand(end, w.across(id, to, -coverAside, coverBehind))
}

// across is a place or, where it is not as far across the centreline as the
// least that will do, that least one.
func (w *writer) across(id game.Player, p court.Point, along, behind units.Feet) court.Point {
	if got := p.X * w.s.sign(id.Team()); along < 0 && got > along || along > 0 && got < along {
		return w.s.at(id.Team(), along, behind)
	}
	return p
}

// runPoachFourth: who does not strike the third goes forward behind it.
func (w *writer) runPoachFourth() {
	striker := w.p.Shots[third].By
	mate := striker.Partner()
	contact := event(third, lesson.Contact)
	w.add(mate, stand(contact, w.ready(mate)))
	end := after(event(fourth, lesson.Contact), walkInTime)
	w.add(striker, w.walk(striker, end))
}

// onTheWay is where a receiver who runs to the own side of the kitchen line is
// at a time.
func (w *writer) onTheWay(id game.Player, at lesson.Anchor, start []lesson.Keyframe) court.Point {
	set := w.thirdReaches()
	return w.runAt(id, at, append(slices.Clone(start), stand(set, w.ordinaryLine(id, set))))
}

// runAt is where a player who runs a track is at a time, as run.
func (w *writer) runAt(id game.Player, at lesson.Anchor, track []lesson.Keyframe) court.Point {
	try := *w
	try.p = w.p.WithTrack(id, track)
	r, err := try.solve()
	if err != nil { // the same shots have been solved before
		return w.p.AtServe(id).Place
	}
	p := r.Tracks[id].RunAt(r.TimeAt(at)).Place
	return court.Pt(rounded(p.X), rounded(p.Y))
}
