package handout

import (
	"bytes"
	"encoding/json"
	"fmt"
	"image"
	_ "image/png" // pdftoppm's pictures are read back
	"math"
	"os/exec"
	"strings"
	"testing"

	"homeside/assets"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/words"
)

// stated is a place as the lesson file has it.
type stated struct {
	At struct {
		Event  string
		Offset float64 `json:"offset_s"`
	}
	X float64 `json:"x_ft"`
	Y float64 `json:"y_ft"`
}

// measured says by plain arithmetic where a place is: the court is 20 x 44 ft to
// the outside of its lines, the kitchen 7 ft deep (USA Pickleball Official
// Rulebook 2026, 3.A.1, 3.A.2, 3.A.4.c). Near players face +y, far ones -y.
func measured(far bool, x, y float64) (feet, metres string) {
	right, behind := x, -y
	if far {
		right, behind = -x, y
	}
	side := "right"
	if right < 0 {
		side = "left"
	}
	along, a := math.Abs(right), fmt.Sprintf("%%s %s of the centreline", side)
	if in := 10 - math.Abs(right); math.Abs(in) <= along {
		along, a = math.Abs(in), "%s in from the "+side+" sideline"
		if in < 0 {
			a = "%s outside the " + side + " sideline"
		}
	}
	across, b := math.Abs(22-behind), "%s behind the baseline"
	if behind < 22 {
		b = "%s inside the baseline"
	}
	if math.Abs(behind-7) < across {
		across, b = math.Abs(behind-7), "%s behind the kitchen line"
		if behind < 7 {
			b = "%s in front of the kitchen line"
		}
	}
	feet = fmt.Sprintf(a, inFeet(along)) + ", " + fmt.Sprintf(b, inFeet(across))
	return feet, fmt.Sprintf("%.2f m, %.2f m", along*0.3048, across*0.3048)
}

// inFeet is a length to the nearest inch.
func inFeet(ft float64) string {
	inches := int(math.Floor(ft*12 + 0.5))
	switch f, in := inches/12, inches%12; {
	case f == 0:
		return fmt.Sprintf("%d in", in)
	case in == 0:
		return fmt.Sprintf("%d ft", f)
	default:
		return fmt.Sprintf("%d ft %d in", f, in)
	}
}

// Every place that the built-in lesson's file states at an event is on the cone
// sheet, measured from the file's own coordinates by the arithmetic above.
func TestConeMeasures(t *testing.T) {
	file, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		t.Fatal(err)
	}
	var doc struct {
		Plays []struct{ Tracks map[string][]stated }
	}
	if err := json.Unmarshal(file, &doc); err != nil {
		t.Fatal(err)
	}
	checked := 0
	for i, p := range doc.Plays {
		pdf, _ := write(t, demo(t), "cones", &Options{Plays: []int{i}})
		got := text(t, pdf)
		for id, track := range p.Tracks {
			for _, k := range track {
				if k.At.Offset != 0 {
					continue
				}
				feet, metres := measured(strings.HasPrefix(id, "far"), k.X, k.Y)
				if want := feet + " " + metres; !strings.Contains(got, want) {
					t.Errorf("play %d: %s at %s (%v, %v) is not on the sheet as %q", i+1, id, k.At.Event, k.X, k.Y, want)
				}
				checked++
			}
		}
	}
	if checked < 20 {
		t.Errorf("%d places checked, want most of the lesson's", checked)
	}
}

// At a place stated for an event the player's cone stands for that event: every
// player has a cone at every event, and the numbers run from 1.
func TestConesAndEvents(t *testing.T) {
	l := demo(t)
	r := solvedPlay(t, l, 0)
	spots, events := spotsOf(r)
	used := map[int]bool{}
	for _, w := range events {
		for id, n := range w.at {
			s := spots[n-1]
			used[n] = true
			if at := r.At(w.event.At).Players[id].Run.Place; s.number != n || int(s.player) != id || s.place.Distance(at) > 0.5/12 {
				t.Errorf("at %v, player %d is at %v and has cone %+v", w.event.Name, id, at, s)
			}
		}
	}
	if len(events) != 7 || len(used) != len(spots) { // three shots with their bounces, and the end
		t.Errorf("%d events, %d of %d cones used", len(events), len(used), len(spots))
	}
}

// The court is to scale: at 300 dots to the inch and 1:125 its 20 ft are 576 dots
// wide, 20 x 304.8 / 125 / 25.4 x 300, as Poppler draws it.
func TestConeCourtIsToScale(t *testing.T) {
	for _, p := range Papers {
		pdf, _ := write(t, demo(t), "cones", &Options{Paper: p, Plays: []int{0}})
		if !strings.Contains(text(t, pdf), "scale 1:125") {
			t.Fatalf("%s is not at 1:125", p.Name)
		}
		m := drawn(t, pdf, 300)
		want := 20 * 304.8 / 125 / 25.4 * 300
		best := math.Inf(1)
		for y := m.Bounds().Dy() / 5; y < m.Bounds().Dy()*3/5; y += 7 {
			if got := float64(courtWidth(m, y)); math.Abs(got-want) < math.Abs(best-want) {
				best = got
			}
		}
		if math.Abs(best-want) > 2 {
			t.Errorf("%s: the court is %v dots wide, want %.1f", p.Name, best, want)
		}
	}
}

// courtWidth is the width of what is darker than the surface round the court in
// a row that passes no marks beside it: from sideline to sideline.
func courtWidth(m image.Image, y int) int {
	first, last := -1, -1
	for x := range m.Bounds().Dx() / 2 {
		if r, _, _, _ := m.At(x, y).RGBA(); r>>8 < 0x90 {
			if first < 0 {
				first = x
			}
			last = x
		}
	}
	return last - first + 1
}

// drawn is the first page as pdftoppm draws it in grey.
func drawn(t testing.TB, pdf []byte, dpi int) image.Image {
	t.Helper()
	c := exec.Command("pdftoppm", "-r", fmt.Sprint(dpi), "-png", "-gray", "-f", "1", "-l", "1", "-singlefile", "-")
	c.Stdin = bytes.NewReader(pdf)
	out, err := c.Output()
	if err != nil {
		t.Fatalf("pdftoppm (Debian package poppler-utils): %v", err)
	}
	m, _, err := image.Decode(bytes.NewReader(out))
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// A player far outside the court makes the scale smaller, and is on the page.
func TestConesFarOut(t *testing.T) {
	l := demo(t)
	p := l.Plays[0]
	p.Tracks[1] = append([]lesson.Keyframe{{Place: court.Pt(60, -150)}}, p.Tracks[1][1:]...)
	pdf, _ := write(t, l.WithPlay(0, p), "cones", &Options{Plays: []int{0}})
	got := text(t, pdf)
	if want := "50 ft outside the right sideline, 128 ft behind the baseline 15.24 m, 39.01 m"; !strings.Contains(got, want) {
		t.Errorf("the sheet lacks %q", want)
	}
	if strings.Contains(got, "1:125") || !strings.Contains(got, "scale 1:") {
		t.Error("the scale is still 1:125, or none")
	}
	checkApart(t, boxes(t, pdf))
}

// Places beside, behind and on lines, each by hand, for both teams: the far
// team's court is the near one turned half round.
func TestCone(t *testing.T) {
	for _, c := range []struct {
		x, y float64
		want string
	}{
		{6.5, -24, "3 ft 6 in in from the right sideline, 2 ft behind the baseline"},
		{-7.5, -23.2, "2 ft 6 in in from the left sideline, 1 ft 2 in behind the baseline"},
		{11.75, -7.5, "1 ft 9 in outside the right sideline, 6 in behind the kitchen line"},
		{-10.5, -30, "6 in outside the left sideline, 8 ft behind the baseline"},
		{0, -22, "on the centreline, on the baseline"},
		{10, -7, "on the right sideline, on the kitchen line"},
		{-10, -6, "on the left sideline, 1 ft in front of the kitchen line"},
		{2, -21, "2 ft right of the centreline, 1 ft inside the baseline"},
		{-1.5, 3, "1 ft 6 in left of the centreline, 10 ft from the kitchen line, over the net"},
		{0.03, -21.97, "on the centreline, on the baseline"},
	} {
		near := court.Pt(feetOf(c.x), feetOf(c.y))
		for e, p := range map[court.End]court.Point{court.Near: near, court.Far: near.Mirror()} {
			if got := words.Cone(e, p); got != c.want {
				t.Errorf("Cone(%v, %v) = %q, want %q", e, p, got, c.want)
			}
		}
	}
}

// No event's name is cut off in the table of a built-in lesson, in either language.
func TestConeTableNamesEveryEvent(t *testing.T) {
	defer words.Speak(words.English)
	for _, language := range words.Languages() {
		words.Speak(language)
		for _, paper := range Papers {
			l := builtIn(t, "lessons/stack-on-return.json")
			if _, r := write(t, l, "cones", &Options{Paper: paper}); len(r.Notes) > 0 {
				t.Errorf("cones in %s on %s: %q, want nothing shortened", language.Tag(), paper.Name, r.Notes)
			}
		}
	}
}
