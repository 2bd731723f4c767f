package session

import (
	"reflect"
	"slices"

	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// Written is the play shown as the program wrote it; false if the program did
// not write it for this score and these players, or if it has been changed since.
// It is found by writing what there is to write, since a lesson says what is
// played and not where it comes from.
func (s *Session) Written() (formation.Written, bool) {
	p, ok := s.Play()
	if !ok || s.Previewing() {
		return formation.Written{}, false
	}
	for _, returns := range []bool{false, true} {
		situation, err := s.Situation(Request{Returns: returns})
		if err != nil {
			return formation.Written{}, false
		}
		situation.Places = walksFrom(p)
		for _, k := range formation.Kinds {
			if w, ok := writtenAs(p, situation, k); ok {
				return words.Entitled(w), true
			}
		}
	}
	return formation.Written{}, false
}

// walksFrom is where a play that begins with a walk begins; nil for any other.
func walksFrom(p lesson.Play) *[4]court.Point {
	var at [4]court.Point
	for _, id := range game.Players {
		if p.ServeIndex(id) == 0 {
			return nil
		}
		at[id] = p.Tracks[id][0].Place
	}
	return &at
}

// writtenAs is a play as a formation of a kind or as one of its siblings.
func writtenAs(p lesson.Play, s formation.Situation, k formation.Kind) (formation.Written, bool) {
	for _, s.Serve = range formation.ServesTo {
		w, err := formation.Write(s, k)
		if err != nil {
			return formation.Written{}, false
		}
		if alike(w.Play, p) {
			return w, true
		}
		if s.Serve != formation.ServeMiddle {
			continue
		}
		siblings, err := w.WhatIf()
		if err != nil {
			continue
		}
		for _, other := range siblings {
			if alike(other.Play, p) {
				return other.Written, true
			}
		}
	}
	return formation.Written{}, false
}

// alike says whether two plays are the same but for their words.
func alike(a, b lesson.Play) bool {
	a.Title, a.Notes, b.Title, b.Notes = "", "", "", ""
	a.Tags, b.Tags = nil, nil
	a.Cues, b.Cues = wordless(a.Cues), wordless(b.Cues)
	return reflect.DeepEqual(a, b)
}

// wordless are texts and signals without what they say: an answer stays in the
// language in which it was written.
func wordless(cues []lesson.Cue) []lesson.Cue {
	cues = slices.Clone(cues)
	for i := range cues {
		cues[i].Text = ""
	}
	return cues
}
