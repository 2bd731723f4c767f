package flight

import "math"

// forces is the acceleration of one ball in one flight: it depends on velocity alone.
type forces struct {
	drag, lift float64 // kd and kc of the package's equations
	capped     float64 // ρ A Cl_max / 2m |ω|: lift's factor at the cap, per |u|
	wind, spin Vec
}

func (m Model) forces(spin Vec) forces {
	q := m.Ball.pressure(m.Air)
	f := forces{drag: q * m.Ball.Drag, wind: m.Air.Wind, spin: spin}
	if w := spin.Length(); w > 0 {
		f.lift = q * float64(m.Ball.Radius()) * m.Ball.Lift
		f.capped = q * m.Ball.LiftCap / w
	}
	return f
}

// acceleration at velocity v, m/s².
func (f *forces) acceleration(v Vec) Vec {
	ux, uy, uz := v.X-f.wind.X, v.Y-f.wind.Y, v.Z-f.wind.Z
	n := math.Sqrt(ux*ux + uy*uy + uz*uz)
	d, l := -f.drag*n, min(f.lift, f.capped*n)
	return Vec{
		d*ux + l*(f.spin.Y*uz-f.spin.Z*uy),
		d*uy + l*(f.spin.Z*ux-f.spin.X*uz),
		d*uz + l*(f.spin.X*uy-f.spin.Y*ux) - gravity,
	}
}
