package lessonfile

import (
	"fmt"
	"strings"

	"homeside/model/movement"
	"homeside/model/units"
)

// pace is a preset, by default movement.DefaultPreset, and the figures that differ from it.
type pace struct {
	Preset         string   `json:"preset,omitzero"`
	TopSpeed       *float64 `json:"top_speed_mps,omitzero"`
	Tau            *float64 `json:"tau_s,omitzero"`
	Braking        *float64 `json:"braking_mps2,omitzero"`
	Reaction       *float64 `json:"reaction_s,omitzero"`
	StrokeRecovery *float64 `json:"stroke_recovery_s,omitzero"`
	Turn           *float64 `json:"turn_s,omitzero"`
	ShuffleRatio   *float64 `json:"shuffle_ratio,omitzero"`
	BackwardRatio  *float64 `json:"backward_ratio,omitzero"`
	Arm            *float64 `json:"arm_m,omitzero"`
	Paddle         *float64 `json:"paddle_m,omitzero"`
	Lunge          *float64 `json:"lunge_m,omitzero"`
}

// figures are a pace's numbers in the order of the fields above.
type figures [11]float64

func (p *pace) fields() [len(figures{})]**float64 {
	return [...]**float64{
		&p.TopSpeed, &p.Tau, &p.Braking, &p.Reaction, &p.StrokeRecovery, &p.Turn,
		&p.ShuffleRatio, &p.BackwardRatio, &p.Arm, &p.Paddle, &p.Lunge,
	}
}

func figuresOf(p movement.Pace) figures {
	return figures{
		float64(p.TopSpeed), float64(p.Tau), p.Braking, float64(p.Reaction), float64(p.StrokeRecovery), float64(p.Turn),
		p.ShuffleRatio, p.BackwardRatio, float64(p.Arm), float64(p.Paddle), float64(p.Lunge),
	}
}

func (f figures) pace() movement.Pace {
	return movement.Pace{
		TopSpeed: units.MetresPerSecond(f[0]), Tau: units.Seconds(f[1]), Braking: f[2],
		Reaction: units.Seconds(f[3]), StrokeRecovery: units.Seconds(f[4]), Turn: units.Seconds(f[5]),
		ShuffleRatio: f[6], BackwardRatio: f[7],
		Arm: units.Metres(f[8]), Paddle: units.Metres(f[9]), Lunge: units.Metres(f[10]),
	}
}

func (r *reader) pace(p *pace) *movement.Pace {
	if p == nil {
		return nil
	}
	key := p.Preset
	if key == "" {
		key = movement.DefaultPreset
	}
	preset, ok := movement.PresetByKey(key)
	if !ok {
		r.in("pace", func() { r.fail("preset", unknownPreset(key)) })
	}
	f := figuresOf(preset.Pace)
	for i, field := range p.fields() {
		if *field != nil {
			f[i] = **field
		}
	}
	return new(f.pace())
}

func unknownPreset(key string) error {
	var keys []string
	for _, p := range movement.Presets {
		keys = append(keys, p.Key)
	}
	return fmt.Errorf("%q: want one of %s", shorten(key), strings.Join(keys, ", "))
}

// toPace states a pace by the preset that leaves the fewest figures to say.
func toPace(p *movement.Pace) *pace {
	if p == nil {
		return nil
	}
	preset, _ := movement.PresetByKey(movement.DefaultPreset)
	for _, other := range movement.Presets {
		if differing(*p, other.Pace) < differing(*p, preset.Pace) {
			preset = other
		}
	}
	out := &pace{Preset: preset.Key}
	want, have := figuresOf(*p), figuresOf(preset.Pace)
	for i, field := range out.fields() {
		if want[i] != have[i] {
			*field = &want[i]
		}
	}
	return out
}

func differing(a, b movement.Pace) (n int) {
	fa, fb := figuresOf(a), figuresOf(b)
	for i := range fa {
		if fa[i] != fb[i] {
			n++
		}
	}
	return n
}
