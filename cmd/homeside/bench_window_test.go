//go:build window

package main

import (
	"fmt"
	"image"
	"io"
	"os/exec"
	"slices"
	"strings"
	"testing"
	"time"

	"homeside/model/game"
)

// frame is a frame of the court as the trace tells it.
type frame struct {
	seen             time.Time
	revision, pixels int
	pointer          image.Point
}

// parseFrame reads a line of the trace; false if it tells of no frame.
func parseFrame(line string) (frame, bool) {
	var f frame
	var at int64
	n, err := fmt.Sscanf(line, "frame %d %d %d %d %d", &at, &f.revision, &f.pixels, &f.pointer.X, &f.pointer.Y)
	f.seen = time.Unix(0, at)
	return f, n == 5 && err == nil
}

// framesUntil collects the frames of the trace up to a line that holds text.
func (w *window) framesUntil(text string) (all []frame) {
	w.t.Helper()
	late := time.After(patience)
	for {
		select {
		case line, open := <-w.lines:
			if !open {
				w.t.Fatalf("the editor ended while frames were counted")
			}
			if f, ok := parseFrame(line); ok {
				all = append(all, f)
			}
			w.note(line)
			if strings.Contains(line, text) {
				return all
			}
		case <-late:
			w.t.Fatalf("no %q within %v", text, patience)
		}
	}
}

// share is the value that a share of a sorted list lies below.
func share[T any](sorted []T, of float64) T { return sorted[int(float64(len(sorted)-1)*of)] }

// BenchmarkPlayback plays the built-in play once at match speed, with the cover
// laid over the court, in a window of 1280 x 800 drawn in software: frames of
// the court that come to the screen each second, and pixels drawn anew.
func BenchmarkPlayback(b *testing.B) {
	b.Setenv(framesVariable, "1")
	path, _ := copyLesson(b)
	w := openWindow(b, path)
	w.keys("ctrl+k")
	w.typeText("Court covered")
	w.keys("Return")
	w.framesUntil("frame")
	for b.Loop() {
		w.keys("Home", "space")
		w.framesUntil("playing=true")
		all := w.framesUntil("playing=false")
		if len(all) < 2 {
			b.Fatalf("%d frames in a whole play", len(all))
		}
		w.screenshot("bench-playback.png")
		long := all[len(all)-1].seen.Sub(all[0].seen).Seconds()
		gaps, pixels := make([]time.Duration, 0, len(all)), 0
		for i, f := range all {
			pixels += f.pixels
			if i > 0 {
				gaps = append(gaps, f.seen.Sub(all[i-1].seen))
			}
		}
		slices.Sort(gaps)
		b.ReportMetric(float64(len(all)-1)/long, "frames/s")
		b.ReportMetric(float64(pixels)/float64(len(all)), "pixels/frame")
		b.ReportMetric(share(gaps, 0.95).Seconds()*1000, "ms-between-p95")
	}
}

// dragSteps is how many moves a drag is measured by.
const dragSteps = 150

// BenchmarkDragToPaint drags a player and measures every move of the pointer from
// the moment when it is sent to the X server to the moment when the window with
// it is on the screen: in a drag of some fifty moves a second, as a hand makes
// them, and in one that rests after every move.
func BenchmarkDragToPaint(b *testing.B) {
	b.Setenv(framesVariable, "1")
	path, _ := copyLesson(b)
	w := openWindow(b, path)
	pointer := w.pointer()
	for b.Loop() {
		at := w.at[game.Near2.String()]
		w.move(at)
		w.do("mousedown", "1")
		w.move(at.Add(image.Pt(4, 0)))
		if w.settle() == 0 {
			b.Fatal("the drag has not begun")
		}
		sent := make([]time.Time, dragSteps)
		for i := range sent {
			sent[i] = pointer.move(dragged(at, i))
			time.Sleep(time.Duration(17+i%5*2) * time.Millisecond) // never in step with the screen
		}
		moving, pixels := w.waitsFor(at, sent)
		resting := make([]time.Duration, 0, dragSteps)
		last := w.settle()
		for i := range dragSteps {
			sent := pointer.move(dragged(at, i))
			resting = append(resting, w.frameAfter(last).seen.Sub(sent))
			last = w.settle()
		}
		w.do("mouseup", "1")
		w.do("key", "ctrl+z") // the next drag is the same
		w.settle()
		b.ReportMetric(share(moving, 0.5).Seconds()*1000, "ms-p50")
		b.ReportMetric(share(moving, 0.95).Seconds()*1000, "ms-p95")
		slices.Sort(resting)
		b.ReportMetric(share(resting, 0.95).Seconds()*1000, "ms-from-rest-p95")
		b.ReportMetric(pixels, "pixels/frame")
	}
}

// dragged is the place of step i: to and fro, never twice the same.
func dragged(at image.Point, i int) image.Point { return at.Add(image.Pt(6+i%50*2, i%7*3)) }

// waitsFor reads the frames that show a row of moves, told by where the pointer
// was, and is how long each took, sorted, and the mean of the pixels drawn anew.
// A frame shows all moves up to its own.
func (w *window) waitsFor(at image.Point, sent []time.Time) (waits []time.Duration, pixels float64) {
	w.t.Helper()
	frames := 0
	for len(waits) < len(sent) {
		all := w.framesUntil("frame")
		f := all[len(all)-1]
		shown := len(waits)
		for i := len(waits); i < len(sent) && i < len(waits)+40; i++ {
			if dragged(at, i) == f.pointer && f.seen.After(sent[i]) {
				shown = i + 1
			}
		}
		for len(waits) < shown {
			waits = append(waits, f.seen.Sub(sent[len(waits)]))
		}
		frames++
		pixels += float64(f.pixels)
	}
	slices.Sort(waits)
	return waits, pixels / float64(frames)
}

// frameAfter is the first frame that shows a later revision.
func (w *window) frameAfter(revision int) frame {
	w.t.Helper()
	for {
		all := w.framesUntil("frame")
		if f := all[len(all)-1]; f.revision > revision {
			return f
		}
	}
}

// settle reads on until the window has nothing more to paint, and is the
// revision that it then shows.
func (w *window) settle() (revision int) {
	for {
		select {
		case line := <-w.lines:
			w.note(line)
			if f, ok := parseFrame(line); ok {
				revision = f.revision
			}
		case <-time.After(50 * time.Millisecond):
			return revision
		}
	}
}

// pointer sends the pointer to places without starting a program for each.
type pointer struct {
	w  *window
	in io.Writer
}

func (w *window) pointer() pointer {
	w.t.Helper()
	c := exec.Command("xdotool", "-")
	in, err := c.StdinPipe()
	if err != nil {
		w.t.Fatal(err)
	}
	w.start(c)
	return pointer{w, in}
}

// move sends the pointer to a place of the window and says when.
func (p pointer) move(at image.Point) time.Time {
	p.w.t.Helper()
	sent := time.Now()
	if _, err := fmt.Fprintf(p.in, "mousemove --window %s %d %d\n", p.w.id, at.X, at.Y); err != nil {
		p.w.t.Fatal(err)
	}
	return sent
}
