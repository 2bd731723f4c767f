//go:build window

package main

import (
	"math"
	"path/filepath"
	"reflect"
	"testing"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// tobinArrives is Tobin's place behind the baseline after the serve in the lesson
// the window is tested with, as the trace names it.
const tobinArrives = "arrival-near2-1"

// A place dragged in time snaps to an event and hangs on it; one undo takes it back.
func TestDragInTimeSnaps(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.waitFor("strip shown")
	from, to := w.at[tobinArrives], w.at["ruler-third.contact"]
	if from.X == 0 || to.X == 0 {
		t.Fatalf("the strip is not painted: %v, %v", from, to)
	}
	w.press(tobinArrives, to.X+3-from.X, 0) // three pixels beside the line
	w.screenshot("strip-drag.png")
	w.do("mouseup", "1")
	w.waitFor(`step "change when Tobin arrives" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got, want := readLesson(t, path).Plays[0].Tracks[game.Near2][1].At, lesson.At(lesson.ContactOf(2)); got != want {
		t.Errorf("dropped beside the third, Tobin arrives at %+v, want %+v", got, want)
	}
	w.keys("ctrl+z")
	w.waitFor("undone")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got, want := readLesson(t, path).Plays[0].Tracks[game.Near2][1].At, before.Plays[0].Tracks[game.Near2][1].At; got != want {
		t.Errorf("after undo Tobin arrives at %+v, want %+v", got, want)
	}
}

// With Control held nothing snaps; Escape in a drag leaves nothing behind.
func TestDragInTimeWithoutSnapping(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.waitFor("strip shown")
	from, to := w.at[tobinArrives], w.at["ruler-third.contact"]
	w.press(tobinArrives, 30, 0)
	w.keys("Escape")
	w.do("mouseup", "1")
	w.settle() // the strip is as it was again, and the next press is on what is painted
	w.do("keydown", "ctrl")
	w.press(tobinArrives, to.X+3-from.X, 0)
	w.do("mouseup", "1")
	w.do("keyup", "ctrl")
	w.waitFor(`step "change when Tobin arrives" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)
	got := after.Plays[0].Tracks[game.Near2][1].At
	if got.Event != lesson.ContactOf(2) || got.Offset == 0 || got.Offset > 0.1 {
		t.Errorf("dropped beside the third with Control held, Tobin arrives at %+v, want a little after it", got)
	}
	w.keys("ctrl+z")
	w.waitFor("undone")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got, want := readLesson(t, path).Plays[0].Tracks[game.Near2][1].At, before.Plays[0].Tracks[game.Near2][1].At; got != want {
		t.Errorf("one undo leaves %+v, want %+v: the cancelled drag left a step", got, want)
	}
}

// Keys pressed during a drag do nothing to what is held: undo takes the drag back and
// leaves the step before it.
func TestKeysDuringADragInTime(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.waitFor("strip shown")
	w.press(tobinArrives, 30, 0)
	w.keys("space", "Right", "Delete", "c", "ctrl+z")
	w.waitFor("undone")
	w.do("mouseup", "1")
	w.settle()
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	if got := readLesson(t, path); !reflect.DeepEqual(got, before) {
		t.Errorf("after keys and undo in a drag the saved lesson is another: %d cues, near2 %+v", len(got.Plays[0].Cues), got.Plays[0].Tracks[game.Near2])
	}
}

// A caption is added at the moment shown, moved by hand, and deleted.
func TestAddACaption(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	n := len(before.Plays[0].Cues)
	w.keys("Right", "c") // at the serve's next event
	w.waitFor("asking a cue")
	w.typeText("Now the net")
	w.screenshot("caption-asking.png")
	w.keys("Return")
	w.waitFor(`step "add a caption" modified=true`)
	w.waitFor("strip shown")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	cues := readLesson(t, path).Plays[0].Cues
	if len(cues) != n+1 || cues[n].Text != "Now the net" || cues[n].Span.From.Offset != 0 {
		t.Fatalf("the saved cues are %+v, want one more that begins on an event", cues)
	}
	w.screenshot("caption-added.png")
	name := "cue-3"
	if n != 3 {
		t.Fatalf("the lesson has %d cues, want 3 for the name %s", n, name)
	}
	w.drag(name, 60, 0)
	w.waitFor(`step "move a text in time" modified=true`)
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	moved := readLesson(t, path)
	if a, b := spanOf(t, before, cues[n].Span), spanOf(t, before, moved.Plays[0].Cues[n].Span); b[0] <= a[0] || math.Abs(float64((b[1]-b[0])-(a[1]-a[0]))) > 0.02 {
		t.Errorf("dragged to the right the caption is shown from %v to %v, before from %v to %v: want later and as long", b[0], b[1], a[0], a[1])
	}
	w.keys("Delete")
	w.waitFor(`step "delete a caption" modified=true`)
}

// spanOf are the times of a span in the first play of a lesson.
func spanOf(t *testing.T, l lesson.Lesson, s lesson.Span) [2]units.Seconds {
	t.Helper()
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return [2]units.Seconds{r.TimeAt(s.From), r.TimeAt(s.To)}
}

// A stretch dragged on the ruler is played again and again until it is paused;
// zoom and scroll keep working.
func TestLoopARange(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.waitFor("strip shown")
	from, to := w.at["ruler-return.contact"], w.at["ruler-third.contact"]
	w.press("ruler-return.contact", to.X-from.X, to.Y-from.Y)
	w.do("mouseup", "1")
	w.keys("l") // off
	w.waitFor("no loop")
	w.keys("l")
	w.waitFor("loop 1.")
	w.screenshot("loop.png")
	w.keys("space")
	w.waitFor("playing=true")
	w.waitFor("looped")
	w.waitFor("looped")
	w.keys("space")
	w.waitFor("playing=false")
	w.exportStill(filepath.Join(t.TempDir(), "still.png"))
}
