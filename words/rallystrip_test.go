package words

import (
	"testing"

	"homeside/model/lesson"
	"homeside/model/units"
)

func TestTick(t *testing.T) {
	for at, want := range map[units.Seconds]string{0: "0 s", -1: "-1 s", 0.5: "0.5 s", 10: "10 s", 1.25: "1.25 s", -0.001: "0 s", 20: "20 s"} {
		if got := Tick(at); got != want {
			t.Errorf("Tick(%v) = %q, want %q", float64(at), got, want)
		}
	}
}

func TestMeaning(t *testing.T) {
	for m, want := range map[lesson.Meaning]string{lesson.Stay: "stay", lesson.Switch: "switch", lesson.Fake: "fake"} {
		if got := Meaning(m); got != want {
			t.Errorf("Meaning(%v) = %q, want %q", m, got, want)
		}
	}
}
