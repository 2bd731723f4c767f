package main

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/units"
	"homeside/words"
)

// shotAnswer is what the shot command computes. Reason is empty if there is a solution.
type shotAnswer struct {
	Solutions []shotSolution `json:"solutions"`
	Reason    string         `json:"reason,omitempty"`
}

// shotSolution is one launch and where it goes, in court axes.
type shotSolution struct {
	Speed units.MetresPerSecond `json:"speed_mps"`
	Up    units.Degrees         `json:"up_deg"`
	Side  units.Degrees         `json:"side_deg"` // left of the straight line to the aim
	Time  units.Seconds         `json:"t_s"`
	Apex  units.Metres          `json:"apex_z_m"`
	NetZ  *units.Metres         `json:"net_z_m"` // null if the net is not passed
	X     units.Feet            `json:"land_x_ft"`
	Y     units.Feet            `json:"land_y_ft"`
}

func shotCommand() *cobra.Command {
	var flags shotFlags
	var asJSON bool
	c := &cobra.Command{
		Use:   "shot",
		Short: "Find the launch that lands on an aim",
		Long: "Find the launch that lands on an aim with one figure more: its greatest height, its speed,\n" +
			"its time or its height over the net. A speed may have a low and a high solution. Points are\n" +
			"in court axes; side_deg is to the left of the straight line to the aim.",
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			in, err := flags.intent(c)
			if err != nil {
				return err
			}
			a := shotsOf(in, flight.Default().Solve(in))
			if asJSON {
				return printJSON(c.OutOrStdout(), a)
			}
			return printShots(c.OutOrStdout(), a)
		},
	}
	flags.add(c)
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// shotFlags are an intent.
type shotFlags struct {
	from, aim         string
	height, top, side float64
	figures           [len(shotFigures)]float64
}

// shotFigures are the flags of which one is given, in the order of flight.Kinds.
var shotFigures = [...]struct{ name, usage string }{
	flight.Apex:     {"apex-m", "greatest height of the ball's centre in m"},
	flight.Speed:    {"speed-mps", "speed off the paddle in m/s"},
	flight.Time:     {"time-s", "time in the air in s"},
	flight.NetClear: {"net-clear-m", "height of the ball's centre over the net in m"},
}

func (f *shotFlags) add(c *cobra.Command) {
	c.Flags().StringVar(&f.from, "from-ft", "", "the ground below the contact, x,y in feet")
	c.Flags().Float64Var(&f.height, "height-m", 0, "height of the ball's centre at contact in m")
	c.Flags().StringVar(&f.aim, "aim-ft", "", "where it is to land, x,y in feet")
	c.Flags().Float64Var(&f.top, "spin-rpm", 0, "topspin in revolutions a minute, negative is backspin")
	c.Flags().Float64Var(&f.side, "side-rpm", 0, "sidespin in revolutions a minute, positive curves to the left")
	var names []string
	for i, figure := range shotFigures {
		c.Flags().Float64Var(&f.figures[i], figure.name, 0, figure.usage)
		names = append(names, figure.name)
	}
	c.MarkFlagsMutuallyExclusive(names...)
	c.MarkFlagsOneRequired(names...)
	require(c, "from-ft", "height-m", "aim-ft")
}

func (f *shotFlags) intent(c *cobra.Command) (flight.Intent, error) {
	from, err := parsePoint("from-ft", f.from)
	if err != nil {
		return flight.Intent{}, err
	}
	aim, err := parsePoint("aim-ft", f.aim)
	if err != nil {
		return flight.Intent{}, err
	}
	in := flight.Intent{
		From: flight.Over(from, units.Metres(f.height)),
		AimX: aim.X.Metres(), AimY: aim.Y.Metres(),
		Spin: units.RPM(f.top), Side: units.RPM(f.side),
	}
	for _, k := range flight.Kinds {
		if c.Flags().Changed(shotFigures[k].name) {
			in.Kind, in.Value = k, f.figures[k]
		}
	}
	return in, nil
}

// parsePoint reads the two numbers of a flag, x,y.
func parsePoint(flag, s string) (court.Point, error) {
	x, y, ok := strings.Cut(s, ",")
	if !ok {
		return court.Point{}, fmt.Errorf("--%s: %q is not two numbers like 5,-24", flag, s)
	}
	var out [2]float64
	for i, part := range []string{x, y} {
		v, err := strconv.ParseFloat(strings.TrimSpace(part), 64)
		if err != nil {
			return court.Point{}, fmt.Errorf("--%s: %q is not a number", flag, part)
		}
		out[i] = v
	}
	return court.Pt(units.Feet(out[0]), units.Feet(out[1])), nil
}

func shotsOf(in flight.Intent, s flight.Solutions) shotAnswer {
	a := shotAnswer{Solutions: []shotSolution{}} // JSON's [], not null
	if s.Reason != flight.Possible {
		a.Reason = s.Reason.String()
	}
	for _, l := range s.All() {
		land := l.Path.End.Ground()
		a.Solutions = append(a.Solutions, shotSolution{
			Speed: l.State.Speed(), Up: l.Up(), Side: l.Side(in),
			Time: l.Path.Duration, Apex: l.Path.Apex.State.Height(), NetZ: netHeight(l.Path),
			X: land.X, Y: land.Y,
		})
	}
	return a
}

func printShots(w io.Writer, a shotAnswer) error {
	if len(a.Solutions) == 0 {
		_, err := fmt.Fprintln(w, words.T("no such shot: %s", words.Said(a.Reason)))
		return err
	}
	for _, s := range a.Solutions {
		if _, err := fmt.Fprintln(w, words.T("%.1f m/s (%.0f mph), %.1f degrees up, %.1f to the left: %.2f s, greatest height %.2f m",
			float64(s.Speed), s.Speed.MilesPerHour(), float64(s.Up), float64(s.Side), float64(s.Time), float64(s.Apex))); err != nil {
			return err
		}
	}
	return nil
}
