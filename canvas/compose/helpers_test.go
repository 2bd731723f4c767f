package compose

import (
	"bytes"
	"math"
	"testing"

	"homeside/assets"
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/rally"
)

// builtIn is the lesson that a new user sees.
func builtIn(t testing.TB) lesson.Lesson {
	t.Helper()
	return builtInAt(t, assets.FirstLesson)
}

// builtInAt is a built-in lesson by its name.
func builtInAt(t testing.TB, name string) lesson.Lesson {
	t.Helper()
	data, err := assets.Lessons.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// invented is a lesson of one play with a bit of everything.
func invented() lesson.Lesson {
	span := lesson.Span{From: lesson.Anchor{Offset: -1}, To: lesson.Anchor{Offset: 1}}
	pair := func(a, b string) lesson.Team {
		return lesson.Team{Players: [2]lesson.Player{{Name: a}, {Name: b, Hand: lesson.LeftHanded}}}
	}
	return lesson.Lesson{
		Teams: [2]lesson.Team{pair("Rua", "Lev"), pair("Ada", "Bo")},
		Plays: []lesson.Play{{
			Title: "Slide after the serve", Lead: 1.5,
			Shots: []lesson.Shot{
				{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(8)},
				{By: game.Far1, Aim: court.Pt(4, -18), Intent: lesson.Apex(9)},
			},
			Tracks: [4][]lesson.Keyframe{
				{{Place: court.Pt(5, -23)}},
				{{Place: court.Pt(-5, -23)}, {At: lesson.Anchor{Offset: 2.25}, Place: court.Pt(-5, -8)}},
				{{Place: court.Pt(-5, 24), Facing: 180}},
				{{Place: court.Pt(5, 7.5), Facing: 180}},
			},
			Marks: []lesson.Mark{
				{Span: span, Place: court.Pt(0, -12), Text: "middle"},
				{Kind: lesson.ArrowMark, Span: span, Place: court.Pt(-8, 10), Tip: court.Pt(-8, 15), Text: "back"},
			},
			Cues: []lesson.Cue{
				{Span: span, Text: "Watch the left-hander."},
				{Kind: lesson.Signal, Span: span, Giver: game.Far2, Reader: game.Far1, Meaning: lesson.Switch, Text: "yes"},
			},
		}},
	}
}

func pictureOf(t testing.TB, l lesson.Lesson, play int, turn canvas.Turn) Picture {
	t.Helper()
	if bad := lesson.Validate(l); bad != nil {
		t.Fatalf("the test's own lesson: %v", bad)
	}
	r, err := rally.Solve(l, play)
	if err != nil {
		t.Fatal(err)
	}
	return Of(r, l.Venue.Surface(), turn)
}

// box is a rectangle in pixels.
type box struct{ left, top, right, bottom float64 }

func (b box) width() float64  { return b.right - b.left }
func (b box) height() float64 { return b.bottom - b.top }

func (b box) within(w, h int) bool {
	const slack = 0.5 // px, half a pixel of a stroke may be cut
	return b.left >= -slack && b.top >= -slack && b.right <= float64(w)+slack && b.bottom <= float64(h)+slack
}

func (b box) overlaps(o box) bool {
	return b.left < o.right && o.left < b.right && b.top < o.bottom && o.top < b.bottom
}

// extents is a Surface that keeps the rectangle round every shape.
type extents map[string]box // by panel/id

func extentsOf(s *canvas.Scene) extents {
	e := extents{}
	canvas.Draw(e, s)
	return e
}

func (e extents) Path(info canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	b := box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, step := range path {
		if step.Op == canvas.Close {
			continue
		}
		points := step.P[:1]
		if step.Op == canvas.Curve {
			points = step.P[:]
		}
		for _, p := range points {
			b = box{min(b.left, p.X), min(b.top, p.Y), max(b.right, p.X), max(b.bottom, p.Y)}
		}
	}
	e[info.Panel+"/"+info.ID] = b
}

func (e extents) Text(info canvas.Info, t canvas.PxText) {
	w := look.Width(t.Text, t.Bold) * t.Size
	left := t.At.X - w/2
	switch t.Align {
	case canvas.Start:
		left = t.At.X
	case canvas.Finish:
		left = t.At.X - w
	}
	e[info.Panel+"/"+info.ID] = box{left, t.At.Y - 0.75*t.Size, left + w, t.At.Y + 0.25*t.Size}
}

func shapesOf(s *canvas.Scene) map[string]canvas.Shape {
	out := map[string]canvas.Shape{}
	for _, p := range s.Panels {
		for _, shape := range p.Shapes {
			out[p.Name+"/"+shape.ID] = shape
		}
	}
	return out
}

func (e extents) Image(info canvas.Info, g canvas.PxImage) {
	e[info.Panel+"/"+info.ID] = box{g.Min.X, g.Min.Y, g.Max.X, g.Max.Y}
}
