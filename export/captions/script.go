package captions

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"homeside/export"
	"homeside/words"
)

// WriteScript writes what a voice-over goes by: the cautions, then every event,
// run, crossing, signal and caption with its time in the clip, and for each caption
// whether it can be spoken in its time.
func WriteScript(w io.Writer, p Play, o *export.Options) error {
	c, err := clockOf(p, o)
	if err != nil {
		return err
	}
	var b strings.Builder
	if p.Title != "" {
		b.WriteString(plain(p.Title) + "\n")
	}
	b.WriteString(words.ScriptHead(c.at(c.to).short(), c.speed) + "\n\n")
	for _, caution := range words.Cautions() {
		b.WriteString("- " + caution + "\n")
	}
	b.WriteString("\n")
	for _, t := range c.script(p) {
		b.WriteString(scriptLine(t) + "\n")
	}
	_, err = io.WriteString(w, b.String())
	return err
}

// script is all there is to say and to see, in the order of the clip.
func (c clock) script(p Play) []timed {
	all := slices.Concat(c.moments(p.Events), c.moments(p.Cross), c.cut(p.Cues))
	slices.SortStableFunc(all, func(a, b timed) int { return cmp.Compare(a.from, b.from) })
	return all
}

func scriptLine(t timed) string {
	when := t.from.short()
	if t.to > t.from {
		when += " - " + t.to.short()
	}
	text := plain(oneLine(t.Text))
	if t.Spoken {
		text = words.Say(text, len(strings.Fields(text)), float64(t.to-t.from)/1000)
	}
	return fmt.Sprintf("%-18s %s", when, text)
}
