package app

import (
	"fmt"
	"io"
)

// Trace writes a line for what the window has done (ready, painted, saved ...),
// so that a test can wait for it. A nil Trace writes nothing.
type Trace struct{ w io.Writer }

// NewTrace writes to w; nil for no trace.
func NewTrace(w io.Writer) *Trace {
	if w == nil {
		return nil
	}
	return &Trace{w}
}

func (t *Trace) say(format string, args ...any) {
	if t != nil {
		fmt.Fprintf(t.w, format+"\n", args...)
	}
}
