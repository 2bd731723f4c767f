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

// traceStep tells the state of the history: the last step done and whether the
// lesson differs from its file.
func (e *Editor) traceStep() {
	step, _ := e.session.CanUndo()
	e.trace.say("step %q modified=%v", step, e.session.Modified())
}

// paintedRevision is called from within a paint. It tells where the players
// are in the window, in pixels.
func (e *Editor) paintedRevision(revision int) {
	if e.beingTimed() {
		return
	}
	now := e.whereabouts(revision)
	if now == e.painted || !e.trace.written() {
		return
	}
	e.painted = now
	for id, at := range e.court.OnScreen() {
		e.trace.say("at %v %.0f %.0f", id, at.X, at.Y)
	}
	e.traceControls()
	e.trace.say("painted %d", revision)
}

// traceStrip tells where things are in the rally strip; it is called from within
// its paint.
func (e *Editor) traceStrip() {
	if e.trace == nil || e.beingTimed() {
		return
	}
	for thing, at := range e.strip.OnScreen() {
		e.trace.say("at %s %.0f %.0f", thing, at.X, at.Y)
	}
	e.trace.say("strip shown %d", e.session.Revision())
}
