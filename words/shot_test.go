package words

import (
	"testing"

	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// Every member of the sets has its word.
func TestShotWords(t *testing.T) {
	if got, want := len(ShotKinds()), len(lesson.ShotKinds)+1; got != want {
		t.Errorf("%d words for kinds of shot, want %d", got, want)
	}
	if got, want := len(Meets()), int(lesson.SecondTop)+1; got != want {
		t.Errorf("%d words for ways to meet a ball, want %d", got, want)
	}
}

func TestSpin(t *testing.T) {
	for _, c := range []struct {
		w    units.RPM
		want string
	}{{300, "Topspin 300 rpm"}, {-250, "Backspin 250 rpm"}, {0, "No spin"}} {
		if got := Spin(c.w); got != c.want {
			t.Errorf("Spin(%v) = %q, want %q", float64(c.w), got, c.want)
		}
	}
}

func TestOverNet(t *testing.T) {
	if got, want := OverNet(5.5, 2.75), "2 ft 9 in over"; got != want {
		t.Errorf("OverNet(5.5, 2.75) = %q, want %q", got, want)
	}
	if got, want := OverNet(2, 2.5), "6 in under"; got != want {
		t.Errorf("OverNet(2, 2.5) = %q, want %q", got, want)
	}
	if got, want := TimesNet(8.5, 34.0/12), "3.0 × net"; got != want {
		t.Errorf("TimesNet(8.5, 34 in) = %q, want %q", got, want)
	}
}

// Facts section 4: 10 ft in 1.21 s and 15 ft in 1.55 s at 6 m/s and 1 s, run and
// stop with 5 m/s2 in 1.60 and 1.99 s (computed with an independent program).
func TestPaceMeans(t *testing.T) {
	want := "Estimates, from standing: 10 ft in 1.21 s, stopped in 1.60 s. 15 ft in 1.55 s, stopped in 1.99 s. Not instructions to sprint."
	if got := PaceMeans(movement.DefaultPace()); got != want {
		t.Errorf("PaceMeans(default) = %q, want %q", got, want)
	}
}

func TestPlayerWords(t *testing.T) {
	if got, want := len(Hands()), int(lesson.LeftHanded)+1; got != want {
		t.Errorf("%d words for hands, want %d", got, want)
	}
	if got, want := len(Wants()), int(lesson.WantLeft)+1; got != want {
		t.Errorf("%d words for wishes, want %d", got, want)
	}
}
