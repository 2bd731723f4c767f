package flight

// Surface is how the court returns the ball. No primary data on a court's
// friction were found; see the fields for what each default rests on.
type Surface struct {
	Restitution float64 // e, normal; 0.64 from the drop test's 30–34 in out of 78 in
	Friction    float64 // mu while the ball slips; 0.45 from memory of plastic on acrylic
	Tangential  float64 // ex, share of the slip given back when the ball grips; 0
}

// Court is the default surface.
var Court = Surface{Restitution: 0.64, Friction: 0.45}

// shellInertia is I/(m r²) of a thin shell.
const shellInertia = 2.0 / 3

// bounce is the ball of radius r just after touching the court: Garwin, Am. J.
// Phys. 37 (1969) 88; Brody, Phys. Teach. 22 (1984) 494; Cross, Am. J. Phys. 70
// (2002) 1093. The impulse acts along the slip of the contact point, v + ω × (-r ẑ).
func (c Surface) bounce(s State, r float64) State {
	down := -s.Velocity.Z
	if down <= 0 {
		return s
	}
	s.Velocity.Z = c.Restitution * down
	slip := Vec{s.Velocity.X - r*s.Spin.Y, s.Velocity.Y + r*s.Spin.X, 0}
	speed := slip.Length()
	if speed == 0 {
		return s
	}
	const share = shellInertia / (1 + shellInertia)
	impulse := min(c.Friction*(1+c.Restitution)*down, share*(1+c.Tangential)*speed)
	along := slip.Times(1 / speed)
	s.Velocity = s.Velocity.Sub(along.Times(impulse))
	s.Spin = s.Spin.Add(Vec{-along.Y, along.X, 0}.Times(impulse / (shellInertia * r)))
	return s
}
