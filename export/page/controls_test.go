package page

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"homeside/export/captions"
	"homeside/export/exporttest"
	"homeside/model/rally"
)

// The keys of a keyboard and of a phone clicker step, play, and go to the ends; the
// slider goes to any moment.
func TestKeysAndSlider(t *testing.T) {
	l := exporttest.BuiltIn(t)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	events := newStage(l, r).events()
	for _, c := range []struct {
		key  string
		want float64
	}{
		{"ArrowRight", events[1].T}, {"PageDown", events[2].T}, {"ArrowLeft", events[1].T}, {"PageUp", events[0].T},
		{"End", at(r.To)}, {"Home", at(r.From)},
	} {
		got := exporttest.Eval[float64](p, fmt.Sprintf(`(document.body.dispatchEvent(new KeyboardEvent("keydown", {key: %q, bubbles: true})), page.t)`, c.key))
		if math.Abs(got-c.want) > 1e-4 {
			t.Errorf("%s goes to %v, want %v", c.key, got, c.want)
		}
	}
	if !exporttest.Eval[bool](p, `(document.body.dispatchEvent(new KeyboardEvent("keydown", {key: " ", bubbles: true})), page.playing)`) {
		t.Error("the space bar does not play")
	}
	got := exporttest.Eval[float64](p, `(byId("moment").value = 1700, byId("moment").dispatchEvent(new Event("input")), page.t)`)
	if want := at(r.From) + 1.7; math.Abs(got-want) > 1e-4 || exporttest.Eval[bool](p, "page.playing") {
		t.Errorf("the slider goes to %v, want %v, at rest", got, want)
	}
	if !exporttest.Eval[bool](p, `(byId("stage").click(), page.playing)`) {
		t.Error("a tap on the court does not play")
	}
}

// Walked it takes two and a half times as long as at match speed, after a count-in
// of three beeps in which nobody moves.
func TestWalkSpeedAndCountIn(t *testing.T) {
	p := opened(t, exporttest.BuiltIn(t))
	p.Until("typeof page === 'object'")
	exporttest.Eval[bool](p, `(window.heard = [], sound.beep = (kind, wait) => heard.push(kind + " " + wait.toFixed(1)), document.querySelector('[data-speed="0.4"]').click(), page.seek(0), byId("go").click(), true)`)
	if got := exporttest.Eval[string](p, "heard.join()"); got != "count 0.0,count 0.7,count 1.4" {
		t.Errorf("counted in by %q, want three beats of 0.7 s", got)
	}
	moved := exporttest.Eval[float64](p, `new Promise((done) => {
		const look = () => performance.now() / 1000 < page.started ? requestAnimationFrame(look) : done(most);
		let most = 0; const draw = Stage.prototype.draw;
		Stage.prototype.draw = function (t) { if (performance.now() / 1000 < page.started) most = Math.max(most, t); draw.call(this, t); };
		look();
	})`)
	if moved > 1e-6 {
		t.Errorf("while counting in the play goes to %v s, want that it stays at 0", moved)
	}
	p.Until("page.t > 0.5")
	rate := exporttest.Eval[float64](p, "(page.tick(), page.t / (performance.now() / 1000 - page.started))")
	if math.Abs(rate-0.4) > 0.02 {
		t.Errorf("walked at %.2f of match speed, want 0.4", rate)
	}
}

// A player who is followed is kept in sight, larger; the whole court comes back.
func TestFollowsAPlayer(t *testing.T) {
	l := exporttest.BuiltIn(t)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	follow := func(id string) []float64 {
		return exporttest.Eval[[]float64](p, fmt.Sprintf(`(byId("follow").value = %q, byId("follow").dispatchEvent(new Event("change")), page.seek(page.play.to),
			(() => { const b = document.querySelector("#play0").viewBox.baseVal; return [b.x, b.y, b.width, b.height]; })())`, id))
	}
	whole := follow("")
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	s := newStage(l, r)
	for i, who := range s.people() {
		box := follow(who.ID)
		px := s.layout.Court.ToPx(r.At(r.To).Players[i].Run.Place)
		if box[2] > 0.6*whole[2] || px.X < box[0] || px.X > box[0]+box[2] || px.Y < box[1] || px.Y > box[1]+box[3] {
			t.Errorf("following %s at the end shows %v of %v, and the player is at %v", who.ID, box, whole, px)
		}
	}
	if got := follow(""); fmt.Sprint(got) != fmt.Sprint(whole) {
		t.Errorf("nobody followed shows %v, want %v", got, whole)
	}
}

// Every caption of every play is shown in the middle of its time, and nothing where
// none is due.
func TestCaptionsAreShown(t *testing.T) {
	l := exporttest.BuiltIn(t)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	found := 0
	for i := range l.Plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range captions.Of(l, r).Cues {
			found++
			got := exporttest.Eval[string](p, fmt.Sprintf(`(page.open(%d), page.seek(%v), byId("caption").textContent)`, i, float64(c.From+c.To)/2))
			if !strings.Contains(got, c.Text) {
				t.Errorf("play %d: at %v the page says %q, want %q", i, (c.From+c.To)/2, got, c.Text)
			}
		}
	}
	if found == 0 {
		t.Error("the built-in lesson has no captions to look for")
	}
}
