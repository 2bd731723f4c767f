package compose

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/record"
	"homeside/model/court"
)

var update = flag.Bool("update", false, "write the pictures' texts anew: go test ./canvas/compose -update")

// checkGolden compares the lines of a scene's record whose shapes are asked for
// with a file beside the test.
func checkGolden(t *testing.T, name string, s *canvas.Scene, want func(shape string) bool) {
	t.Helper()
	var lines []string
	for _, line := range strings.SplitAfter(record.Scene(s), "\n") {
		if fields := strings.Fields(line); len(fields) > 1 && want(fields[0]+"/"+fields[1]) {
			lines = append(lines, line)
		}
	}
	got, path := strings.Join(lines, ""), filepath.Join("testdata", name+".txt")
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	golden, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(golden) {
		t.Errorf("%s is drawn as\n%swant\n%s", name, got, golden)
	}
}

func anyOf(prefixes ...string) func(string) bool {
	return func(shape string) bool {
		for _, p := range prefixes {
			if strings.HasPrefix(shape, p) {
				return true
			}
		}
		return false
	}
}

// At 10 px a foot, the net's centre at 160, 310: every corner can be checked by
// hand against the rulebook's figures.
func TestCourtRecorded(t *testing.T) {
	for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
		w, h := 320, 620
		if turn == canvas.Lying {
			w, h = h, w
		}
		l := Bare(w, h, turn, court.Surface, 1)
		checkGolden(t, "court-"+turn.String(), pictureOf(t, invented(), 0, turn).StaticIn(l),
			anyOf("court/surface", "court/court", "court/kitchen", "court/line", "court/net", "court/post"))
	}
}

// One player of each team, with what hangs on one: signal, answer, mark.
func TestFrameRecorded(t *testing.T) {
	l := Bare(320, 620, canvas.Upright, court.Surface, 1)
	checkGolden(t, "frame", pictureOf(t, invented(), 0, canvas.Upright).MovingIn(l, 0),
		func(shape string) bool {
			return shape == "court/ball" || anyOf("court/player.near1", "court/player.far2", "court/shadow", "court/mark", "court/signal")(shape)
		})
}

func TestRunRecorded(t *testing.T) {
	l := Bare(320, 620, canvas.Upright, court.Surface, 1)
	checkGolden(t, "run", pictureOf(t, invented(), 0, canvas.Upright).StaticIn(l), anyOf("court/run.near2", "court/bounce"))
}

func TestWordsRecorded(t *testing.T) {
	p := pictureOf(t, invented(), 0, canvas.Upright)
	for _, size := range []struct {
		name string
		w, h int
	}{{"tall", 360, 640}, {"wide", 640, 360}} {
		s := p.Static(size.w, size.h)
		s.Panels = append(s.Panels, p.Moving(size.w, size.h, 0).Panels...)
		checkGolden(t, "words-"+size.name, s, anyOf("title/", "clock/", "caption/"))
	}
}

func TestStripRecorded(t *testing.T) {
	s := Strip{Rally: pictureOf(t, invented(), 0, canvas.Upright).Rally, Width: 500, Height: 150, PxPerPoint: 1}
	checkGolden(t, "strip", s.Static(), anyOf("strip/label", "strip/event", "strip/bar.near2", "strip/stop.near2"))
	s.Loop, s.Shown = Span{0.5, 2}, Span{-0.5, 2.5}
	checkGolden(t, "strip-zoomed", s.Static(), anyOf("strip/cue", "strip/loop", "strip/lead", "strip/tick", "strip/bar.near2", "strip/label"))
}
