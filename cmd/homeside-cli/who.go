package main

import (
	"errors"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/words"
)

func whoCommand() *cobra.Command {
	var flags gameFlags
	var who whoFlags
	var asJSON bool
	c := &cobra.Command{
		Use:   "who",
		Short: "Tell from a call who can be serving, from where, and who must receive",
		Args:  cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			set, err := flags.settings()
			if err != nil {
				return err
			}
			q, err := who.query(set)
			if err != nil {
				return err
			}
			states, err := q.Who()
			if err != nil {
				return err
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), serversOf(states))
			}
			return printWho(c.OutOrStdout(), q, states)
		},
	}
	flags.add(c)
	who.add(c)
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// whoFlags are what is known of one serve; server and began are empty if unknown.
type whoFlags struct{ call, serving, server, began string }

func (w *whoFlags) add(c *cobra.Command) {
	c.Flags().StringVar(&w.call, "call", "", "the score as called, like 4-7-2, or 4-7 in rally scoring")
	c.Flags().StringVar(&w.serving, "serving", "", "the team that serves, near or far")
	c.Flags().StringVar(&w.server, "server", "", "who holds the serve, if that is known")
	c.Flags().StringVar(&w.began, "began", "", "the team that served first in the game, if that is known")
	for _, name := range []string{"call", "serving"} {
		if err := c.MarkFlagRequired(name); err != nil {
			panic(err) // no such flag: a mistake in the lines above
		}
	}
}

func (w *whoFlags) query(set game.Settings) (game.Query, error) {
	q := game.Query{Format: set.Format, To: set.To, Starters: set.Starters}
	var err error
	if q.Call, err = game.ParseCall(w.call); err != nil {
		return q, err
	}
	if q.Serving, err = parseTeam("serving", w.serving); err != nil {
		return q, err
	}
	if w.server != "" {
		p, err := game.ParsePlayer(w.server)
		if err != nil {
			return q, fmt.Errorf("--server: %w", err)
		}
		q.Server = &p
	}
	if w.began != "" {
		e, err := parseTeam("began", w.began)
		if err != nil {
			return q, err
		}
		q.Began = &e
	}
	return q, nil
}

func serversOf(states []game.State) []scoreServe {
	serves := []scoreServe{} // JSON's [], not null
	for _, s := range states {
		serves = append(serves, serveOf(s))
	}
	return serves
}

func printWho(w io.Writer, q game.Query, states []game.State) error {
	var errs []error
	say := func(line string) {
		_, err := fmt.Fprintln(w, line)
		errs = append(errs, err)
	}
	if len(states) == 0 {
		said, correct, err := notServing(q)
		if err != nil {
			return err
		}
		say(said)
		q.Server, states = nil, correct
	}
	for _, s := range states {
		say(serveLine(s))
	}
	asks, err := q.Questions()
	errs = append(errs, err)
	for _, a := range asks {
		say(askLine(a))
	}
	if !q.Format.SwapsSides() {
		say(noSwaps(q.Format))
	}
	return errors.Join(errs...)
}

// notServing says what is wrong when the query's server cannot hold the serve,
// and lists the states with the servers who can.
func notServing(q game.Query) (string, []game.State, error) {
	by := *q.Server
	q.Server = nil
	states, err := q.Who()
	if err != nil {
		return "", nil, err
	}
	said := words.T("%v does not hold the serve at %v.", by, q.Call)
	for _, from := range []court.Side{court.Right, court.Left} {
		v, err := q.Served(by, from)
		if err != nil {
			return "", nil, err
		}
		said += words.T(" From the %s: %s.", words.Name(from), words.Name(v))
	}
	return said, states, nil
}

// askLine is a question in words.
func askLine(a game.Question) string {
	switch a.Kind {
	case game.AskStarter:
		return words.AboutTeam(words.Text("Ask %s: which of you served first in this game?"), a.Team)
	case game.AskBegan:
		return words.T("Ask: which team served first in this game?")
	default:
		return words.AboutTeam(words.Text("Ask %s: which of you holds the serve?"), a.Team)
	}
}
