package still

import (
	"image/color"
	"strings"
	"testing"

	"homeside/canvas"
)

// painted is a scene of some discs and a letter, painted one after another.
func painted(colours ...color.NRGBA) *canvas.Scene {
	p := canvas.Panel{Name: "court", View: canvas.View{PxPerFoot: 1}}
	for i, c := range colours {
		p.Add(canvas.Shape{ID: string(rune('a' + i)), Path: canvas.Circle(canvas.Pos{}, canvas.Pts(3)), Style: canvas.Style{Fill: c}})
	}
	p.Add(canvas.Shape{ID: "text", Layer: canvas.Labels, Text: &canvas.Text{Text: "A", Size: 9, Colour: colours[0]}})
	return &canvas.Scene{Width: 9, Height: 9, PxPerPoint: 1, Panels: []canvas.Panel{p}}
}

// An element keeps its colour of day; a class, the same for the same change, gives
// it that of the dark, and what is alike in both has none.
func TestFragmentsInTheDark(t *testing.T) {
	white, black, blue, shade := color.NRGBA{255, 255, 255, 255}, color.NRGBA{0, 0, 0, 255}, color.NRGBA{0, 0, 255, 255}, color.NRGBA{0, 0, 0, 51}
	all := func(canvas.Info) bool { return true }
	var f Fragments
	got := f.Draw(painted(white, blue, black, white), painted(black, blue, shade, black), all)
	for _, want := range []string{`<path class="d0" fill="#ffffff"`, `<path fill="#0000ff"`, `<path class="d1" fill="#000000"`, `<g class="d0"`} {
		if !strings.Contains(got, want) {
			t.Errorf("%q lacks %q", got, want)
		}
	}
	if want := ".d0{fill:#000000}\n.d1{fill:#000000;fill-opacity:0.2}\n"; f.Dark() != want || f.Err() != nil {
		t.Errorf("the rules are %q (%v), want %q", f.Dark(), f.Err(), want)
	}
	if n := strings.Count(got, `class="d0"`); n != 3 {
		t.Errorf("%d elements turn from white to black, want 2 discs and a letter", n)
	}
	only := f.Draw(painted(white, black), painted(black, black), func(i canvas.Info) bool { return i.ID == "b" })
	if strings.Contains(only, "class") || strings.Count(only, "<path") != 1 || f.Err() != nil {
		t.Errorf("what is wanted of a scene is %q (%v), want the disc that is alike", only, f.Err())
	}
}

// A scene in the dark with more or fewer shapes is refused.
func TestFragmentsUnlike(t *testing.T) {
	c := color.NRGBA{1, 2, 3, 255}
	for _, dark := range []*canvas.Scene{painted(c), painted(c, c, c)} {
		var f Fragments
		f.Draw(painted(c, c), dark, func(canvas.Info) bool { return true })
		if f.Err() != errUnlike {
			t.Errorf("a scene of other shapes: error %v, want %v", f.Err(), errUnlike)
		}
	}
}
