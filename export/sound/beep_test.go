package sound

import (
	"slices"
	"testing"

	"homeside/model/game"
	"homeside/model/lesson"
)

// A player's arrivals are the ends of that player's legs, and nobody else's.
func TestArrivalsOfOnePlayer(t *testing.T) {
	r := builtIn(t)
	for _, id := range game.Players {
		for _, b := range Of(r, id).Beeps {
			if b.Kind != Arrival {
				continue
			}
			p, before := r.At(b.At).Players[id].Run, r.At(b.At - 0.05).Players[id].Run
			if p == before {
				t.Errorf("%v arrives at %v, but was at %v before as well", id, b.At, p)
			}
		}
	}
	all, one := len(Of(r).Beeps), len(Of(r, game.Far1).Beeps)
	if one >= all {
		t.Errorf("one player makes %d beeps, all four %d, want more", one, all)
	}
}

// Every contact that comes to pass is there, at its time, and no other.
func TestContacts(t *testing.T) {
	r := builtIn(t)
	var want []Beep
	for i, s := range r.Strokes {
		if r.Reached(s.At) {
			want = append(want, Beep{s.At, Contact})
		}
		if at, ok := r.TimeOf(lesson.ContactOf(i)); !ok || at != s.At {
			t.Errorf("stroke %d is at %v, its contact at %v", i, s.At, at)
		}
	}
	got := slices.DeleteFunc(slices.Clone(Of(r).Beeps), func(b Beep) bool { return b.Kind != Contact })
	if !slices.Equal(got, want) {
		t.Errorf("contacts at %v, want %v", got, want)
	}
	if !slices.IsSortedFunc(Of(r).Beeps, func(a, b Beep) int {
		if a.At < b.At {
			return -1
		}
		return 1
	}) {
		t.Errorf("beeps are not in the order of their times: %v", Of(r).Beeps)
	}
}

// No two kinds share a pitch, and none is an overtone of another within a
// semitone.
func TestPitchesDiffer(t *testing.T) {
	const semitone = 1.0594630943592953 // the twelfth root of 2
	for _, a := range Kinds() {
		for _, b := range Kinds() {
			for n := 1.0; n <= 4; n++ {
				if over := b.Pitch() * n / a.Pitch(); a != b && over < semitone && over > 1/semitone {
					t.Errorf("%v Hz is overtone %v of %v Hz", a.Pitch(), n, b.Pitch())
				}
			}
		}
	}
}
