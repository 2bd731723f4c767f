package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"homeside/model/cover"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// coverAnswer is what the cover command computes.
type coverAnswer struct {
	Covered   float64            `json:"covered"` // share of the cells
	Cells     int                `json:"cells"`
	Open      coverDisc          `json:"open"`
	Forehand  float64            `json:"forehand"`   // share of the cells covered with the forehand
	PerPlayer map[string]float64 `json:"per_player"` // share of the cells that each would cover alone
}

// coverDisc is the largest open disc; all 0 if the whole court is covered.
type coverDisc struct {
	infoPoint
	Radius units.Feet `json:"radius_ft"`
}

func coverCommand() *cobra.Command {
	var flags coverFlags
	var asJSON bool
	c := &cobra.Command{
		Use:   "cover LESSON --event EVENT --team TEAM",
		Short: "Tell how much of its court a team can reach when an opponent strikes",
		Args:  cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			m, err := flags.compute(c, args[0])
			if err != nil {
				return err
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), coverOf(m))
			}
			return printCover(c.OutOrStdout(), flags.event, m)
		},
	}
	flags.add(c)
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// coverFlags are the flags of the cover command as they are typed.
type coverFlags struct {
	event, team string
	play        int
	drive, lob  float64
}

func (f *coverFlags) add(c *cobra.Command) {
	c.Flags().IntVar(&f.play, "play", 1, "number of the play, counted from 1")
	c.Flags().StringVar(&f.event, "event", "", "the opponent's contact, such as third.contact")
	c.Flags().StringVar(&f.team, "team", "", "the team that defends, near or far")
	c.Flags().Float64Var(&f.drive, "drive-mps", float64(cover.DefaultDrive), "speed of a drive in m/s")
	c.Flags().Float64Var(&f.lob, "lob-ft", 0, "apex of a lob in feet, instead of a drive")
	for _, name := range []string{"event", "team"} {
		if err := c.MarkFlagRequired(name); err != nil {
			panic(err) // no such flag: a mistake in the lines above
		}
	}
}

func (f *coverFlags) compute(c *cobra.Command, path string) (cover.Map, error) {
	e, err := lesson.ParseEvent(f.event)
	if err != nil {
		return cover.Map{}, fmt.Errorf("--event: %w", err)
	}
	team, err := parseTeam("team", f.team)
	if err != nil {
		return cover.Map{}, err
	}
	shot, err := f.shot(c)
	if err != nil {
		return cover.Map{}, err
	}
	_, r, err := openPlay(path, f.play)
	if err != nil {
		return cover.Map{}, err
	}
	s, err := cover.StrikeAt(r, e, team, shot)
	if err != nil {
		return cover.Map{}, fmt.Errorf("%s: play %d: %w (%s)", path, f.play, err, choices(cover.Strikes(r, team)))
	}
	return cover.Of(s)
}

// shot is the drive or lob of the flags. A 0 that was typed is no default.
func (f *coverFlags) shot(c *cobra.Command) (cover.Shot, error) {
	given := c.Flags().Changed
	switch {
	case given("lob-ft") && given("drive-mps"):
		return cover.Shot{}, fmt.Errorf("--drive-mps or --lob-ft: give one or the other")
	case given("lob-ft") && !(f.lob > 0):
		return cover.Shot{}, fmt.Errorf("--lob-ft %v: want more than 0", f.lob)
	case given("lob-ft"):
		return cover.Shot{Lob: units.Feet(f.lob)}, nil
	case !(f.drive > 0):
		return cover.Shot{}, fmt.Errorf("--drive-mps %v: want more than 0", f.drive)
	}
	return cover.Shot{Drive: units.MetresPerSecond(f.drive)}, nil
}

// choices are the events that can be asked about.
func choices(events []lesson.Event) string {
	if len(events) == 0 {
		return "no opponent strikes in this play"
	}
	names := make([]string, len(events))
	for i, e := range events {
		names[i] = e.String()
	}
	return "opponents strike at " + strings.Join(names, ", ")
}

func coverOf(m cover.Map) coverAnswer {
	disc, _ := m.Open()
	a := coverAnswer{
		Covered: m.Share(), Cells: m.Len(), Forehand: m.ShareForehand(),
		Open:      coverDisc{infoPoint(disc.Centre), disc.Radius},
		PerPlayer: map[string]float64{},
	}
	for i := range m.Strike.Players {
		id := game.PlayerOf(m.Team(), i+1)
		a.PerPlayer[id.String()] = m.ShareOf(id)
	}
	return a
}

func printCover(w io.Writer, event string, m cover.Map) error {
	one, two := game.PlayerOf(m.Team(), 1), game.PlayerOf(m.Team(), 2)
	p := printer{w: w}
	p.line("%s", words.T("%s, %s: %s reaches %s of its court in time, %s with the forehand.",
		event, words.CoverShot(m.Strike.Shot), words.End(m.Team()), percent(m.Share()), percent(m.ShareForehand())))
	p.line("%s", words.T("Alone: %v %s, %v %s.", one, percent(m.ShareOf(one)), two, percent(m.ShareOf(two))))
	mid := m.Middle()
	p.line("%s", words.T("The middle, %s to each side: %v takes %s, %v %s, open %s.",
		words.Length(cover.MiddleHalf), one, percent(mid.Taken[0]), two, percent(mid.Taken[1]), percent(mid.Open)))
	p.line("%s %s", openLine(m), words.T("An estimate, not an instruction to sprint."))
	return p.err
}

func openLine(m cover.Map) string {
	d, ok := m.Open()
	if !ok {
		return words.T("Nothing is open.")
	}
	return words.T("Largest open disc: %s across, its middle %s.", words.Length(2*d.Radius), words.Place(m.Team(), d.Centre))
}

// percent is a share in words: "83 %".
func percent(share float64) string { return fmt.Sprintf("%.0f %%", 100*share) }
