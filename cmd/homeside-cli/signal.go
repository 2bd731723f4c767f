package main

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"homeside/model/lesson"
	"homeside/model/signal"
	"homeside/words"
)

// signalAnswer is what the signal command computes.
type signalAnswer struct {
	Switch   float64 `json:"switch"` // how often
	Value    float64 `json:"value"`  // chance of winning the rally
	Sequence string  `json:"sequence"`
}

func signalCommand() *cobra.Command {
	var matrix string
	var length int
	var seed int64
	var asJSON bool
	c := &cobra.Command{
		Use:   "signal --matrix A,B,C,D",
		Short: "Tell how often to switch and how often to stay, and print signals in no order",
		Long: "The four chances are those of winning the rally: switch while they aim left, switch while they aim right,\n" +
			"stay while they aim left, stay while they aim right. In the sequence o is the open hand, switch, and c the closed one, stay.",
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			g, err := parseMatrix(matrix)
			if err != nil {
				return err
			}
			m := g.Best()
			seq, err := signal.Sequence(m.Switch, length, uint64(seed))
			if err != nil {
				return fmt.Errorf("--length: %w", err)
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), signalAnswer{m.Switch, m.Value, seq})
			}
			return printSignal(c.OutOrStdout(), g, seq)
		},
	}
	c.Flags().StringVar(&matrix, "matrix", "", "four chances of winning the rally, like 0.3,0.7,0.6,0.4")
	c.Flags().IntVar(&length, "length", 20, "number of signals")
	c.Flags().Int64Var(&seed, "seed", 1, "the same seed gives the same signals")
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	if err := c.MarkFlagRequired("matrix"); err != nil {
		panic(err) // no such flag: a mistake in the lines above
	}
	return c
}

// parseMatrix reads four chances.
func parseMatrix(s string) (signal.Game, error) {
	parts := strings.Split(s, ",")
	var g signal.Game
	if len(parts) != 4 {
		return g, fmt.Errorf("--matrix %q: want four chances, like 0.3,0.7,0.6,0.4", s)
	}
	for i, p := range parts {
		v, err := strconv.ParseFloat(strings.TrimSpace(p), 64)
		if err != nil {
			return g, fmt.Errorf("--matrix: %q is not a number", p)
		}
		g[i/2][i%2] = v
	}
	if err := g.Check(); err != nil {
		return g, fmt.Errorf("--matrix: %w", err)
	}
	return g, nil
}

func printSignal(w io.Writer, g signal.Game, seq string) error {
	fmt.Fprintln(w, words.SignalMix(g))
	for _, f := range g.Flips() {
		fmt.Fprintln(w, words.SignalFlip(f, lesson.Count{}))
	}
	if seq != "" {
		fmt.Fprintln(w, words.T("o is the open hand, switch; c the closed one, stay:"))
	}
	_, err := fmt.Fprintln(w, seq)
	return err
}
