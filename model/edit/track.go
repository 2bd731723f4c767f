package edit

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Bend is the play with the run to keyframe i of a player led through a point
// halfway.
func Bend(p lesson.Play, id game.Player, i int, via court.Point) lesson.Play {
	return withKeyframe(p, id, i, func(k lesson.Keyframe) lesson.Keyframe {
		k.Via = new(within(via, bounds))
		return k
	})
}

// Straighten is the play with the run to keyframe i of a player straight.
func Straighten(p lesson.Play, id game.Player, i int) lesson.Play {
	return withKeyframe(p, id, i, func(k lesson.Keyframe) lesson.Keyframe {
		k.Via = nil
		return k
	})
}

// Face is the play with a player looking another way at keyframe i.
func Face(p lesson.Play, id game.Player, i int, facing units.Degrees) lesson.Play {
	return withKeyframe(p, id, i, func(k lesson.Keyframe) lesson.Keyframe {
		k.Facing = facing.Normal()
		return k
	})
}

// PassThrough is the play with a player who need not stop at keyframe i, or must.
func PassThrough(p lesson.Play, id game.Player, i int, through bool) lesson.Play {
	return withKeyframe(p, id, i, func(k lesson.Keyframe) lesson.Keyframe {
		k.Through = through
		return k
	})
}

func withKeyframe(p lesson.Play, id game.Player, i int, change func(lesson.Keyframe) lesson.Keyframe) lesson.Play {
	track := slices.Clone(p.Tracks[id])
	track[i] = change(track[i])
	return p.WithTrack(id, track)
}

// AimAt is the play with shot i meant to land at another place.
func AimAt(p lesson.Play, i int, aim court.Point) lesson.Play {
	s := p.Shots[i]
	s.Aim = within(aim, bounds)
	return p.WithShot(i, s)
}
