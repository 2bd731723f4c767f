package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/words"
)

// scoreServe is one serve of a game.
type scoreServe struct {
	Call     string `json:"call,omitempty"`
	Server   string `json:"server"`
	From     string `json:"from"`
	Receiver string `json:"receiver"`
}

// scoreEnd is the end of a game; the score is near, far.
type scoreEnd struct {
	Over   bool   `json:"over"`
	Winner string `json:"winner"`
	Score  [2]int `json:"score"`
}

func scoreCommand() *cobra.Command {
	var flags gameFlags
	var first, winners string
	var asJSON bool
	c := &cobra.Command{
		Use:   "score",
		Short: "Walk a game rally by rally: the call, who serves from where, who receives",
		Args:  cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			set, err := flags.settings()
			if err != nil {
				return err
			}
			if set.First, err = parseTeam("first", first); err != nil {
				return err
			}
			m, err := game.Replay(set, winners)
			if err != nil {
				return err
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), scoreOf(m))
			}
			return printScore(c.OutOrStdout(), m)
		},
	}
	flags.add(c)
	c.Flags().StringVar(&first, "first", "near", "the team that serves first, near or far")
	c.Flags().StringVar(&winners, "winners", "", "the winner of each rally, n or f, like nnffn")
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// gameFlags are the flags that say which game is played.
type gameFlags struct {
	format   string
	to       int
	starters string
}

func (g *gameFlags) add(c *cobra.Command) {
	c.Flags().StringVar(&g.format, "format", game.SideOut.String(), "side-out, rally-parity, rally-own-serve or rally-fixed")
	c.Flags().IntVar(&g.to, "to", game.DefaultPoints, "points that win, by two")
	c.Flags().StringVar(&g.starters, "starters", "near1,far1", "each team's starting server in this game")
}

func (g *gameFlags) settings() (game.Settings, error) {
	format, err := game.ParseFormat(g.format)
	if err != nil {
		return game.Settings{}, fmt.Errorf("--format: %w", err)
	}
	starters, err := parseStarters(g.starters)
	if err != nil {
		return game.Settings{}, fmt.Errorf("--starters: %w", err)
	}
	if g.to < 1 { // in the settings 0 stands for the default
		return game.Settings{}, fmt.Errorf("--to %d: want 1 to %d points", g.to, game.MaxPoints)
	}
	return game.Settings{Format: format, To: g.to, Starters: starters}, nil
}

// parseStarters reads one player of each team, like "near2,far1".
func parseStarters(s string) ([2]game.Player, error) {
	var starters [2]game.Player
	var named [2]bool
	for name := range strings.SplitSeq(s, ",") {
		p, err := game.ParsePlayer(name)
		if err != nil {
			return starters, err
		}
		if named[p.Team()] {
			return starters, fmt.Errorf("%q names two players of the %v team", s, p.Team())
		}
		starters[p.Team()], named[p.Team()] = p, true
	}
	if !named[court.Near] || !named[court.Far] {
		return starters, fmt.Errorf("%q: want one player of each team, like near1,far1", s)
	}
	return starters, nil
}

// parseTeam reads the value of a flag that names a team.
func parseTeam(flag, s string) (court.End, error) {
	for _, e := range court.Ends {
		if s == e.String() {
			return e, nil
		}
	}
	return court.Near, fmt.Errorf("--%s %q: want near or far", flag, s)
}

// scoreOf is the answer as JSON has it: one object a serve, and the end.
func scoreOf(m game.Match) []any {
	var out []any
	for _, s := range m.States() {
		if w, over := s.Winner(); over {
			out = append(out, scoreEnd{Over: true, Winner: w.String(), Score: s.Score()})
			continue
		}
		serve := serveOf(s)
		serve.Call = s.Call().String()
		out = append(out, serve)
	}
	return out
}

func serveOf(s game.State) scoreServe {
	return scoreServe{Server: s.Server().String(), From: s.From().String(), Receiver: s.Receiver().String()}
}

func printScore(w io.Writer, m game.Match) error {
	var errs []error
	say := func(format string, args ...any) {
		_, err := fmt.Fprintf(w, format+"\n", args...)
		errs = append(errs, err)
	}
	states := m.States()
	for i, s := range states {
		if i > 0 && game.ChangesEnds(states[i-1], s) {
			say("%s", words.T("The teams change ends."))
		}
		if winner, over := s.Winner(); over {
			say("%s", words.T("%s wins %d-%d.", words.Capital(words.End(winner)), s.Score()[winner], s.Score()[winner.Other()]))
			continue
		}
		say("%-8v %s", s.Call(), serveLine(s))
	}
	if !states[0].Format().SwapsSides() {
		say("%s", noSwaps(states[0].Format()))
	}
	return errors.Join(errs...)
}

func serveLine(s game.State) string {
	return words.T("%v serves from the %s to %v", s.Server(), words.Name(s.From()), s.Receiver())
}

// noSwaps says what a format without changes of sides means for a stack.
func noSwaps(f game.Format) string {
	return words.T("In %v nobody changes sides, so stacking has no purpose.", f)
}
