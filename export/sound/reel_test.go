package sound

import (
	"fmt"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/reel"
)

// A reel's beeps are where the clip shows their moments: after the card, at half
// speed, when the picture begins to hold, and once more in the next loop.
func TestReelInBeeps(t *testing.T) {
	l := lessontest.Sample()
	from, to := lesson.Anchor{Offset: -0.5}, lesson.Anchor{Offset: 0.1}
	r := reel.Solve(l, lesson.Reel{
		Title: lesson.Card{Heading: "a", Length: 2},
		Takes: []lesson.Take{{Play: 1, From: &from, To: &to, Speed: 0.5, Loops: 2, Freezes: []lesson.Freeze{{Length: 1}}}, {Play: 9}},
	})
	p := OfReel(r)
	if got, want := fmt.Sprint(p.Beeps), fmt.Sprint([]Beep{{At: 3, Kind: Contact}, {At: 5.2, Kind: Contact}}); got != want {
		t.Errorf("OfReel = %v, want %v", got, want)
	}
	if from, to := p.Span(); from != 0 || to != r.Length() {
		t.Errorf("Span = %v, %v, want 0, %v", from, to, r.Length())
	}
}
