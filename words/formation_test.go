package words

import (
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

func TestSign(t *testing.T) {
	for _, c := range []struct {
		sign formation.Sign
		want string
	}{
		{formation.Sign{}, "never shows"},
		{formation.Sign{Use: formation.ShowsAtServe, At: -1.5}, "shows before the serve"},
		{formation.Sign{Use: formation.InTimeToUse, Before: 0.62}, "shows 0.62 s before they hit: early enough to aim elsewhere"},
		{formation.Sign{Use: formation.TooLateToUse, Before: 0.31}, "shows 0.31 s before they hit: seen, too late to use"},
		{formation.Sign{Use: formation.AfterTheyHit, Before: -0.1}, "shows 0.10 s after they hit: too late to see"},
	} {
		if got := Sign(c.sign); got != c.want {
			t.Errorf("Sign(%+v) = %q, want %q", c.sign, got, c.want)
		}
	}
	var said []string
	for _, use := range formation.Uses {
		said = append(said, Sign(formation.Sign{Use: use, Before: 1}))
	}
	if slices.Sort(said); len(slices.Compact(said)) != len(formation.Uses) {
		t.Errorf("some uses of a sign are worded alike: %q", said)
	}
}

func TestFormationNotes(t *testing.T) {
	w := formation.Written{
		Kind:      lesson.Switched,
		Situation: formation.Situation{Lesson: legPair(), Team: court.Near},
		Margins:   map[game.Player]units.Seconds{game.Near1: 0.25, game.Near2: 0.5},
		Answer:    formation.Answer{Shot: 1, Apex: 10, Needed: 10},
		Play:      lesson.Play{Front: new(game.Near2)},
	}
	tell := &formation.Tell{Place: formation.Sign{Use: formation.TooLateToUse, Before: 0.31}}
	for _, c := range []struct {
		change func(*formation.Written)
		tell   *formation.Tell
		want   string
	}{
		{func(*formation.Written) {}, tell,
			"In time. Ivo has 0.25 s to spare, Mara has 0.50 s to spare. Mara in front: say so before the serve. The formation shows 0.31 s before they hit: seen, too late to use."},
		{func(w *formation.Written) { w.Play.Front, w.Margins = nil, nil }, nil, "In time. Nobody has to run."},
		{func(w *formation.Written) {
			w.Play.Front, w.Answer = nil, formation.Answer{Verdict: formation.Raised, Shot: 1, Apex: 10.5, Needed: 10.5}
		}, nil, "In time with a return 10 ft 6 in high. Ivo has 0.25 s to spare, Mara has 0.50 s to spare."},
		{func(w *formation.Written) {
			w.Play.Front, w.Answer = nil, formation.Answer{Verdict: formation.TooLate, Shot: 1, Apex: 10, Needed: 16}
			w.Margins = map[game.Player]units.Seconds{game.Near1: -0.54}
		}, nil, "Ivo is 0.54 s late. The return would have to rise to 16 ft, more than 12 ft is too much to ask: do not switch here."},
		{func(w *formation.Written) {
			w.Play.Front, w.Answer = nil, formation.Answer{Verdict: formation.TooLate}
			w.Margins = map[game.Player]units.Seconds{game.Near2: -1}
		}, nil, "Mara is 1.00 s late. No serve buys that time: do not switch here."},
		{func(w *formation.Written) {
			w.Kind, w.Play.Front, w.Answer = lesson.Poached, nil, formation.Answer{Verdict: formation.TooLate}
			w.Margins = map[game.Player]units.Seconds{game.Near2: -0.2}
		}, nil, "Mara is 0.20 s late. Do not poach with these legs."},
	} {
		got := w
		c.change(&got)
		if said := FormationNotes(got, c.tell); said != c.want {
			t.Errorf("FormationNotes(%v, %+v) = %q, want %q", got.Kind, got.Answer, said, c.want)
		}
	}
}
