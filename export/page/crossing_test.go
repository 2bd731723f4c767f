package page

import (
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"homeside/export/exporttest"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// switching is the built-in lesson in whose second play the receivers switch: their
// paths cross there and in no other play.
func switching(t *testing.T) lesson.Lesson { return read(t, "lessons/stack-on-return.json") }

// crossAt is when the far or near pair changes sides in a play: a walk through
// time, in milliseconds, that knows nothing of how it is found.
func crossAt(t *testing.T, l lesson.Lesson, play int) []units.Seconds {
	t.Helper()
	r, err := rally.Solve(l, play)
	if err != nil {
		t.Fatal(err)
	}
	var all []units.Seconds
	for _, pair := range [][2]int{{0, 1}, {2, 3}} {
		before := 0.0
		for ms := int(float64(r.From) * 1000); ms < int(float64(r.To)*1000); ms++ {
			f := r.At(units.Seconds(ms) / 1000)
			d := float64(f.Players[pair[0]].Run.Place.X - f.Players[pair[1]].Run.Place.X)
			if before*d < 0 {
				all = append(all, units.Seconds(ms)/1000)
			}
			if d != 0 {
				before = d
			}
		}
	}
	return all
}

const warned = `[byId("crossing").hidden ? "" : byId("crossing").textContent,
	String([...document.querySelectorAll("#play" + page.number + " [data-part^=cross]")].filter((g) => g.getAttribute("visibility") === "visible").length)]`

// Where paths cross that stands with the play, and large while it is about to come
// and just after, with its sign on the court; elsewhere nothing is said.
func TestWarnsWherePathsCross(t *testing.T) {
	l := switching(t)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	for i := range l.Plays {
		want := crossAt(t, l, i)
		exporttest.Eval[bool](p, fmt.Sprintf("(page.open(%d), true)", i))
		listed := exporttest.Eval[[]string](p, `[...byId("crossings").children].map((c) => c.textContent)`)
		if len(listed) != len(want) || (i == 1) != (len(want) == 1) {
			t.Fatalf("play %d lists %q, and its partners change sides at %v; want one crossing in play 1 and none elsewhere", i, listed, want)
		}
		for _, at := range want {
			now := exporttest.Eval[float64](p, `(byId("crossings").querySelector("button").click(), page.t)`)
			if math.Abs(now-float64(at)) > 0.002 || !strings.Contains(listed[0], "Paths cross here") {
				t.Errorf("play %d: %q goes to %v s, want %v", i, listed[0], now, at)
			}
			checkWarned(t, p, at)
		}
	}
	clean(t, p)
}

func checkWarned(t *testing.T, p *exporttest.Page, at units.Seconds) {
	t.Helper()
	exporttest.Eval[bool](p, "(page.playing = true, page.started = 0, true)") // as while it runs
	for _, c := range []struct {
		t    units.Seconds
		warn bool
	}{{at - 1.6, false}, {at - 1.4, true}, {at, true}, {at + 0.7, true}, {at + 0.9, false}} {
		got := exporttest.Eval[[]string](p, fmt.Sprintf("(page.seek(%v), %s)", float64(c.t), warned))
		if warn := strings.Contains(got[0], "Agree who goes in front!"); warn != c.warn || (got[1] == "1") != c.warn {
			t.Errorf("%.1f s from the crossing it says %q with %s signs, want a warning: %v", c.t-at, got[0], got[1], c.warn)
		}
	}
	exporttest.Eval[bool](p, "(page.playing = false, true)")
}

// Before the first count is heard out the crossing to come is said.
func TestWarnsWhileCountingIn(t *testing.T) {
	p := opened(t, switching(t))
	p.Until("typeof page === 'object'")
	got := exporttest.Eval[[]string](p, `(page.open(1), page.start(), page.tick(), `+warned+`)`)
	if !strings.Contains(got[0], "Paths cross here") {
		t.Errorf("while counting in it says %q, want that paths cross", got[0])
	}
}

// Printed, the picture before the crossing says so.
func TestPrintsCrossings(t *testing.T) {
	p := opened(t, switching(t))
	p.Until("typeof page === 'object'")
	path := filepath.Join(t.TempDir(), "page.pdf")
	if err := os.WriteFile(path, exporttest.Get(p, "print", chromedp.PrintToPDF(chromedp.PDFPaper(chromedp.PaperA4))), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("pdftotext", path, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(strings.Join(strings.Fields(string(out)), " "), "Paths cross here: Linnea in front of Amrit"); n != 1 {
		t.Errorf("the printed page says %d times that paths cross, want once", n)
	}
}
