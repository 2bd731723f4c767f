package app

import (
	"strings"
	"testing"

	"homeside/words"
)

// Letters that no font has are said when they come, and again while there is
// nothing else to say; when they are gone the caution stands there.
func TestLackingLettersAreSaid(t *testing.T) {
	b := newBench(t, lessonFile(t, "good"))
	if got := b.status.Text; got != words.Caution() {
		t.Fatalf("the status says %q, want the caution", got)
	}
	retitle := func(title string) {
		l := b.session.Lesson()
		p := l.Plays[0]
		p.Title = title
		l.Plays = append(l.Plays[:0:0], p)
		b.session.Do("retitle", l)
	}
	retitle("左 Stack שלום → here")
	const want = "No font here has 左 (U+5DE6), → (U+2192)"
	if got := b.status.Text; !strings.HasPrefix(got, want) {
		t.Errorf("the status says %q, want %q", got, want)
	}
	b.say("something else")
	b.say("")
	if got := b.status.Text; !strings.HasPrefix(got, want) {
		t.Errorf("the status comes to rest at %q, want %q", got, want)
	}
	retitle("Stack")
	b.say("")
	if got := b.status.Text; got != words.Caution() {
		t.Errorf("without such letters the status says %q, want the caution", got)
	}
}
