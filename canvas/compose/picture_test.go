package compose

import (
	"fmt"
	"maps"
	"testing"

	"homeside/canvas"
	"homeside/canvas/record"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// moments of a play that cover all of it.
func moments(p Picture) (out []units.Seconds) {
	from, to := p.Span()
	for i := range 21 {
		out = append(out, from+(to-from)*units.Seconds(i)/20)
	}
	return out
}

// eachScene walks the built-in lesson and the test's own in all sizes and turns.
func eachScene(t *testing.T, do func(name string, p Picture, s *canvas.Scene)) {
	for _, l := range []lesson.Lesson{builtIn(t), invented()} {
		for i := range l.Plays {
			for _, size := range sizes {
				for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
					p := pictureOf(t, l, i, turn)
					name := fmt.Sprintf("%q %dx%d %v", l.Plays[i].Title, size[0], size[1], turn)
					do(name, p, p.Static(size[0], size[1]))
					for _, at := range moments(p) {
						do(fmt.Sprintf("%s at %.2f s", name, at), p, p.Moving(size[0], size[1], at))
					}
				}
			}
		}
	}
}

func TestEveryShapeHasItsOwnID(t *testing.T) {
	eachScene(t, func(name string, _ Picture, s *canvas.Scene) {
		panels := map[string]bool{}
		for _, p := range s.Panels {
			if p.Name == "" || panels[p.Name] {
				t.Errorf("%s: panel %q is nameless or twice there", name, p.Name)
			}
			panels[p.Name] = true
			seen := map[string]bool{}
			for _, shape := range p.Shapes {
				if shape.ID == "" || seen[shape.ID] {
					t.Errorf("%s: shape %q of panel %s has no ID of its own", name, shape.ID, p.Name)
				}
				seen[shape.ID] = true
			}
		}
	})
}

// Whatever the sizes, all of an ordinary play is inside the picture.
func TestEverythingIsInsideThePicture(t *testing.T) {
	eachScene(t, func(name string, _ Picture, s *canvas.Scene) {
		for id, b := range extentsOf(s) {
			if !b.within(s.Width, s.Height) {
				t.Errorf("%s: %s reaches from %.1f, %.1f to %.1f, %.1f px", name, id, b.left, b.top, b.right, b.bottom)
			}
		}
	})
}

// Players, ball and clock are in every frame under the same IDs, and the same
// moment gives the same shapes in the same order.
func TestIDsAreStableBetweenFrames(t *testing.T) {
	p := pictureOf(t, invented(), 0, canvas.Upright)
	always := []string{"court/ball", "court/shadow", "clock/time"}
	for _, id := range game.Players {
		for _, part := range []string{"", ".paddle", ".notch", ".initials"} {
			always = append(always, "court/"+PlayerShape(id)+part)
		}
	}
	for _, at := range moments(p) {
		s := p.Moving(360, 640, at)
		shapes := shapesOf(s)
		for _, id := range always {
			if _, ok := shapes[id]; !ok {
				t.Errorf("at %v s there is no %s", at, id)
			}
		}
		if got, again := record.Scene(s), record.Scene(p.Moving(360, 640, at)); got != again {
			t.Errorf("at %v s two drawings differ:\n%s\n%s", at, got, again)
		}
	}
}

// One who cannot see the picture is told who and what is there.
func TestLabels(t *testing.T) {
	p := pictureOf(t, invented(), 0, canvas.Upright)
	shapes := shapesOf(p.Static(360, 640))
	maps.Copy(shapes, shapesOf(p.Moving(360, 640, 0)))
	for id, want := range map[string]string{
		"court/player.near1":        "Rua, near1",
		"court/player.far2":         "Bo, far2",
		"court/player.near2.paddle": "Lev's paddle, left hand",
		"court/ball":                "ball",
		"court/net":                 "net",
		"court/ball.serve":          "path of the ball: serve",
		"court/bounce.return":       "bounce of the return",
		"court/signal.1":            "signal: switch",
		"court/mark.1":              "arrow: back",
		"court/mark.0.text":         "middle",
		"court/kitchen.far":         "far kitchen",
	} {
		if s, ok := shapes[id]; !ok || s.Label != want {
			t.Errorf("%s is labelled %q (there: %v), want %q", id, s.Label, ok, want)
		}
	}
	if got := p.Static(360, 640).Title; got != "Slide after the serve" {
		t.Errorf("the picture's title is %q", got)
	}
}

func TestPlayerOfShape(t *testing.T) {
	for _, id := range game.Players {
		if got, ok := PlayerOfShape(PlayerShape(id)); !ok || got != id {
			t.Errorf("PlayerOfShape(%q) = %v, %v, want %v", PlayerShape(id), got, ok, id)
		}
	}
	for _, s := range []string{"", "ball", "player.", "player.near3", "player.near1.paddle", "near1"} {
		if id, ok := PlayerOfShape(s); ok {
			t.Errorf("PlayerOfShape(%q) = %v, want none", s, id)
		}
	}
}

// The disc stands on the player's place, the paddle on the hand's side, the
// notch ahead; turned with the view.
func TestPlayerShapesStandWhereThePlayerDoes(t *testing.T) {
	for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
		p := pictureOf(t, invented(), 0, turn)
		s := p.Moving(360, 640, 0)
		l := Sight{Turn: turn}.forExport(360, 640, court.Surface, RiseOf(p.Rally))
		drawn := extentsOf(s)
		f := p.Rally.At(0)
		for _, id := range game.Players {
			pose := f.Players[id].Run
			want := l.Court.ToPx(pose.Place)
			disc := centre(drawn["court/"+PlayerShape(id)])
			if !nearPx(disc, want, 1e-6) {
				t.Errorf("%v: disc of %v at %v, want %v", turn, id, disc, want)
			}
			foot := l.Court.PxPerFoot
			hand := p.Rally.Player(id).Hand.Forehand(pose.Facing)
			checkSide(t, fmt.Sprintf("%v: paddle of %v", turn, id), disc, centre(drawn["court/"+PlayerShape(id)+".paddle"]), l.Court.ToPx(pose.Place.Add(hand)), foot)
			checkSide(t, fmt.Sprintf("%v: notch of %v", turn, id), disc, centre(drawn["court/"+PlayerShape(id)+".notch"]), l.Court.ToPx(pose.Place.Add(court.Direction(pose.Facing))), foot)
		}
	}
}

func centre(b box) canvas.Px { return canvas.Px{X: (b.left + b.right) / 2, Y: (b.top + b.bottom) / 2} }

func nearPx(a, b canvas.Px, tolerance float64) bool {
	return (a.X-b.X)*(a.X-b.X)+(a.Y-b.Y)*(a.Y-b.Y) <= tolerance*tolerance
}

// checkSide checks that a part lies from the disc toward a point a foot away.
func checkSide(t *testing.T, what string, disc, part, toward canvas.Px, foot float64) {
	t.Helper()
	ahead := ((part.X-disc.X)*(toward.X-disc.X) + (part.Y-disc.Y)*(toward.Y-disc.Y)) / foot
	if ahead < 5 { // px; discs are 9 points in radius, here 9 px
		t.Errorf("%s lies %.1f px toward its side, want beyond the disc", what, ahead)
	}
}

// The ball path ends at the net of a ball that hits it, and what comes after it
// is not drawn.
func TestBallPathEndsAtTheNet(t *testing.T) {
	l := invented()
	l.Plays[0].Shots[1].Intent = lesson.NetClear(-0.3)
	l.Plays[0].Shots = append(l.Plays[0].Shots, lesson.Shot{By: game.Near2, Aim: court.Pt(0, 10), Intent: lesson.Apex(8)})
	p := pictureOf(t, l, 0, canvas.Upright)
	if !p.Rally.Strokes[1].Stopped() {
		t.Fatal("the return does not go into the net: the test's own play is wrong")
	}
	s := p.Static(360, 640)
	shapes, drawn := shapesOf(s), extentsOf(s)
	for _, id := range []string{"court/ball.third", "court/bounce.return", "court/bounce.third"} {
		if _, ok := shapes[id]; ok {
			t.Errorf("%s is drawn after the net", id)
		}
	}
	net := Sight{Turn: canvas.Upright}.forExport(360, 640, court.Surface, RiseOf(p.Rally)).Court.ToPx(court.Pt(0, 0)).Y
	if got := drawn["court/ball.return"].bottom; got > net+1 {
		t.Errorf("the return is drawn to %v px, want to the net at %v", got, net)
	}
}
