package movement

import (
	"errors"
	"math"
	"strings"
	"testing"

	"homeside/model/units"
)

func TestPresetsAreValidAndDistinct(t *testing.T) {
	seen := map[string]bool{}
	for _, p := range Presets {
		if err := p.Pace.Validate(); err != nil {
			t.Errorf("preset %s: Validate() = %v, want nil", p.Key, err)
		}
		if seen[p.Key] || p.Key == "" || p.Name == "" {
			t.Errorf("preset %q %q: want a key and a name of its own", p.Key, p.Name)
		}
		seen[p.Key] = true
		if !strings.HasPrefix(p.Assumption, "assumed") {
			t.Errorf("preset %s: Assumption = %q, want it to say that it is assumed", p.Key, p.Assumption)
		}
		if got, ok := PresetByKey(p.Key); !ok || got != p {
			t.Errorf("PresetByKey(%q) = %v, %v, want the preset", p.Key, got, ok)
		}
	}
	if _, ok := PresetByKey("nobody"); ok {
		t.Error(`PresetByKey("nobody") found a preset`)
	}
}

// The speeds and time constants of the project's presets; published figures
// they rest on stand beside them.
func TestPresetFigures(t *testing.T) {
	for _, c := range []struct {
		key         string
		v, tau, brk float64
	}{
		{"fit-adult", 7, 1, 5}, {"recreational-adult", 6, 1, 5}, {"50-plus", 5, 1, 5}, {"65-plus", 4, 1, 3}, {"cautious", 3, 0.8, 3},
	} {
		p, _ := PresetByKey(c.key)
		if got := p.Pace; float64(got.TopSpeed) != c.v || float64(got.Tau) != c.tau || got.Braking != c.brk {
			t.Errorf("PresetByKey(%q).Pace = %v m/s, %v s, %v m/s2, want %v, %v, %v", c.key, got.TopSpeed, got.Tau, got.Braking, c.v, c.tau, c.brk)
		}
		// Fastest walk 1.75-2.53 m/s (Bohannon 1997) is a floor.
		if p.Pace.TopSpeed < 2.53 {
			t.Errorf("preset %s: top speed %v m/s, want at least a fast walk", c.key, p.Pace.TopSpeed)
		}
	}
	if got := DefaultPace().TopSpeed; got != 6 {
		t.Errorf("DefaultPace().TopSpeed = %v m/s, want 6", got)
	}
}

func TestValidateNamesTheFigure(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*Pace)
	}{
		{"top speed", func(p *Pace) { p.TopSpeed = 0 }},
		{"top speed", func(p *Pace) { p.TopSpeed = units.MetresPerSecond(math.NaN()) }},
		{"time constant", func(p *Pace) { p.Tau = -1 }},
		{"braking", func(p *Pace) { p.Braking = math.Inf(1) }},
		{"reaction", func(p *Pace) { p.Reaction = -0.1 }},
		{"stroke recovery", func(p *Pace) { p.StrokeRecovery = 3 }},
		{"half turn", func(p *Pace) { p.Turn = 6 }},
		{"shuffle ratio", func(p *Pace) { p.ShuffleRatio = 0 }},
		{"backward ratio", func(p *Pace) { p.BackwardRatio = 1.5 }},
		{"arm", func(p *Pace) { p.Arm = -1 }},
		{"paddle", func(p *Pace) { p.Paddle = 3 }},
		{"lunge", func(p *Pace) { p.Lunge = 3 }},
	} {
		p := DefaultPace()
		c.spoil(&p)
		err := p.Validate()
		if !errors.Is(err, ErrPace) || !strings.Contains(err.Error(), c.name) {
			t.Errorf("%+v.Validate() = %v, want an ErrPace that names the %s", p, err, c.name)
		}
	}
	if err := (Pace{}).Validate(); !errors.Is(err, ErrPace) {
		t.Errorf("Pace{}.Validate() = %v, want ErrPace", err)
	}
}

func TestWaysOfMoving(t *testing.T) {
	p := DefaultPace()
	if got, want := p.Shuffling().TopSpeed, p.TopSpeed*units.MetresPerSecond(p.ShuffleRatio); got != want {
		t.Errorf("Shuffling().TopSpeed = %v m/s, want %v", got, want)
	}
	if got, want := p.Backward().TopSpeed, p.TopSpeed*units.MetresPerSecond(p.BackwardRatio); got != want {
		t.Errorf("Backward().TopSpeed = %v m/s, want %v", got, want)
	}
	if got, want := float64(p.Reach()), 0.6325+0.34+0.8; math.Abs(got-want) > 1e-12 {
		t.Errorf("Reach() = %v m, want %v", got, want)
	}
}

func TestTurnTime(t *testing.T) {
	chair, _ := PresetByKey("wheelchair")
	for _, c := range []struct {
		by   units.Degrees
		want units.Seconds
	}{{0, 0}, {180, 0.8}, {-180, 0.8}, {90, 0.4}, {-45, 0.2}, {270, 0.4}, {360, 0}, {units.Degrees(math.NaN()), 0}, {units.Degrees(math.Inf(1)), 0}} {
		if got := chair.Pace.TurnTime(c.by); math.Abs(float64(got-c.want)) > 1e-12 {
			t.Errorf("TurnTime(%v) = %v s, want %v", c.by, got, c.want)
		}
	}
	if got := DefaultPace().TurnTime(180); got != 0 {
		t.Errorf("on foot TurnTime(180) = %v s, want 0", got)
	}
}
