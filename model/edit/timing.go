package edit

import (
	"slices"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Arrive is the play with a player at keyframe i at another time.
func Arrive(p lesson.Play, id game.Player, i int, at lesson.Anchor) lesson.Play {
	track := slices.Clone(p.Tracks[id])
	track[i].At = at
	return p.WithTrack(id, track)
}

// Leave is the play with a player's run to keyframe i starting at another time;
// nil starts it at once.
func Leave(p lesson.Play, id game.Player, i int, at *lesson.Anchor) lesson.Play {
	track := slices.Clone(p.Tracks[id])
	track[i].Leave = at
	return p.WithTrack(id, track)
}

// TakeTime is the play with shot i said by its time in the air.
func TakeTime(p lesson.Play, i int, t units.Seconds) lesson.Play {
	s := p.Shots[i]
	s.Intent = lesson.Time(t)
	return p.WithShot(i, s)
}

// StartAt is the play that is shown from another time before the serve on.
func StartAt(p lesson.Play, lead units.Seconds) lesson.Play {
	p.Lead = lead
	return p
}

// AddCue is the play with one more cue, the last of its list.
func AddCue(p lesson.Play, c lesson.Cue) lesson.Play {
	p.Cues = append(slices.Clip(p.Cues), c)
	return p
}

// ReplaceCue is the play with cue i replaced.
func ReplaceCue(p lesson.Play, i int, c lesson.Cue) lesson.Play {
	p.Cues = slices.Clone(p.Cues)
	p.Cues[i] = c
	return p
}

// RemoveCue is the play without cue i; a play without cues has a nil list.
func RemoveCue(p lesson.Play, i int) lesson.Play {
	p.Cues = slices.Delete(slices.Clone(p.Cues), i, i+1)
	if len(p.Cues) == 0 {
		p.Cues = nil
	}
	return p
}

// RemoveKeyframe is the play without keyframe i of a player, who has more than one.
func RemoveKeyframe(p lesson.Play, id game.Player, i int) lesson.Play {
	return p.WithTrack(id, slices.Delete(slices.Clone(p.Tracks[id]), i, i+1))
}
