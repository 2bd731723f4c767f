package app

import (
	"fmt"
	"io"
)

// Trace tells in a line what the window has done (ready, painted, saved ...): a
// test that waits for it, and whoever else hears. The zero Trace tells nobody.
type Trace struct {
	w     io.Writer    // nil for no test
	heard func(string) // within the window; nil for nobody
}

// NewTrace writes to w; nil for no trace.
func NewTrace(w io.Writer) *Trace { return &Trace{w: w} }

// written says whether somebody reads along who wants to know places, too.
func (t *Trace) written() bool { return t.w != nil }

func (t *Trace) say(format string, args ...any) {
	if t.w == nil && t.heard == nil {
		return
	}
	line := fmt.Sprintf(format, args...)
	if t.w != nil {
		fmt.Fprintln(t.w, line)
	}
	if t.heard != nil {
		t.heard(line)
	}
}
