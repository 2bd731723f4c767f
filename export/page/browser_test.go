package page

import (
	"context"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/accessibility"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"homeside/canvas"
	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// centre is a script that gives the middle of the shape of a part that has a
// label, in the drawing's units and as the browser has transformed it.
const centre = `((play, part) => {
  const svg = document.getElementById("play" + play), shape = svg.querySelector('[data-part="' + part + '"] [aria-label]');
  const box = shape.getBBox(), at = svg.createSVGPoint();
  at.x = box.x + box.width / 2; at.y = box.y + box.height / 2;
  const p = at.matrixTransform(svg.getScreenCTM().inverse().multiply(shape.getScreenCTM()));
  return [p.x, p.y];
})`

// drawnAt is where the browser draws a part, on the court.
func drawnAt(p *exporttest.Page, s stage, number int, part string) court.Point {
	at := exporttest.Eval[[]float64](p, fmt.Sprintf("%s(%d, %q)", centre, number, part))
	return s.layout.Court.ToCourt(canvas.Px{X: at[0], Y: at[1]})
}

// In the browser every step goes to the next event of the rally, and there
// players and ball are drawn where the rally has them, within half an inch.
func TestStepsThroughTheRally(t *testing.T) {
	l := exporttest.BuiltIn(t)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	for i := range l.Plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			t.Fatal(err)
		}
		exporttest.Eval[bool](p, fmt.Sprintf(`(document.querySelector('[data-play="%d"]').click(), true)`, i))
		stepThrough(t, p, newStage(l, r), i)
	}
	clean(t, p)
}

func stepThrough(t *testing.T, p *exporttest.Page, s stage, number int) {
	t.Helper()
	steps := 0
	for _, e := range s.rally.Events {
		if !e.Reached {
			continue
		}
		steps++
		exporttest.Eval[bool](p, `(byId("next").click(), true)`)
		now := exporttest.Eval[float64](p, "page.t")
		if math.Abs(now-float64(e.At)) > 1e-4 {
			t.Fatalf("play %d, step %d goes to %v, want %v at %v", number, steps, now, e.Name, e.At)
		}
		checkDrawn(t, p, s, number, e)
	}
	if steps < 4 {
		t.Errorf("play %d has %d steps, want at least 4", number, steps)
	}
}

func checkDrawn(t *testing.T, p *exporttest.Page, s stage, number int, e rally.Event) {
	t.Helper()
	const most = 0.5 / 12
	f := s.rally.At(e.At)
	for _, id := range game.Players {
		if got, want := drawnAt(p, s, number, id.String()), f.Players[id].Run.Place; float64(got.Distance(want)) > most {
			t.Errorf("play %d at %v: %v is drawn at %v, want %v within half an inch", number, e.Name, id, got, want)
		}
	}
	if got, want := drawnAt(p, s, number, "ball"), f.Ball.Ground(); float64(got.Distance(want)) > most {
		t.Errorf("play %d at %v: the ball is drawn at %v, want %v within half an inch", number, e.Name, got, want)
	}
}

// Seen from the other end everybody is mirrored in the court's middle.
func TestOtherEnd(t *testing.T) {
	l := exporttest.BuiltIn(t)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	s := newStage(l, r)
	before := drawnAt(p, s, 0, "near1")
	exporttest.Eval[bool](p, `(byId("turn").click(), true)`)
	middle := s.layout.Court.ToCourt(canvas.Px{X: float64(s.layout.Width) / 2, Y: math.Floor(s.layout.Caption.Min.Y) / 2})
	want := court.Pt(2*middle.X-before.X, 2*middle.Y-before.Y)
	if got := drawnAt(p, s, 0, "near1"); got.Distance(want) > 0.05 {
		t.Errorf("from the other end near1 is drawn at %v, want %v", got, want)
	}
}

// Played at match speed without counting in, the page ends where the rally ends,
// in about its time, having beeped for everything; walking takes longer.
func TestPlays(t *testing.T) {
	l := exporttest.BuiltIn(t)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	exporttest.Eval[bool](p, `(window.heard = [], sound.beep = (kind) => heard.push(kind), byId("count").checked = false, byId("go").click(), true)`)
	p.Until("page.t >= page.play.to")
	took := exporttest.Eval[float64](p, "performance.now() / 1000 - page.started")
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	if lasts := float64(r.To - r.From); took < lasts-0.05 {
		t.Errorf("the play of %.2f s ends after %.2f s", lasts, took)
	}
	if got, want := exporttest.Eval[int](p, "heard.length"), len(beepsOf(r)); got != want {
		t.Errorf("%d beeps are heard, want %d", got, want)
	}
	clean(t, p)
}

// With reduced motion the play only stands at events.
func TestReducedMotion(t *testing.T) {
	p := opened(t, exporttest.BuiltIn(t))
	p.Until("typeof page === 'object'")
	p.Do("ask for calm", chromedp.Func(func(ctx context.Context, tab *chromedp.Target) error {
		_, err := cdp.Call(ctx, tab, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
			Features: []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: "reduce"}}})
		return err
	}))
	odd := exporttest.Eval[int](p, `new Promise((done) => {
		let odd = 0;
		const draw = Stage.prototype.draw, times = new Set(page.play.events.map((e) => e.t));
		Stage.prototype.draw = function (t) { if (!times.has(t)) odd++; draw.call(this, t); if (t >= page.play.to) setTimeout(() => done(odd), 50); };
		byId("count").checked = false;
		byId("go").click();
	})`)
	if odd != 0 {
		t.Errorf("with reduced motion %d frames stand between events, want none", odd)
	}
}

// Everything that can be used has a name that can be read out, as Chromium's
// own accessibility tree has it.
func TestNamesForEverything(t *testing.T) {
	p := opened(t, exporttest.BuiltIn(t))
	p.Until("typeof page === 'object'")
	exporttest.Eval[bool](p, `(document.querySelectorAll("details").forEach((d) => (d.open = true)), true)`)
	tree := exporttest.Get(p, "read the accessibility tree", func(ctx context.Context, tab *chromedp.Target) (accessibility.GetFullAXTreeResult, error) {
		return cdp.Call(ctx, tab, accessibility.GetFullAXTree, accessibility.GetFullAXTreeParams{})
	})
	found := map[string]int{}
	for _, n := range tree.Nodes {
		if n.Ignored || n.Role == nil {
			continue
		}
		role := strings.Trim(string(n.Role.Value), `"`)
		switch role {
		case "button", "slider", "checkbox", "combobox", "image", "group":
			found[role]++
			if n.Name == nil || strings.Trim(string(n.Name.Value), `" `) == "" {
				if role == "image" || role == "group" {
					continue // an empty sign, a list's own group
				}
				t.Errorf("a %s has no name", role)
			}
		}
	}
	for role, least := range map[string]int{"button": 12, "slider": 1, "checkbox": 3, "combobox": 4, "image": 8} {
		if found[role] < least {
			t.Errorf("%d of role %s, want at least %d", found[role], role, least)
		}
	}
}

// The signal drill judges by the meanings chosen; two signs never mean the same.
func TestSignalDrill(t *testing.T) {
	p := opened(t, exporttest.BuiltIn(t))
	p.Until("typeof page === 'object'")
	got := exporttest.Eval[[]string](p, `(() => {
		const drill = new Drill(), out = [];
		for (const [sign, answer] of [["open", "switch"], ["fist", "switch"], ["unclear", "stay"], ["two", "fake"]]) {
			drill.sign = sign;
			drill.answer(answer);
			clearTimeout(drill.timer);
			out.push(sign + " " + answer + ": " + drill.run);
		}
		const first = byId("meanings").querySelector("select");
		first.value = "switch";
		first.dispatchEvent(new Event("change"));
		out.push(JSON.stringify(drill.means));
		return out;
	})()`)
	want := []string{"open switch: 1", "fist switch: 0", "unclear stay: 1", "two fake: 2", `{"fist":"switch","open":"stay","two":"fake","unclear":"stay"}`}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("the drill gives %q, want %q", got, want)
	}
}

// Printed, the page is a storyboard: a numbered picture of every event with its
// words, as pdftotext reads them, and the cautions.
func TestPrintsAStoryboard(t *testing.T) {
	l := exporttest.BuiltIn(t)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	path := filepath.Join(t.TempDir(), "page.pdf")
	if err := os.WriteFile(path, exporttest.Get(p, "print", chromedp.PrintToPDF(chromedp.PDFPaper(chromedp.PaperA4))), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("pdftotext", "-layout", path, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Join(strings.Fields(string(out)), " ")
	for i := range l.Plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range newStage(l, r).events() {
			if !strings.HasSuffix(e.Name, ".net") && !strings.Contains(text, strings.Fields(e.Text)[0]) {
				t.Errorf("play %d: the printed page lacks %q", i, e.Text)
			}
		}
	}
	for _, want := range []string{"1. Before the serve", "Wear eye protection"} {
		if !strings.Contains(text, want) {
			t.Errorf("the printed page lacks %q", want)
		}
	}
}

// A ball into the net ends the steps, and nothing moves after.
func TestBallIntoTheNet(t *testing.T) {
	l := exporttest.BuiltIn(t)
	l.Plays[0].Shots[0].Intent = lesson.NetClear(-0.5)
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	if !r.Strokes[0].Stopped() {
		t.Fatal("the test's serve does not go into the net")
	}
	p := newStage(l, r).play()
	for _, e := range p.Events {
		if e.T > float64(r.Stopped())+1e-5 && e.Name != lesson.TheEnd.String() {
			t.Errorf("%s at %v comes after the ball has stopped at %v", e.Name, e.T, r.Stopped())
		}
	}
	if got := units.Seconds(p.Stopped); math.Abs(float64(got-r.Stopped())) > 1e-5 {
		t.Errorf("stopped at %v, want %v", got, r.Stopped())
	}
}
