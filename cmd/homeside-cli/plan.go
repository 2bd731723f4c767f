package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/plan"
	"homeside/model/units"
	"homeside/words"
)

// planAnswer is what the plan command computes, for the near pair.
type planAnswer struct {
	Win     float64               `json:"win"`
	Rallies float64               `json:"rallies"`
	Stacks  float64               `json:"stacks"`
	Feet    map[string]units.Feet `json:"feet"`
	States  []planState           `json:"states"`
	Note    string                `json:"note,omitempty"`
}

// planState is one state of the game; past deuce it stands for those two points
// each further on, too.
type planState struct {
	Call      string                `json:"call"`
	Serving   string                `json:"serving"`
	Server    string                `json:"server"`
	From      string                `json:"from"`
	Receiver  string                `json:"receiver"`
	Sides     map[string]string     `json:"sides"` // by the score
	Ends      map[string]string     `json:"ends"`  // after the formation
	Formation string                `json:"formation"`
	Feet      map[string]units.Feet `json:"feet"`
	Margin    *units.Seconds        `json:"margin_s"`
	Legal     *bool                 `json:"legal"`
	Rallies   float64               `json:"rallies"` // expected in a game
	Win       float64               `json:"win"`     // the chance from here
}

func planCommand() *cobra.Command {
	var flags planFlags
	var asJSON bool
	c := &cobra.Command{
		Use:   "plan [LESSON]",
		Short: "Plan the near pair's whole game: who stands where at each score, stacks, feet, chance to win",
		Long: "The pair's wishes, hands, paces and format come from a lesson, from --homes, or from both, the flags first.\n" +
			"The policies: full stacks on serve and return, half on the serve, three-quarter on the serve and the better runner's return.",
		Args: cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			q, err := flags.read(c, args)
			if err != nil {
				return err
			}
			start, err := q.set.Start()
			if err != nil {
				return err
			}
			p, err := plan.Of(start, q.pair, q.chances, plan.Plays{})
			if err != nil {
				return err
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), planOf(p))
			}
			return q.print(c.OutOrStdout(), p)
		},
	}
	flags.add(c)
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// planFlags are the flags of the plan command as they are typed.
type planFlags struct {
	homes, format, first, starter, policy, runner string
	to                                            int
	near, far                                     float64
}

func (f *planFlags) add(c *cobra.Command) {
	c.Flags().StringVar(&f.homes, "homes", "", "the sides the near pair wants, like near1=right,near2=left")
	c.Flags().StringVar(&f.format, "format", game.SideOut.String(), "side-out, rally-parity, rally-own-serve or rally-fixed")
	c.Flags().IntVar(&f.to, "to", game.DefaultPoints, "points that win, by two")
	c.Flags().Float64Var(&f.near, "near-serving", 0.5, "the chance that the near pair wins a rally it serves, 0 to 1")
	c.Flags().Float64Var(&f.far, "far-serving", 0.5, "the chance that the far pair wins a rally it serves, 0 to 1")
	c.Flags().StringVar(&f.first, "first", "near", "the team that serves first, near or far")
	c.Flags().StringVar(&f.starter, "starter", "near1", "the near pair's starting server, near1 or near2")
	c.Flags().StringVar(&f.policy, "policy", "full", "full, half, three-quarter or none")
	c.Flags().StringVar(&f.runner, "runner", "", "who runs better, for three-quarter; by default the higher top speed, of two alike near1")
}

// planQuestion is what the flags and the lesson ask.
type planQuestion struct {
	set     game.Settings
	pair    plan.Pair
	chances plan.Chances
	policy  string
	runner  game.Player
}

// read takes from the flags what was typed, the rest from the lesson if there is one.
func (f *planFlags) read(c *cobra.Command, args []string) (planQuestion, error) {
	q := planQuestion{pair: plan.Pair{Team: court.Near}, chances: plan.Chances{f.near, f.far}, policy: f.policy}
	given := c.Flags().Changed
	if len(args) == 0 && !given("homes") {
		return q, errors.New("want a lesson or --homes near1=right,near2=left")
	}
	if len(args) == 1 {
		l, err := lessonfile.Open(args[0])
		if err != nil {
			return q, err
		}
		q.pair.Lesson, q.set = l, l.Settings()
	}
	typed := func(name string) bool { return len(args) == 0 || given(name) }
	if err := f.game(&q, typed); err != nil {
		return q, err
	}
	return q, f.wishes(&q, typed)
}

// game reads the flags that say which game is played.
func (f *planFlags) game(q *planQuestion, typed func(string) bool) (err error) {
	if typed("format") {
		if q.set.Format, err = game.ParseFormat(f.format); err != nil {
			return fmt.Errorf("--format: %w", err)
		}
	}
	if typed("to") {
		if q.set.To = f.to; f.to < 1 { // in the settings 0 stands for the default
			return fmt.Errorf("--to %d: want 1 to %d points", f.to, game.MaxPoints)
		}
	}
	if typed("first") {
		if q.set.First, err = parseTeam("first", f.first); err != nil {
			return err
		}
	}
	if typed("starter") {
		if q.set.Starters[court.Near], err = parseNear("starter", f.starter); err != nil {
			return err
		}
	}
	return q.set.Check()
}

// wishes reads the flags that say what the pair wants.
func (f *planFlags) wishes(q *planQuestion, typed func(string) bool) (err error) {
	if typed("homes") {
		wants, err := parseHomes(f.homes)
		if err != nil {
			return fmt.Errorf("--homes: %w", err)
		}
		q.pair = q.pair.With(wants)
	}
	q.runner = fasterOf(q.pair)
	if f.runner != "" {
		if q.runner, err = parseNear("runner", f.runner); err != nil {
			return err
		}
	}
	if q.pair.Policy, err = plan.ParsePolicy(f.policy, q.runner); err != nil {
		return fmt.Errorf("--policy: %w", err)
	}
	return nil
}

// fasterOf is who of a pair has the higher top speed, of two alike the first.
func fasterOf(p plan.Pair) game.Player {
	one, two := p.Player(1), p.Player(2)
	if p.Lesson.Player(two).Legs().TopSpeed > p.Lesson.Player(one).Legs().TopSpeed {
		return two
	}
	return one
}

// parseNear reads the value of a flag that names one of the near pair.
func parseNear(flag, s string) (game.Player, error) {
	p, err := game.ParsePlayer(s)
	if err != nil || p.Team() != court.Near {
		return 0, fmt.Errorf("--%s %q: want near1 or near2", flag, s)
	}
	return p, nil
}

// parseHomes reads the sides that the near pair wants, like near1=right,near2=left.
func parseHomes(s string) ([2]lesson.Want, error) {
	var wants [2]lesson.Want
	var named [2]bool
	for part := range strings.SplitSeq(s, ",") {
		name, side, ok := strings.Cut(strings.TrimSpace(part), "=")
		if !ok {
			return wants, fmt.Errorf("%q: want a player and a side, like near1=right,near2=left", s)
		}
		p, err := game.ParsePlayer(name)
		switch {
		case err != nil:
			return wants, err
		case p.Team() != court.Near:
			return wants, fmt.Errorf("%v is not on the near team", p)
		case named[p.Number()-1]:
			return wants, fmt.Errorf("%q names %v twice", s, p)
		}
		if wants[p.Number()-1], err = lesson.ParseWant(side); err != nil {
			return wants, err
		}
		named[p.Number()-1] = true
	}
	return wants, nil
}

func planOf(p plan.Plan) planAnswer {
	a := planAnswer{Win: p.Win, Rallies: p.Rallies, Stacks: p.Stacks, Feet: byPlayer(p, p.Feet), States: []planState{}, Note: planNote(p)}
	for _, s := range p.States {
		r := p.Rows[s.Row]
		a.States = append(a.States, planState{
			Call: s.State.Call().String(), Serving: s.State.Serving().String(), Server: s.State.Server().String(),
			From: s.State.From().String(), Receiver: s.State.Receiver().String(),
			Sides: sidesWith(r.Right()), Ends: sidesWith(r.EndsRight()), Formation: r.Formation.String(),
			Feet: byPlayer(p, r.Feet), Margin: r.Margin, Legal: r.Legal, Rallies: s.Rallies, Win: s.Win,
		})
	}
	return a
}

// planNote is what has to be said of the format; empty if nothing has.
func planNote(p plan.Plan) string {
	if len(p.States) > 0 && !p.States[0].State.Format().SwapsSides() {
		return words.ChooseSides()
	}
	return ""
}

func byPlayer(p plan.Plan, feet [2]units.Feet) map[string]units.Feet {
	return map[string]units.Feet{p.Pair.Player(1).String(): feet[0], p.Pair.Player(2).String(): feet[1]}
}

// sidesWith is both partners' sides with one on the right.
func sidesWith(right game.Player) map[string]string {
	return map[string]string{right.String(): court.Right.String(), right.Partner().String(): court.Left.String()}
}

// print says the plan in words, with the table and what else there is to choose.
func (q planQuestion) print(w io.Writer, p plan.Plan) error {
	starters, err := plan.CompareStarters(q.set, q.pair, q.chances, plan.Plays{})
	if err != nil {
		return err
	}
	worth, err := p.Worth()
	if err != nil {
		return err
	}
	lines := []string{words.PlanTotals(p), planNote(p), words.PolicyWord(p.Pair.Lesson, q.policy, q.runner)}
	for _, r := range p.Rows {
		lines = append(lines, words.PlanRow(p, r))
	}
	lines = append(lines, words.BetterStarter(starters), words.Worth(worth), words.T("Estimates, not instructions to sprint."))
	for _, line := range lines {
		if line != "" {
			_, printed := fmt.Fprintln(w, line)
			err = errors.Join(err, printed)
		}
	}
	return err
}
