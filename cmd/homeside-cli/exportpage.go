package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"homeside/export"
	"homeside/export/page"
	"homeside/model/lessonfile"
	"homeside/words"
)

// pageEnding is the ending of the page for phones.
const pageEnding = ".html"

const pageHelp = `

A page for phones (.html) holds all plays, or the one of --play, in one file
that needs no network: it plays, steps, counts in, beeps and asks for signals.`

// notOfPages are the flags that mean nothing for a page.
var notOfPages = []string{"at", "from", "to", "size", "fps", "speed", "view", "background", "full-colour", "sound", "format"}

func isPage(path string) bool { return strings.EqualFold(filepath.Ext(path), pageEnding) }

// exportPage writes plays as a page for phones.
func exportPage(c *cobra.Command, path string, f exportFlags) error {
	for _, name := range append(notOfPages, batchOnly...) {
		if c.Flags().Changed(name) {
			return fmt.Errorf("--%s: %s is a page, which has no such thing", name, f.out)
		}
	}
	l, err := lessonfile.Open(path)
	if err != nil {
		return err
	}
	wanted := playChoice{all: true}
	if c.Flags().Changed("play") {
		wanted = f.play
	}
	numbers, err := wanted.of(path, l)
	if err != nil {
		return err
	}
	p, err := page.Of(l, numbers...)
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	var lacks []rune
	err = export.Save(c.Context(), f.out, func(w io.Writer) (err error) {
		lacks, err = p.Write(w)
		return err
	})
	if err == nil && len(lacks) > 0 {
		fmt.Fprintf(c.ErrOrStderr(), "%s: %s\n", f.out, words.Lacks(lacks))
	}
	return err
}
