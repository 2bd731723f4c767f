package words

import (
	"testing"

	"homeside/model/lesson"
)

func TestInitials(t *testing.T) {
	for name, want := range map[string]string{"": "", "ana": "An", "Ana María": "AM", "Ü": "Ü", "a b c d": "ABC", "Li": "Li"} {
		if got := Initials(name); got != want {
			t.Errorf("Initials(%q) = %q, want %q", name, got, want)
		}
	}
}

func TestPairLesson(t *testing.T) {
	if got := PairLesson([2]lesson.Player{{Name: "Ana"}, {Name: "Luis"}}); got != "Ana and Luis" {
		t.Errorf("PairLesson = %q, want Ana and Luis", got)
	}
	if got := PairLesson([2]lesson.Player{{Name: "Ana"}, {}}); got != "Our pair" {
		t.Errorf("PairLesson of one name = %q, want Our pair", got)
	}
}
