//go:build window

package main

import (
	"fmt"
	"image"
	"math"
	"path/filepath"
	"reflect"
	"testing"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// pixel is how far beside a pixel of the window a place may be, in feet: half a
// pixel of rounding in the trace, and half in the pointer.
func (w *window) pixel() float64 { return 1.5 / w.perFoot() }

// perFoot is the scale of the court in the window.
func (w *window) perFoot() float64 {
	return float64(w.at["corner"].X-w.at["origin"].X) / float64(court.HalfWidth)
}

// px is a place of an upright court in the window.
func (w *window) px(p court.Point) image.Point {
	k := w.perFoot()
	return w.at["origin"].Add(image.Pt(int(math.Round(float64(p.X)*k)), int(math.Round(-float64(p.Y)*k))))
}

// near says whether two places are one as far as the window's pixels tell.
func (w *window) near(a, b court.Point) bool { return float64(a.Distance(b)) <= w.pixel() }

// pull presses a button at one place of the court and lets it go at another.
func (w *window) pull(from, to court.Point) {
	w.t.Helper()
	a, b := w.px(from), w.px(to)
	w.move(a)
	w.do("mousedown", "1")
	for i := 1; i <= 8; i++ {
		w.move(a.Add(b.Sub(a).Mul(i).Div(8)))
	}
	w.do("mouseup", "1")
}

// clickAt presses and lets go a button at a place of the court.
func (w *window) clickAt(p court.Point, button int) {
	w.move(w.px(p))
	w.do("click", fmt.Sprint(button))
}

// save saves and reads the lesson back.
func (w *window) save(path string) lesson.Lesson {
	w.t.Helper()
	w.keys("ctrl+s")
	w.waitFor("saved " + path)
	return readLesson(w.t, path)
}

// choose takes an item of an open context menu by its number, lines between
// groups not counted.
func (w *window) choose(item int) {
	keys := make([]string, 0, item+2)
	for range item + 1 {
		keys = append(keys, "Down")
	}
	w.keys(append(keys, "Return")...)
}

// A run is bent by its middle, and straightened there.
func TestBendARun(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	track := before.Plays[0].Tracks[game.Near1]
	last := len(track) - 1
	middle := track[last-1].Place.Toward(track[last].Place, 0.5)
	to := middle.Add(court.Pt(-5, 0))
	w.pull(middle, to)
	w.waitFor(`step "bend a run of Ines" modified=true`)
	w.waitFor("painted")
	w.screenshot("bend.png")
	got := w.save(path).Plays[0].Tracks[game.Near1][last].Via
	if got == nil || !w.near(*got, to) {
		t.Errorf("bent from %v to %v the run passes %v", middle, to, got)
	}
	w.pull(to, middle)
	w.waitFor(`step "bend a run of Ines" modified=true`)
	if got := w.save(path); !reflect.DeepEqual(got, before) {
		t.Errorf("let go at its middle the run passes %v, want it straight", got.Plays[0].Tracks[game.Near1][last].Via)
	}
}

// The aim of the serve is dragged onto a line and snaps to it; with Control held
// it does not.
func TestChangeTheAim(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	aim := before.Plays[0].Shots[0].Aim
	w.pull(aim, court.Pt(aim.X, 21.7))
	w.waitFor(`step "aim the serve" modified=true`)
	w.waitFor("painted")
	if got := w.save(path).Plays[0].Shots[0].Aim; got.Y != court.Baseline {
		t.Errorf("dragged to 4 in before the baseline the aim is %v, want it on the line", got)
	}
	w.do("keydown", "ctrl")
	w.pull(court.Pt(aim.X, court.Baseline), court.Pt(aim.X, 19.2))
	w.do("keyup", "ctrl")
	w.waitFor(`step "aim the serve" modified=true`)
	if got := w.save(path).Plays[0].Shots[0].Aim; !w.near(got, court.Pt(got.X, 19.2)) || math.Abs(float64(got.Y)-19) < 0.01 {
		t.Errorf("dragged to 19.2 ft with Control held the aim is %v, want it there", got)
	}
}

// Keys pick a player and move them: 1 in, with Shift 1 ft.
func TestNudge(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.move(w.px(court.Pt(12, 0)))
	w.do("click", "1") // gives the court the keys
	w.keys("2")
	for range 3 {
		w.keys("Right")
		w.waitFor(`step "move Tobin" modified=true`)
	}
	w.keys("shift+Down")
	w.waitFor(`step "move Tobin" modified=true`)
	w.waitFor("painted")
	w.screenshot("nudge.png")
	got := served(w.save(path), game.Near2)
	if want := served(before, game.Near2).Add(court.Pt(0.25, -1)); got.Distance(want) > 1e-9 {
		t.Errorf("3 in right and 1 ft down: Tobin serves from %v, want %v", got, want)
	}
	w.keys("ctrl+z")
	w.waitFor("undone")
	if got := w.save(path); !reflect.DeepEqual(got, before) {
		t.Error("one undo does not take back the nudges that followed one another")
	}
}

// A band round the far team picks both; dragging one moves both by the same way.
func TestBandAndDragTogether(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.pull(court.Pt(-13, 28), court.Pt(13, 6))
	a, b := served(before, game.Far1), served(before, game.Far2)
	w.pull(a, a.Add(court.Pt(-2, 1)))
	w.waitFor("things\" modified=true")
	w.waitFor("painted")
	w.screenshot("band.png")
	after := w.save(path)
	way := served(after, game.Far1).Sub(a)
	if way.Length() < 1.5 || way.Distance(served(after, game.Far2).Sub(b)) > 1e-9 {
		t.Errorf("far1 dragged with far2 picked: moved by %v and %v, want both by about -2, 1", way, served(after, game.Far2).Sub(b))
	}
	if served(after, game.Near1) != served(before, game.Near1) {
		t.Error("a player outside the band has moved")
	}
}

// A zone is put on the court from the menu of the empty court, described, and
// deleted by key.
func TestMarks(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	empty := court.Pt(7, -15)
	w.clickAt(empty, 3)
	w.waitFor("menu court")
	w.keys("Down", "Right", "Down", "Down", "Down", "Return")
	w.waitFor("placing zone")
	w.pull(court.Pt(6, -18), court.Pt(9, -12))
	w.waitFor(`step "add a zone" modified=true`)
	w.waitFor("painted")
	p := w.save(path).Plays[0]
	m := p.Marks[len(p.Marks)-1]
	if m.Kind != lesson.ZoneMark || m.Place != court.Pt(6, -18) || m.Tip != court.Pt(9, -12) {
		t.Errorf("the zone is %+v, want it from 6, -18 to 9, -12", m)
	}

	w.clickAt(court.Pt(7.5, -15), 3)
	w.waitFor("menu mark")
	w.choose(0)
	w.waitFor("asking about a mark")
	w.typeText("Switch here")
	w.keys("Return")
	w.waitFor(`step "change a mark" modified=true`)
	w.waitFor("painted")
	w.screenshot("marks.png")
	p = w.save(path).Plays[0]
	if got := p.Marks[len(p.Marks)-1].Text; got != "Switch here" {
		t.Errorf("the zone says %q, want Switch here", got)
	}
	n := len(p.Marks)
	w.clickAt(court.Pt(8.7, -17.7), 1)
	w.keys("Delete")
	w.waitFor(`step "delete a mark" modified=true`)
	if got := len(w.save(path).Plays[0].Marks); got != n-1 {
		t.Errorf("after Delete the play has %d marks, want %d", got, n-1)
	}
}

// The play mirrored is the one that the score after a point more or less asks
// for; a copy stands beside it.
func TestMirrorAPlay(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+d")
	w.waitFor(`step "duplicate a play" modified=true`)
	w.keys("ctrl+shift+m")
	w.waitFor(`step "mirror a play" modified=true`)
	w.waitFor("painted")
	w.screenshot("mirror.png")
	want := edit.MirrorSides(edit.InsertPlays(before, 1, before.Plays[0]), 1)
	if got := w.save(path); !reflect.DeepEqual(got, want) {
		t.Errorf("the play mirrored is %+v, want %+v", got.Plays[1], want.Plays[1])
	}
	if got, was := want.Plays[1].Situation.Call.Serving, before.Plays[0].Situation.Call.Serving; got == was {
		t.Errorf("mirrored, the call still begins with %d", got)
	}
}

// A place is copied to a later moment, and a whole play into a new lesson.
func TestCopyAndPaste(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.clickAt(served(before, game.Far2), 1)
	w.keys("ctrl+c")
	w.waitFor("copied")
	w.keys("End", "ctrl+v")
	w.waitFor(`step "paste 1 things" modified=true`)
	after := w.save(path)
	was, got := before.Plays[0].Tracks[game.Far2], after.Plays[0].Tracks[game.Far2]
	if len(got) != len(was)+1 || got[len(got)-1].Place != was[0].Place {
		t.Errorf("Petra's places are %+v, want her first again at the end of\n%+v", got, was)
	}

	w.keys("Escape", "ctrl+c")
	w.waitFor("copied")
	w.keys("ctrl+n")
	w.waitFor("new lesson")
	w.keys("ctrl+v")
	w.waitFor(`step "paste a play" modified=true`)
	other := filepath.Join(t.TempDir(), "other.json")
	w.keys("ctrl+shift+s")
	w.waitFor("asking Save the lesson")
	w.typeText(other)
	w.keys("Return")
	w.waitFor("saved " + other)
	if l := readLesson(t, other); len(l.Plays) != 2 || !reflect.DeepEqual(l.Plays[1], after.Plays[0]) {
		t.Errorf("the new lesson has %d plays, want the copied one second", len(l.Plays))
	}
}

// Drawn larger, the court gives the hand finer steps: a drag by the same pixels
// moves a player less far.
func TestZoom(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	was := w.perFoot()
	at := w.px(served(before, game.Near2))
	w.move(at)
	for range 4 {
		w.do("click", "4") // the wheel
		w.waitFor("zoomed")
		w.waitFor("painted")
	}
	if got, want := w.perFoot()/was, math.Pow(1.2, 4); math.Abs(got/want-1) > 0.03 {
		t.Errorf("after four notches the court is drawn %.2f times as large, want %.2f", got, want)
	}
	if now := w.at[game.Near2.String()]; math.Abs(float64(now.X-at.X)) > 3 || math.Abs(float64(now.Y-at.Y)) > 3 {
		t.Errorf("the player under the wheel went from %v to %v", at, now)
	}
	w.do("keydown", "ctrl")
	w.drag(game.Near2.String(), 30, 0)
	w.do("keyup", "ctrl")
	w.waitFor(`step "move Tobin" modified=true`)
	moved := served(w.save(path), game.Near2).X - served(before, game.Near2).X
	if want := units.Feet(30 / w.perFoot()); math.Abs(float64(moved-want)) > w.pixel() {
		t.Errorf("dragged by 30 px the player moved by %v ft, want %v", moved, want)
	}
	w.keys("ctrl+0")
	w.waitFor("zoomed 1.00")
}

// A shot is added, aimed, and taken away from its menu.
func TestAddAShot(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	n := len(before.Plays[0].Shots)
	w.keys("ctrl+shift+a")
	w.waitFor(`step "add a shot" modified=true`)
	w.waitFor("painted")
	w.screenshot("shot.png")
	shots := w.save(path).Plays[0].Shots
	if len(shots) != n+1 || shots[n].By.Team() == shots[n-1].By.Team() {
		t.Fatalf("the play has %d shots, the last by %v after %v; want one more, by the other team", len(shots), shots[len(shots)-1].By, shots[n-1].By)
	}
	aim := shots[n].Aim
	to := court.Pt(aim.X+2, aim.Y)
	w.pull(aim, to)
	w.waitFor(`modified=true`)
	w.waitFor("painted")
	if got := w.save(path).Plays[0].Shots[n].Aim; got.Distance(to) > 0.5 {
		t.Errorf("aimed at %v, want about %v", got, to)
	}
	w.clickAt(to, 3)
	w.waitFor("menu shot")
	w.keys("Up", "Return") // the last item
	w.waitFor(`step "delete shots" modified=true`)
	if got := len(w.save(path).Plays[0].Shots); got != n {
		t.Errorf("after the shot was deleted there are %d, want %d", got, n)
	}
}
