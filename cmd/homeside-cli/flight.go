package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/units"
	"homeside/words"
)

// flightAnswer is what the flight command computes: x forward, y left, z up, the
// launch at x = y = 0.
type flightAnswer struct {
	Outcome string                `json:"outcome"`
	Touches bool                  `json:"touches_net"`
	Time    units.Seconds         `json:"t_s"`
	X       units.Metres          `json:"x_m"`
	Y       units.Metres          `json:"y_m"`
	NetZ    *units.Metres         `json:"net_z_m"` // null if the ball does not get there
	Apex    units.Metres          `json:"apex_z_m"`
	Speed   units.MetresPerSecond `json:"speed_mps"`
	After   *bounceAnswer         `json:"after"` // null if the ball does not land
}

// bounceAnswer is the ball leaving the court.
type bounceAnswer struct {
	Forward units.MetresPerSecond `json:"vx_mps"`
	Up      units.MetresPerSecond `json:"vz_mps"`
	Spin    units.RPM             `json:"spin_rpm"`
}

func flightCommand() *cobra.Command {
	var flags flightFlags
	var asJSON bool
	c := &cobra.Command{
		Use:   "flight",
		Short: "Fly a ball from its launch to the ground or the net",
		Long: "Fly a ball from its launch to the ground or the net.\n\n" +
			"x is forward, y to the left, z up; the launch is at x = y = 0. The net is 34 in high\n" +
			"at --net-m. With the outcome net, time, place and speed are those at the net.",
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			a, err := flags.answer()
			if err != nil {
				return err
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), a)
			}
			return printFlight(c.OutOrStdout(), a)
		},
	}
	flags.add(c)
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// flightFlags are a launch and what it flies through.
type flightFlags struct {
	speed, up, height, top, side, drag, wind, net float64
	density, altitude                             float64
	atAltitude                                    func() bool
}

func (f *flightFlags) add(c *cobra.Command) {
	c.Flags().Float64Var(&f.speed, "speed-mps", 0, "speed off the paddle in m/s")
	c.Flags().Float64Var(&f.up, "up-deg", 0, "angle above the horizon in degrees")
	c.Flags().Float64Var(&f.height, "height-m", 0, "height of the ball's centre in m")
	c.Flags().Float64Var(&f.top, "spin-rpm", 0, "topspin in revolutions a minute, negative is backspin")
	c.Flags().Float64Var(&f.side, "side-rpm", 0, "sidespin in revolutions a minute, positive curves to the left")
	c.Flags().Float64Var(&f.drag, "cd", flight.Outdoor.Drag, "drag coefficient")
	c.Flags().Float64Var(&f.density, "air-density", flight.SeaLevel, "density of the air in kg/m3")
	c.Flags().Float64Var(&f.altitude, "altitude-m", 0, "height above the sea in m, standard atmosphere, in place of --air-density")
	c.Flags().Float64Var(&f.wind, "wind-mps", 0, "tail wind in m/s, negative is a head wind")
	c.Flags().Float64Var(&f.net, "net-m", float64(court.Baseline.Metres()), "way from the launch to the net in m")
	c.MarkFlagsMutuallyExclusive("air-density", "altitude-m")
	require(c, "speed-mps", "up-deg", "height-m")
	f.atAltitude = func() bool { return c.Flags().Changed("altitude-m") }
}

// require marks flags that must be given.
func require(c *cobra.Command, names ...string) {
	for _, name := range names {
		if err := c.MarkFlagRequired(name); err != nil {
			panic(err) // no such flag: a mistake beside the call
		}
	}
}

func (f *flightFlags) model() flight.Model {
	m := flight.Default()
	m.Ball.Drag, m.Air.Density = f.drag, f.density
	if f.atAltitude() {
		m.Air = flight.Altitude(units.Metres(f.altitude))
	}
	m.Air.Wind.Y = f.wind
	m.Net.Flat = court.NetAtCentre.Metres()
	return m
}

func (f *flightFlags) answer() (flightAnswer, error) {
	if f.speed < 0 {
		return flightAnswer{}, fmt.Errorf("--speed-mps: %v is less than 0", f.speed)
	}
	m := f.model()
	v := flight.Toward(flight.Vec{Y: 1}, units.Degrees(f.up)).Times(f.speed)
	p, err := m.Fly(flight.State{
		At:       flight.Vec{Y: -f.net, Z: f.height},
		Velocity: v,
		Spin:     flight.TopSpin(flight.Vec{Y: 1}, units.RPM(f.top), units.RPM(f.side)),
	})
	if err != nil {
		return flightAnswer{}, err
	}
	a := flightAnswer{
		Outcome: p.Outcome.String(), Touches: p.TouchesNet, Time: p.Duration,
		X: units.Metres(p.End.At.Y + f.net), Y: units.Metres(0 - p.End.At.X),
		Apex: p.Apex.State.Height(), Speed: p.End.Speed(), NetZ: netHeight(p),
	}
	if p.Outcome == flight.Landed {
		s := m.Bounce(p.End)
		a.After = &bounceAnswer{units.MetresPerSecond(s.Velocity.Y), units.MetresPerSecond(s.Velocity.Z), units.FromRadiansPerSecond(0 - s.Spin.X)}
	}
	return a, nil
}

// netHeight is the height at the net, nil if the ball does not get there.
func netHeight(p *flight.Path) *units.Metres {
	if !p.Net.Reached {
		return nil
	}
	h := p.Net.State.Height()
	return &h
}

func printFlight(w io.Writer, a flightAnswer) error {
	end := words.T("lands after %.2f s, %.2f m away", float64(a.Time), float64(a.X))
	if a.Outcome != flight.Landed.String() {
		end = words.T("ends (%s) after %.2f s, %.2f m away", words.Said(a.Outcome), float64(a.Time), float64(a.X))
	}
	_, err := fmt.Fprintln(w, words.T("%s, %.2f m to the left, at %.1f m/s; greatest height %.2f m", end, float64(a.Y), float64(a.Speed), float64(a.Apex)))
	return err
}
