//go:build window

package main

import (
	"math"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/rally"
)

// Dragging the top of the serve upward makes it higher and the return later.
func TestDragTheApex(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	perFoot := w.pxPerFoot(before)
	w.drag("apex", 25, 0)
	w.waitFor(`step "change the height of the serve" modified=true`)
	w.screenshot("apex.png")
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	after := readLesson(t, path)

	was := solved(t, before).Strokes[0].Planned.Apex.State.Height().Feet()
	got := after.Plays[0].Shots[0].Intent
	if want := float64(was) + 25/perFoot; got.Kind != lesson.ByApex || math.Abs(float64(got.Apex)-want) > 0.1 {
		t.Errorf("the apex dragged by 25 px from %.2f ft: intent %+v, want an apex of %.2f ft", float64(was), got, want)
	}
	if a, b := solved(t, before).Strokes[1].At, solved(t, after).Strokes[1].At; b <= a {
		t.Errorf("a higher serve is returned after %v, the lower one after %v: want later", b, a)
	}
}

func solved(t *testing.T, l lesson.Lesson) *rally.Rally {
	t.Helper()
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// A lesson that cannot be read does not open a window.
func TestBadLesson(t *testing.T) {
	if _, err := lessonfile.Open("window_test.go"); err == nil {
		t.Fatal("a Go file reads as a lesson")
	}
	if err := run([]string{"window_test.go"}); err == nil {
		t.Error("run(window_test.go) = nil, want an error")
	}
}
