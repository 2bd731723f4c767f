package lesson

import (
	"testing"

	"homeside/model/court"
)

// A kind is hit in the lesson's own manner where it has one, else in ours.
func TestManner(t *testing.T) {
	own := Manner{Intent: Apex(6), Spin: -200}
	l := Lesson{Vocabulary: Vocabulary{Drop: &own}}
	if got := l.Manner(Drop); got != own {
		t.Errorf("Manner(Drop) = %v, want the lesson's own %v", got, own)
	}
	if got, want := l.Manner(Lob), manners[Lob]; got != want {
		t.Errorf("Manner(Lob) = %v, want the built-in %v", got, want)
	}
	if got, want := l.Manner(ShotKind(200)), manners[OwnShot]; got != want {
		t.Errorf("Manner(200) = %v, want %v", got, want)
	}
}

// Every built-in manner is sound, and a shot keeps its aim and how it is met.
func TestBuiltInManners(t *testing.T) {
	s := Shot{Aim: court.Pt(3, 4), Meet: Meet{How: OnVolley, Height: 3}}
	for _, k := range ShotKinds {
		c := &checker{}
		c.manner(manners[k])
		if len(c.problems) > 0 {
			t.Errorf("manner of %v: %v", k, c.problems)
		}
		hit := s.Hit(k, manners[k])
		if hit.Kind != k || hit.Intent != manners[k].Intent || hit.Aim != s.Aim || hit.Meet != s.Meet {
			t.Errorf("Hit(%v) = %v", k, hit)
		}
	}
}
