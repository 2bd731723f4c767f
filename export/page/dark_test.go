package page

import (
	"context"
	"fmt"
	"image/color"
	"math"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"homeside/canvas/look"
	"homeside/export/exporttest"
)

// inMedia has Chromium show the page on a medium ("" for the screen) to somebody
// who prefers a scheme of colours.
func inMedia(p *exporttest.Page, medium, scheme string) {
	p.Do("prefer "+scheme, chromedp.Func(func(ctx context.Context, tab *chromedp.Target) error {
		_, err := cdp.Call(ctx, tab, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
			Media: medium, Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}}})
		return err
	}))
}

// rgb is a colour as Chromium says it.
func rgb(c color.NRGBA) string { return fmt.Sprintf("rgb(%d, %d, %d)", c.R, c.G, c.B) }

// The court is drawn in the look of its scheme: court, lines and a team's runs by
// day and by night, and by day on paper whatever is preferred on the screen.
func TestCourtByDayAndByNight(t *testing.T) {
	p := opened(t, exporttest.BuiltIn(t))
	p.Until("typeof page === 'object'")
	for _, c := range []struct {
		medium, scheme string
		want           look.Look
	}{{"", "light", look.Daylight}, {"", "dark", look.Night}, {"print", "dark", look.Daylight}} {
		inMedia(p, c.medium, c.scheme)
		fills := exporttest.Eval[map[string]int](p, `(() => {
			const all = {};
			for (const e of document.querySelectorAll("#play0 path, #play0 g")) for (const k of ["fill", "stroke"]) all[k + getComputedStyle(e)[k]] = 1;
			return all;
		})()`)
		other := look.Night
		if c.want.Court == look.Night.Court {
			other = look.Daylight
		}
		for _, lk := range []look.Look{c.want, other} {
			for kind, colour := range map[string]string{"court": "fill" + rgb(lk.Court), "line": "fill" + rgb(lk.Line), "kitchen": "fill" + rgb(lk.Kitchen), "run": "stroke" + rgb(lk.Teams[0].Run)} {
				if has, wanted := fills[colour] == 1, lk.Court == c.want.Court; has != wanted {
					t.Errorf("%s %s: %s %s is there: %v, want %v", c.medium, c.scheme, kind, colour, has, wanted)
				}
			}
		}
	}
	clean(t, p)
}

// In the dark the paper, the court and the letters are of the screen that is seen.
func TestPictureInTheDark(t *testing.T) {
	p := opened(t, exporttest.BuiltIn(t))
	p.Until("typeof page === 'object'")
	inMedia(p, "", "dark")
	img := p.Picture()
	seen := map[color.RGBA]int{}
	for y := range img.Rect.Dy() {
		for x := range img.Rect.Dx() {
			seen[img.RGBAAt(x, y)]++
		}
	}
	for name, c := range map[string]color.NRGBA{"paper": look.Night.Paper, "court": look.Night.Court, "run-off": look.Night.Surface} {
		if n := seen[color.RGBA(c)]; n < 5000 {
			t.Errorf("in the dark %d pixels are the %s, want 5000 at least", n, name)
		}
	}
	for name, c := range map[string]color.NRGBA{"paper": look.Daylight.Paper, "court": look.Daylight.Court, "run-off": look.Daylight.Surface} {
		if n := seen[color.RGBA(c)]; n > 500 {
			t.Errorf("in the dark %d pixels are the %s of the day", n, name)
		}
	}
}

// Upright and lying a phone shows the whole court, the caption and the buttons
// without scrolling, and nothing over the court.
func TestFitsAPhone(t *testing.T) {
	for _, size := range [][2]int{{390, 844}, {360, 740}, {844, 390}, {932, 430}} {
		p := openedAt(t, exporttest.BuiltIn(t), size[0], size[1])
		p.Until("typeof page === 'object'")
		for _, id := range []string{"play0", "caption", "back", "go", "next", "moment"} {
			box := exporttest.Eval[[]float64](p, `(() => { const b = byId("`+id+`").getBoundingClientRect(); return [b.left, b.top, b.right, b.bottom]; })()`)
			if box[0] < 0 || box[1] < 0 || box[2] > float64(size[0]) || box[3] > float64(size[1])+0.5 {
				t.Errorf("on %v #%s lies at %.0f, want it within", size, id, box)
			}
		}
		over := exporttest.Eval[string](p, `(() => {
			const b = byId("play0").getBoundingClientRect();
			for (const [x, y] of [[b.left + 1, b.top + 1], [b.right - 1, b.bottom - 1], [(b.left + b.right) / 2, b.bottom - 1]]) {
				const top = document.elementFromPoint(x, y);
				if (!top || !top.closest("#stage")) return (top ? top.id || top.tagName : "nothing") + " at " + x + "," + y;
			}
			return "";
		})()`)
		if over != "" {
			t.Errorf("on %v the court is covered: %s", size, over)
		}
		if wide := exporttest.Eval[float64](p, "document.documentElement.scrollWidth"); math.Abs(wide-float64(size[0])) > 0.5 {
			t.Errorf("on %v the page is %v wide", size, wide)
		}
	}
}
