package settings

import (
	"slices"
	"testing"

	"homeside/words"
)

func TestLookIsDark(t *testing.T) {
	for _, c := range []struct {
		look         Look
		system, want bool
	}{{AsSystem, false, false}, {AsSystem, true, true}, {Light, true, false}, {Light, false, false}, {Dark, false, true}, {Dark, true, true}} {
		if got := c.look.Dark(c.system); got != c.want {
			t.Errorf("%d.Dark(%v) = %v, want %v", c.look, c.system, got, c.want)
		}
	}
}

// Everybody who asked hears of a change, in order, and of a change only.
func TestChangesAreTold(t *testing.T) {
	h := Hold(Settings{Look: Light})
	var heard []string
	h.OnChange(func(s Settings) { heard = append(heard, "first", s.Measures.Tag()) })
	h.OnChange(func(Settings) { heard = append(heard, "second") })

	h.Set(Settings{Look: Light})
	if len(heard) > 0 {
		t.Errorf("Set of the same settings told %v", heard)
	}
	want := Settings{Look: Light, Measures: words.Metric}
	h.Set(want)
	if got := h.Now(); got != want {
		t.Errorf("Now() = %+v, want %+v", got, want)
	}
	if !slices.Equal(heard, []string{"first", "m", "second"}) {
		t.Errorf("told %v, want first with m, then second", heard)
	}
}

func TestNobodysSettings(t *testing.T) {
	var h *Held
	if got := h.Now(); got != (Settings{}) {
		t.Errorf("Now() of nil = %+v, want the zero value", got)
	}
}
