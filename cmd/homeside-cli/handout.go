package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"homeside/export"
	"homeside/export/handout"
	"homeside/model/lessonfile"
)

const handoutHelp = `

With --sheet a .pdf is a handout to print, of all plays or of the one of --play:
storyboard (a court for every event), cones (every place measured from the
lines), match (cards that fold to pocket size, of the lesson's pairs or those of
the roster of --pairs), advisor (what a return buys), plan (a lesson's course).
What had to be shortened, or has no letters in the fonts, is told on standard
error.`

// handoutFlags are the flags of export for a handout, as they are typed.
type handoutFlags struct{ sheet, paper, pairs string }

// handoutOnly are the flags that ask for nothing without --sheet.
var handoutOnly = []string{"paper", "pairs"}

func (h *handoutFlags) add(fl *pflag.FlagSet) {
	fl.StringVar(&h.sheet, "sheet", "", "handout on paper: "+strings.Join(sheetNames(), ", "))
	fl.StringVar(&h.paper, "paper", handout.A4.Name, "paper of a handout: a4 or letter")
	fl.StringVar(&h.pairs, "pairs", "", "roster whose pairs get match cards (the lesson's own two if not given)")
}

func sheetNames() []string {
	all := make([]string, len(handout.Sheets))
	for i, s := range handout.Sheets {
		all[i] = s.Name
	}
	return all
}

// exportHandout writes a sheet as PDF.
func exportHandout(c *cobra.Command, path string, f exportFlags) error {
	if err := f.handoutOnly(c); err != nil {
		return err
	}
	sheet, o, err := f.handoutOptions(c)
	if err != nil {
		return err
	}
	l, err := lessonfile.Open(path)
	if err != nil {
		return err
	}
	if !sheet.Cards && c.Flags().Changed("play") {
		if o.Plays, err = f.play.of(path, l); err != nil {
			return err
		}
	}
	var result handout.Result
	err = export.Save(c.Context(), f.out, func(w io.Writer) (err error) {
		result, err = handout.Write(c.Context(), w, l, sheet, o)
		return err
	})
	if err != nil {
		return err
	}
	for _, note := range result.Notes {
		fmt.Fprintln(c.ErrOrStderr(), f.out+": "+note)
	}
	return nil
}

// handoutOnly says which flag means nothing for a handout.
func (f exportFlags) handoutOnly(c *cobra.Command) error {
	if !strings.EqualFold(filepath.Ext(f.out), ".pdf") {
		return fmt.Errorf("--sheet is for a .pdf, and --out is %s", f.out)
	}
	var bad error
	allowed := map[string]bool{"out": true, "play": true, "sheet": true, "paper": true, "pairs": true}
	c.Flags().Visit(func(fl *pflag.Flag) {
		if !allowed[fl.Name] && c.InheritedFlags().Lookup(fl.Name) == nil && bad == nil {
			bad = fmt.Errorf("--%s: a handout has no such thing", fl.Name)
		}
	})
	return bad
}

func (f exportFlags) handoutOptions(c *cobra.Command) (handout.Sheet, *handout.Options, error) {
	sheet, err := handout.SheetByName(f.handout.sheet)
	if err != nil {
		return sheet, nil, fmt.Errorf("--sheet: %w", err)
	}
	o := &handout.Options{}
	if o.Paper, err = handout.PaperByName(f.handout.paper); err != nil {
		return sheet, nil, fmt.Errorf("--paper: %w", err)
	}
	if c.Flags().Changed("pairs") {
		if !sheet.Cards {
			return sheet, nil, fmt.Errorf("--pairs is for --sheet match, not for %s", sheet.Name)
		}
		r, err := lessonfile.OpenRoster(f.handout.pairs)
		if err != nil {
			return sheet, nil, err
		}
		if len(r.Pairs) == 0 {
			return sheet, nil, fmt.Errorf("%s: the roster has no pairs", f.handout.pairs)
		}
		o.Pairs = r.Pairs
	}
	if sheet.Cards && c.Flags().Changed("play") {
		return sheet, nil, fmt.Errorf("--play: %s is made of pairs, not of plays", sheet.Name)
	}
	return sheet, o, nil
}
