package roster_test

import (
	"errors"
	"math"
	"reflect"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/movement"
	"homeside/model/roster"
)

func pair(name, one, two string) roster.Pair {
	return roster.Pair{Name: name, Signs: lesson.Signs{lesson.Switch, lesson.Stay, lesson.Fake}, Players: [2]lesson.Player{{Name: one, Serving: lesson.WantLeft}, {Name: two, Hand: lesson.LeftHanded}}}
}

// A pair goes into a lesson as either team; everything else stays.
func TestIn(t *testing.T) {
	l := lessontest.Sample()
	l.Teams[court.Far].Starter = 2
	p := pair("Harbour Lane", "Ivo", "Mara")
	for _, e := range court.Ends {
		got := p.In(l, e)
		if roster.PairOf(got, e) != p || got.Player(game.PlayerOf(e, 2)) != p.Players[1] {
			t.Errorf("In(%v): the team is %+v, want %+v", e, got.Teams[e], p)
		}
		if got.Teams[e].Starter != l.Teams[e].Starter || got.Teams[e.Other()] != l.Teams[e.Other()] || len(got.Plays) != len(l.Plays) {
			t.Errorf("In(%v) changed more than the pair", e)
		}
		if back := roster.PairOf(l, e).In(got, e); !reflect.DeepEqual(back, l) {
			t.Errorf("In(%v) of the team that was there gives another lesson", e)
		}
	}
}

func TestWith(t *testing.T) {
	a, b := pair("A", "Ivo", "Mara"), pair("B", "Oskar", "Tilde")
	a.Notes = "invented"
	r := roster.Roster{}.With(a).With(b)
	again := pair("A", "Ivo", "Nele")
	got := r.With(again)
	again.Notes = a.Notes
	if want := []roster.Pair{again, b}; !reflect.DeepEqual(got.Pairs, want) {
		t.Errorf("With(A again) = %+v, want %+v", got.Pairs, want)
	}
	if want := []roster.Pair{a, b}; !reflect.DeepEqual(r.Pairs, want) {
		t.Errorf("With changed the roster it was called on to %+v", r.Pairs)
	}
	if got, want := r.Without(0).Pairs, []roster.Pair{b}; !reflect.DeepEqual(got, want) || len(r.Pairs) != 2 {
		t.Errorf("Without(0) = %+v, want %+v and the old one as it was", got, want)
	}
}

func TestValidate(t *testing.T) {
	nan := movement.DefaultPace()
	nan.Braking = math.NaN()
	for _, c := range []struct {
		name    string
		change  func(*roster.Roster)
		pointer string
	}{
		{"sound", func(*roster.Roster) {}, ""},
		{"a long title", func(r *roster.Roster) { r.Title = strings.Repeat("x", lesson.MaxTitle+1) }, "/title"},
		{"a long name", func(r *roster.Roster) { r.Pairs[1].Name = strings.Repeat("x", lesson.MaxName+1) }, "/pairs/1/name"},
		{"long notes", func(r *roster.Roster) { r.Pairs[1].Notes = strings.Repeat("x", lesson.MaxNotes+1) }, "/pairs/1/notes"},
		{"a hand", func(r *roster.Roster) { r.Pairs[0].Players[1].Hand = 9 }, "/pairs/0/players/second/hand"},
		{"a wish", func(r *roster.Roster) { r.Pairs[0].Players[0].Receiving = 9 }, "/pairs/0/players/first/receiving"},
		{"a pace without a number", func(r *roster.Roster) { r.Pairs[0].Players[0].Pace = &nan }, "/pairs/0/players/first/pace"},
		{"too many", func(r *roster.Roster) { r.Pairs = make([]roster.Pair, roster.MaxPairs+1) }, "/pairs"},
	} {
		r := roster.Roster{Pairs: []roster.Pair{pair("A", "Ivo", "Mara"), pair("B", "Oskar", "Tilde")}}
		c.change(&r)
		got := roster.Validate(r)
		if c.pointer == "" {
			if got != nil {
				t.Errorf("%s: Validate = %v, want nil", c.name, got)
			}
			continue
		}
		if len(got) != 1 || got[0].Pointer != c.pointer || !errors.Is(got[0], lesson.ErrInvalid) {
			t.Errorf("%s: Validate = %v, want one problem at %s", c.name, got, c.pointer)
		}
	}
}
