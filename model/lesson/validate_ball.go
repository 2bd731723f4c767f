package lesson

func (c *checker) conditions(k Conditions) {
	number(c, "altitude_m", k.Altitude, -500, MaxAltitude)
	if k.Temperature != nil {
		number(c, "temperature_c", *k.Temperature, -MaxHeat, MaxHeat)
	}
	number(c, "wind_x_mps", k.WindX, -MaxWind, MaxWind)
	number(c, "wind_y_mps", k.WindY, -MaxWind, MaxWind)
	number(c, "restitution", k.Restitution, 0, 1)
	number(c, "friction", k.Friction, 0, 2)
	number(c, "lift", k.Lift, 0, 2)
}

func (c *checker) manner(m Manner) {
	c.intent(m.Intent)
	member(c, "arc", m.Arc, len(arcNames))
	number(c, "spin_rpm", m.Spin, -MaxSpin, MaxSpin)
	number(c, "side_rpm", m.Side, -MaxSpin, MaxSpin)
}

func (c *checker) scatter(e *AimError) {
	if e == nil {
		return
	}
	c.in("error", func() {
		number(c, "speed_mps", e.Speed, 0, MaxScatter)
		number(c, "angle_deg", e.Angle, 0, MaxAngle)
	})
}
