package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"homeside/model/movement"
	"homeside/model/units"
	"homeside/words"
)

// runAnswer is what the run command computes.
type runAnswer struct {
	Time units.Seconds         `json:"t_s"`
	Peak units.MetresPerSecond `json:"peak_mps"`
}

func runCommand() *cobra.Command {
	var flags runFlags
	var asJSON bool
	c := &cobra.Command{
		Use:   "run",
		Short: "Tell how long a player takes over a distance from rest, and how fast they get",
		Args:  cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			a, err := flags.answer()
			if err != nil {
				return err
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), a)
			}
			return printRun(c.OutOrStdout(), flags, a)
		},
	}
	flags.add(c)
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// runFlags are a pace and a distance.
type runFlags struct {
	distanceFt, vmax, tau, brake, reaction float64
	stop                                   bool
}

func (f *runFlags) add(c *cobra.Command) {
	usual := movement.DefaultPace()
	c.Flags().Float64Var(&f.distanceFt, "distance-ft", 0, "distance in feet")
	c.Flags().Float64Var(&f.vmax, "vmax-mps", 0, "top speed in m/s")
	c.Flags().Float64Var(&f.tau, "tau-s", 0, "time constant of the start in s")
	c.Flags().BoolVar(&f.stop, "stop", false, "stand still at the end instead of running through")
	c.Flags().Float64Var(&f.brake, "brake-mps2", usual.Braking, "braking in m/s2, with --stop")
	c.Flags().Float64Var(&f.reaction, "reaction-s", 0, "time before the first step in s")
	for _, name := range []string{"distance-ft", "vmax-mps", "tau-s"} {
		if err := c.MarkFlagRequired(name); err != nil {
			panic(err) // no such flag: a mistake in the lines above
		}
	}
}

func (f *runFlags) answer() (runAnswer, error) {
	p := movement.DefaultPace()
	p.TopSpeed, p.Tau, p.Braking = units.MetresPerSecond(f.vmax), units.Seconds(f.tau), f.brake
	p.Reaction = units.Seconds(f.reaction)
	run, err := p.Fastest(movement.Run{Distance: units.Feet(f.distanceFt).Metres(), Through: !f.stop})
	if err != nil {
		return runAnswer{}, err
	}
	return runAnswer{p.Reaction + run.Duration(), run.Peak()}, nil
}

func printRun(w io.Writer, f runFlags, a runAnswer) error {
	how := words.T("run through")
	if f.stop {
		how = words.T("run and stop")
	}
	_, err := fmt.Fprintln(w, words.T("%s, %s: %.2f s, at most %.1f m/s (%.1f mph). An estimate, not an instruction to sprint.",
		how, words.Way(units.Feet(f.distanceFt)), float64(a.Time), float64(a.Peak), a.Peak.MilesPerHour()))
	return err
}
