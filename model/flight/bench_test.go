package flight

import (
	"testing"

	"homeside/model/units"
)

// drive is a drive with topspin and a little sidespin.
func drive() State {
	s := struck(18, 10, .8)
	s.Spin = TopSpin(s.Velocity, 600, 100)
	return s
}

func BenchmarkFly(b *testing.B) {
	m, s := Default(), drive()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := m.Fly(s); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkAt(b *testing.B) {
	p := mustFly(b, Default(), drive())
	for b.Loop() {
		p.At(p.Duration / 3)
	}
}

func BenchmarkSolve(b *testing.B) {
	m := Default()
	for _, c := range []struct {
		kind  Kind
		value float64
	}{{Apex, 2.7}, {Time, 1.5}, {NetClear, .5}, {Speed, 18}} {
		in := Intent{From: Vec{1, -7, .8}, AimX: -2, AimY: 6, Kind: c.kind, Value: c.value, Spin: 600, Side: 300}
		b.Run(c.kind.String(), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if s := m.Solve(in); s.Low == nil {
					b.Fatal(s.Reason)
				}
			}
		})
	}
}

func BenchmarkChart(b *testing.B) {
	m, depths, apexes := Default(), make([]units.Feet, 60), make([]units.Metres, 40)
	for i := range depths {
		depths[i] = units.Feet(i) * .25
	}
	for i := range apexes {
		apexes[i] = (3.5 + units.Feet(i)*.5).Metres()
	}
	r := Return{From: Vec{0, -24 * units.FootInMetres, .5}}
	for b.Loop() {
		m.Chart(r, depths, apexes)
	}
}
