package compose

import (
	"image/color"
	"reflect"
	"testing"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/internal/wcag"
	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/lesson"
	"homeside/model/units"
)

// coloursOf are all colours of a look, whose contrasts the tests of looks check.
func coloursOf(lk look.Look) map[color.NRGBA]bool {
	all := map[color.NRGBA]bool{}
	var walk func(v reflect.Value)
	walk = func(v reflect.Value) {
		switch {
		case v.Type() == reflect.TypeFor[color.NRGBA]():
			all[v.Interface().(color.NRGBA)] = true
		case v.Kind() == reflect.Array:
			for i := range v.Len() {
				walk(v.Index(i))
			}
		case v.Kind() == reflect.Struct:
			for i := range v.NumField() {
				walk(v.Field(i))
			}
		}
	}
	walk(reflect.ValueOf(lk))
	return all
}

// crowded is a play with every kind of mark, captions, signals, cover and a play
// beside it.
func crowded(t *testing.T, lk *look.Look) Picture {
	t.Helper()
	l := invented()
	span := lesson.Always()
	for i, kind := range lesson.MarkKinds {
		at := court.Pt(units.Feet(i)-4, units.Feet(3*i)-10)
		l.Plays[0].Marks = append(l.Plays[0].Marks, lesson.Mark{Kind: kind, Span: span, Place: at, Tip: at.Add(court.Pt(3, 2)), Text: kind.String()})
	}
	p, beside := pictureOf(t, l, 0, canvas.Upright), pictureOf(t, builtIn(t), 1, canvas.Upright)
	p.Look, p.Twin = lk, beside.Rally
	p.Show.Cover = coverMap(t, cover.Shot{})
	return p
}

// Whatever is drawn so that nothing shines through it has a colour of the look, of
// which the tests of looks know how well it is seen; a fill of another colour has
// an outline that is seen on it.
func TestColoursAreTheLooks(t *testing.T) {
	for name, lk := range map[string]*look.Look{"daylight": &look.Daylight, "night": &look.Night} {
		known, texts := coloursOf(*lk), 0
		p := crowded(t, lk)
		for _, sight := range allSights() {
			p := p.Seen(sight)
			scenes := []*canvas.Scene{p.Static(720, 1280)}
			from, to := p.Span()
			for i := range 9 {
				scenes = append(scenes, p.Moving(720, 1280, from+(to-from)*units.Seconds(i)/8))
			}
			for _, s := range scenes {
				for id, shape := range shapesOf(s) {
					if shape.Text != nil {
						texts++
					}
					checkColours(t, name+" "+id, shape, known)
				}
			}
		}
		if texts < 100 {
			t.Errorf("%s: only %d texts are drawn", name, texts)
		}
	}
}

func checkColours(t *testing.T, name string, s canvas.Shape, known map[color.NRGBA]bool) {
	t.Helper()
	if s.Text != nil && !known[s.Text.Colour] {
		t.Errorf("the letters of %s are %v, no colour of the look", name, s.Text.Colour)
	}
	fill, stroke := s.Style.Fill, s.Style.Stroke
	if stroke.A == 0xFF && !known[stroke] {
		t.Errorf("the line of %s is %v, no colour of the look", name, stroke)
	}
	if fill.A == 0xFF && !known[fill] && (stroke.A != 0xFF || wcag.Contrast(fill, stroke) < wcag.Graphics) {
		t.Errorf("%s is filled with %v, no colour of the look, and has no outline that is seen on it", name, fill)
	}
}
