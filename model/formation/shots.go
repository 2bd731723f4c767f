package formation

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Where balls are aimed, in feet from the centreline and from the net: common
// practice (deep, away from the lines), the exact figures our choice.
const (
	serveDeep              = court.Baseline - 4
	wideAside   units.Feet = 8.6
	teeAside    units.Feet = 1.2
	returnDeep             = court.Baseline - 4
	returnShort            = court.Baseline - 10
	lineAside   units.Feet = 8
	dropDeep    units.Feet = 5
	driveDeep              = court.Baseline - 6
	atRunner    units.Feet = 3 // a drive at one who runs up, on the inner side
	offRunner   units.Feet = 2 // a drive beside one who runs up
	lobDeep                = court.Baseline - 5
)

// hit is a shot of a kind as the lesson means it. What is mirrored from left to
// right is hit with the opposite sidespin.
func (s Situation) hit(by game.Player, k lesson.ShotKind, aim court.Point) lesson.Shot {
	shot := lesson.Shot{By: by, Aim: aim}.Hit(k, s.Lesson.Manner(k))
	if s.State.From() == court.Left {
		shot.Side = -shot.Side
	}
	return shot
}

// serve goes into the receiver's court.
func (s Situation) serve() lesson.Shot {
	kind, aside := lesson.Serve, halfMiddle
	switch s.Serve {
	case ServeWide:
		kind, aside = lesson.WideServe, wideAside
	case ServeTee:
		aside = teeAside
	}
	by := s.State.Server()
	return s.hit(by, kind, s.at(by.Team().Other(), aside, serveDeep))
}

// returned is where the return goes along the server's baseline, positive in
// the half where the server stood at the serve.
func (w *writer) returned() (along, behind units.Feet) {
	mover := halfMiddle
	if w.s.Serves() && Moves(w.kind) {
		mover = -halfMiddle
	}
	switch w.s.Return {
	case lesson.ToMover:
		return mover, returnDeep
	case lesson.ToMiddle:
		return 0, returnDeep
	case lesson.DownLine:
		return -lineAside, returnDeep
	case lesson.Short:
		return halfMiddle, returnShort
	}
	return halfMiddle, returnDeep
}

// returnShot is the return of serve, deep and high unless it is to be short.
func (w *writer) returnShot() lesson.Shot {
	along, behind := w.returned()
	return w.s.hit(w.receiver, lesson.DeepReturn, w.s.at(w.serving, along, behind))
}

// thirdBy is the server in whose half the return lands; in the middle the one
// with the forehand there.
func (w *writer) thirdBy() game.Player {
	along, _ := w.returned()
	switch {
	case along == 0:
		right, left := w.server, w.server.Partner()
		if w.endHalf(right)*w.s.sign(w.serving)*court.SideX(w.serving, court.Right) < 0 {
			right, left = left, right
		}
		return w.s.forehandMiddle(right, left)
	case along*w.endHalf(w.server) > 0:
		return w.server
	}
	return w.server.Partner()
}

// endHalf is +1 for a player who ends in the half where the team's lead stands
// at the serve, -1 in the other.
func (w *writer) endHalf(id game.Player) units.Feet {
	half := units.Feet(1)
	if id != w.server && id != w.receiver {
		half = -1
	}
	if id.Team() == w.s.Team && Moves(w.kind) {
		half = -half
	}
	return half
}

// third is the third shot: a drop behind which the servers walk in, or a drive.
func (w *writer) third() lesson.Shot {
	by := w.thirdBy()
	other := w.receiver.Team()
	switch {
	case w.s.Third == DriveAtRunner:
		return w.s.hit(by, lesson.Drive, w.s.at(other, atRunner*w.endHalf(w.receiver), driveDeep))
	case w.s.Lob && !w.s.Serves():
		return w.s.hit(by, lesson.Lob, w.overFiller())
	case w.s.Serves() && w.kind != lesson.Poached:
		return w.s.hit(by, lesson.Drop, w.s.at(other, 2*w.endHalf(w.receiver), dropDeep))
	}
	return w.s.hit(by, lesson.Drive, w.s.at(other, -offRunner*w.endHalf(w.receiver), driveDeep))
}

// filler is the one of the pair who fills the half that the other leaves; where
// nobody changes sides, the lead's partner.
func (w *writer) filler() game.Player { return w.s.Lead().Partner() }
