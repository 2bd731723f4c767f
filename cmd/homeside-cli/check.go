package main

import (
	"fmt"
	"io"
	"slices"

	"github.com/spf13/cobra"

	"homeside/model/advice"
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/rally"
	"homeside/model/rules"
	"homeside/model/units"
	"homeside/words"
)

type checkLesson struct {
	Plays []checkPlay `json:"plays"`
}

type checkPlay struct {
	Title    string         `json:"title"`
	Findings []checkFinding `json:"findings"`
}

// checkFinding is one finding; rule and player are empty where it has none.
type checkFinding struct {
	Severity string        `json:"severity"`
	ID       finding.ID    `json:"id"`
	Rule     string        `json:"rule"`
	Player   string        `json:"player"`
	T        units.Seconds `json:"t_s"`
	Text     string        `json:"text"`
}

func checkCommand() *cobra.Command {
	var asJSON bool
	c := &cobra.Command{
		Use:   "check LESSON",
		Short: "Check a lesson by the rules and by its players' legs; exit 1 if there are faults",
		Args:  cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			l, err := lessonfile.Open(args[0])
			if err != nil {
				return err
			}
			all, err := checkAll(l)
			if err != nil {
				return fmt.Errorf("%s: %w", args[0], err)
			}
			if asJSON {
				err = printJSON(c.OutOrStdout(), checksOf(l, all))
			} else {
				err = printChecks(c.OutOrStdout(), l, all)
			}
			if err == nil && slices.ContainsFunc(all, finding.Faults) {
				return errFaults
			}
			return err
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// checkAll is what is found in each play, the worst first.
func checkAll(l lesson.Lesson) ([][]finding.Finding, error) {
	all := make([][]finding.Finding, len(l.Plays))
	for i := range l.Plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			return nil, err
		}
		all[i] = slices.Concat(rules.Check(r, l), advice.Check(r))
		if f, ok := advice.Stack(r, 0); ok {
			all[i] = append(all[i], f)
		}
		finding.Sort(all[i])
	}
	return all, nil
}

func checksOf(l lesson.Lesson, all [][]finding.Finding) checkLesson {
	out := checkLesson{Plays: []checkPlay{}} // JSON's [], not null
	for i, p := range l.Plays {
		play := checkPlay{Title: p.Title, Findings: []checkFinding{}}
		for _, f := range all[i] {
			play.Findings = append(play.Findings, checkOf(l, f))
		}
		out.Plays = append(out.Plays, play)
	}
	return out
}

func checkOf(l lesson.Lesson, f finding.Finding) checkFinding {
	out := checkFinding{Severity: f.Severity.String(), ID: f.ID, Rule: f.Rule.In(finding.Current), T: f.When, Text: words.Finding(f, l)}
	if f.Someone {
		out.Player = f.Player.String()
	}
	return out
}

func printChecks(w io.Writer, l lesson.Lesson, all [][]finding.Finding) error {
	p := printer{w: w}
	for i, play := range l.Plays {
		p.line("%d. %s", i+1, play.Title)
		for _, f := range all[i] {
			p.line("   %8s  %s", words.Seconds(f.When), words.Check(f, l))
		}
		if len(all[i]) == 0 {
			p.line("   %s", words.T("nothing found"))
		}
	}
	return p.err
}

// printer writes lines until one fails.
type printer struct {
	w   io.Writer
	err error
}

func (p *printer) line(format string, args ...any) {
	if p.err == nil {
		_, p.err = fmt.Fprintf(p.w, format+"\n", args...)
	}
}
