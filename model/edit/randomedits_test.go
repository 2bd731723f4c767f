package edit_test

import (
	"slices"

	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

func sorted(names []string) []string {
	slices.Sort(names)
	return names
}

// edits are all edits of the package by their names, with random arguments that
// a caller who keeps to their comments may give.
var edits = map[string]anEdit{
	"AddPlay":      inserting(func(d *draws, l lesson.Lesson) lesson.Lesson { return edit.AddPlay(l, one(d, d.plays)) }),
	"OrdinaryPlay": inserting(func(_ *draws, l lesson.Lesson) lesson.Lesson { return edit.AddPlay(l, edit.OrdinaryPlay()) }),
	"InsertPlays": inserting(func(d *draws, l lesson.Lesson) lesson.Lesson {
		return edit.InsertPlays(l, d.IntN(len(l.Plays)+1), one(d, d.plays), one(d, d.plays))
	}),
	"Carry": inserting(func(d *draws, l lesson.Lesson) lesson.Lesson {
		m, err := game.Replay(l.Settings(), winners(d))
		if err != nil || m.State().Over() {
			return l
		}
		return edit.AddPlay(l, edit.Carry(l, d.IntN(len(l.Plays)+1), m.State()))
	}),
	"RemovePlay": onLesson(func(d *draws, l lesson.Lesson, i int) lesson.Lesson { return edit.RemovePlay(l, i) }),
	"MovePlay": onLesson(func(d *draws, l lesson.Lesson, i int) lesson.Lesson {
		return edit.MovePlay(l, i, d.IntN(len(l.Plays)))
	}),
	"ReplacePlay": onLesson(func(d *draws, l lesson.Lesson, i int) lesson.Lesson {
		return edit.ReplacePlay(l, i, one(d, d.plays))
	}),
	"MirrorSides":  onLesson(func(_ *draws, l lesson.Lesson, i int) lesson.Lesson { return edit.MirrorSides(l, i) }),
	"ReverseRoles": onLesson(func(_ *draws, l lesson.Lesson, i int) lesson.Lesson { return edit.ReverseRoles(l, i) }),
	"SwapEnds":     func(_ *draws, l lesson.Lesson) (lesson.Lesson, bool) { return edit.SwapEnds(l), true },
	"ReplaceMatch": func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		return edit.ReplaceMatch(l, one(d, d.games)), true
	},
	"Starter": func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		return edit.Starter(l, d.end(), 1+d.IntN(2)), true
	},
	"Signs": func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		return edit.Signs(l, d.end(), lesson.Signs{lesson.Switch, lesson.Fake, lesson.Stay}), true
	},
	"FirstTeam": func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) { return edit.FirstTeam(l, d.end()), true },
	"AddReel": func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		if len(l.Reels) >= fewPlays {
			return l, false
		}
		return edit.AddReel(l, one(d, d.reels)), true
	},
	"ReplaceReel": onReel(func(d *draws, _ lesson.Reel) (lesson.Reel, bool) { return one(d, d.reels), true }),
	"RemoveReel": func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		if len(l.Reels) == 0 {
			return l, false
		}
		return edit.RemoveReel(l, d.IntN(len(l.Reels))), true
	},
	"ReplaceLogo": func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		return edit.ReplaceLogo(l, l.Logo), true
	},
	"InsertTake": onReel(func(d *draws, r lesson.Reel) (lesson.Reel, bool) {
		if len(r.Takes) >= fewTakes {
			return r, false
		}
		return edit.InsertTake(r, d.IntN(len(r.Takes)+1), lesson.Take{Play: 1 + d.IntN(5)}), true
	}),
	"ReplaceTake": onTake(func(d *draws, r lesson.Reel, i int) lesson.Reel {
		return edit.ReplaceTake(r, i, lesson.Take{Play: 1 + d.IntN(5), Loops: d.IntN(3)})
	}),
	"RemoveTake": onTake(func(_ *draws, r lesson.Reel, i int) lesson.Reel { return edit.RemoveTake(r, i) }),
	"MoveTake": onTake(func(d *draws, r lesson.Reel, i int) lesson.Reel {
		return edit.MoveTake(r, i, d.IntN(len(r.Takes)))
	}),

	"Mirrored": onPlay(func(_ *draws, p lesson.Play) (lesson.Play, bool) { return edit.Mirrored(p), true }),
	"Turned":   onPlay(func(_ *draws, p lesson.Play) (lesson.Play, bool) { return edit.Turned(p), true }),
	"Renamed":  onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) { return edit.Renamed(p, d.parting()), true }),
	"Situate": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		call := game.Call{Serving: d.IntN(11), Receiving: d.IntN(11), Server: 1 + d.IntN(2)}
		return edit.Situate(p, lesson.Situation{Call: call, Serving: d.end()}), true
	}),
	"Shift": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		return edit.Shift(p, d.parts(), d.beyond()), true
	}),
	"Remove": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) { return edit.Remove(p, d.parts()), true }),
	"MoveKeyframe": onKeyframe(func(d *draws, p lesson.Play, id game.Player, i int) lesson.Play {
		return edit.MoveKeyframe(p, id, i, d.point())
	}),
	"InsertKeyframe": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		id := d.player()
		if len(p.Tracks[id]) >= fewTakes {
			return p, false
		}
		return edit.InsertKeyframe(p, id, d.IntN(len(p.Tracks[id])+1), d.keyframe(p)), true
	}),
	"RemoveKeyframe": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		id := d.player()
		if len(p.Tracks[id]) < 2 {
			return p, false
		}
		return edit.RemoveKeyframe(p, id, d.IntN(len(p.Tracks[id]))), true
	}),
	"Bend": onKeyframe(func(d *draws, p lesson.Play, id game.Player, i int) lesson.Play {
		return edit.Bend(p, id, i, d.beyond())
	}),
	"Straighten": onKeyframe(func(_ *draws, p lesson.Play, id game.Player, i int) lesson.Play {
		return edit.Straighten(p, id, i)
	}),
	"Face": onKeyframe(func(d *draws, p lesson.Play, id game.Player, i int) lesson.Play {
		return edit.Face(p, id, i, units.Degrees(5000*(2*d.Float64()-1)))
	}),
	"PassThrough": onKeyframe(func(d *draws, p lesson.Play, id game.Player, i int) lesson.Play {
		return edit.PassThrough(p, id, i, d.IntN(2) == 0)
	}),
	"Arrive": onKeyframe(func(d *draws, p lesson.Play, id game.Player, i int) lesson.Play {
		return edit.Arrive(p, id, i, d.anchor(p))
	}),
	"Leave": onKeyframe(func(d *draws, p lesson.Play, id game.Player, i int) lesson.Play {
		return edit.Leave(p, id, i, new(d.anchor(p)))
	}),
	"AimAt": onList(shots, func(d *draws, p lesson.Play, i int) lesson.Play { return edit.AimAt(p, i, d.beyond()) }),
	"AddShot": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		if len(p.Shots) >= fewTakes {
			return p, false
		}
		next := edit.NextShot(lesson.Lesson{}, p, game.PlayerOf(p.Shots[len(p.Shots)-1].By.Team().Other(), 1+d.IntN(2)), d.beyond().X)
		return edit.AddShot(p, next), true
	}),
	"HitBy": onList(shots, func(d *draws, p lesson.Play, i int) lesson.Play { return edit.HitBy(p, i, d.player()) }),
	"CutShots": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		at := func(a lesson.Anchor) units.Seconds { return units.Seconds(a.Event.Shot) + a.Offset }
		return edit.CutShots(p, d.IntN(len(p.Shots)+2), at), true
	}),
	"TakeTime": onList(shots, func(d *draws, p lesson.Play, i int) lesson.Play {
		return edit.TakeTime(p, i, 0.1+units.Seconds(5*d.Float64()))
	}),
	"StartAt": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		return edit.StartAt(p, lesson.MaxOffset*units.Seconds(d.Float64())), true
	}),
	"AddCue": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		return edit.AddCue(p, d.cue(p)), len(p.Cues) < fewTakes
	}),
	"ReplaceCue": onList(cues, func(d *draws, p lesson.Play, i int) lesson.Play { return edit.ReplaceCue(p, i, d.cue(p)) }),
	"RemoveCue":  onList(cues, func(_ *draws, p lesson.Play, i int) lesson.Play { return edit.RemoveCue(p, i) }),
	"AddMark": onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		return edit.AddMark(p, d.mark(p)), len(p.Marks) < fewTakes
	}),
	"ReplaceMark": onList(marks, func(d *draws, p lesson.Play, i int) lesson.Play { return edit.ReplaceMark(p, i, d.mark(p)) }),
	"MoveTip":     onList(marks, func(d *draws, p lesson.Play, i int) lesson.Play { return edit.MoveTip(p, i, d.beyond()) }),
}

// inserting is an edit that adds plays while there are few.
func inserting(do func(d *draws, l lesson.Lesson) lesson.Lesson) anEdit {
	return func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		if len(l.Plays) >= fewPlays {
			return l, false
		}
		return do(d, l), true
	}
}

// onLesson is an edit of a lesson about one of its plays.
func onLesson(do func(d *draws, l lesson.Lesson, i int) lesson.Lesson) anEdit {
	return func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		if len(l.Plays) == 0 {
			return l, false
		}
		return do(d, l, d.IntN(len(l.Plays))), true
	}
}

// onTake is an edit of a reel about one of its takes.
func onTake(do func(d *draws, r lesson.Reel, i int) lesson.Reel) anEdit {
	return onReel(func(d *draws, r lesson.Reel) (lesson.Reel, bool) {
		if len(r.Takes) == 0 {
			return r, false
		}
		return do(d, r, d.IntN(len(r.Takes))), true
	})
}

// winners are those of some first rallies of a game.
func winners(d *draws) string {
	w := make([]byte, d.IntN(20))
	for i := range w {
		w[i] = "nf"[d.IntN(2)]
	}
	return string(w)
}
