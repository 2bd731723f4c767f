package compose

import (
	"math"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// beside is the invented play with another beside it in which near2 starts
// elsewhere and hits nothing else.
func beside(t *testing.T) Picture {
	t.Helper()
	p := pictureOf(t, invented(), 0, canvas.Upright)
	other := invented()
	other.Plays[0].Tracks[game.Near2][0].Place = court.Pt(-8, -23)
	p.Twin = pictureOf(t, other, 0, canvas.Upright).Rally
	return p
}

// twins are the IDs of the discs and the ball of the play beside.
func twins(s *canvas.Scene) string {
	var ids []string
	for id := range shapesOf(s) {
		if name := strings.TrimPrefix(id, "court/twin."); name != id && !strings.Contains(name, ".") {
			ids = append(ids, name)
		}
	}
	return strings.Join(ids, " ")
}

// Only who stands elsewhere is drawn of the play beside, hollow and dashed, at
// the other play's place of the moment; nobody can be taken hold of by it.
func TestTwin(t *testing.T) {
	p := beside(t)
	for _, at := range []units.Seconds{-1.5, 0, 0.5, 1} {
		scene := p.Moving(720, 1280, at)
		if got := twins(scene); got != "near2" {
			t.Fatalf("at %v the play beside shows %q, want near2", at, got)
		}
		disc := shapesOf(scene)["court/twin.near2"]
		if len(disc.Style.Dash) == 0 || disc.Style.Fill == p.look().Teams[court.Near].Disc || disc.Label == "" {
			t.Errorf("at %v the disc is %+v, %q; want it dashed, not filled like a player, with a label", at, disc.Style, disc.Label)
		}
		l := Sight{Turn: canvas.Upright}.forExport(720, 1280, p.surface(), RiseOf(p.Rally))
		got, want := l.Court.ToCourt(centre(extentsOf(scene)["court/twin.near2"])), p.Twin.Tracks[game.Near2].RunAt(at).Place
		if got.Distance(want) > 0.01 {
			t.Errorf("at %v the disc is at %v, want %v", at, got, want)
		}
		if id, ok := PlayerOfShape("twin.near2"); ok {
			t.Errorf("the disc counts as %v", id)
		}
	}
	if got := twins(p.Moving(720, 1280, p.Rally.To)); got != "" {
		t.Errorf("at the end, where both stand alike, %q is shown", got)
	}
	p.Twin = p.Rally
	if got := twins(p.Moving(720, 1280, 0.5)); got != "" {
		t.Errorf("beside itself a play shows %q", got)
	}
}

// The far team's disc has its second outline also here, and another ball is drawn.
func TestTwinOfTheFarTeam(t *testing.T) {
	p := beside(t)
	other := invented()
	other.Plays[0].Tracks[game.Far2][0].Place = court.Pt(8, 10)
	other.Plays[0].Shots[0].Aim = court.Pt(-9, 10)
	p.Twin = pictureOf(t, other, 0, canvas.Upright).Rally
	shapes := shapesOf(p.Moving(720, 1280, 0.8))
	for _, id := range []string{"court/twin.far2", "court/twin.far2.ring", "court/twin.ball"} {
		if _, ok := shapes[id]; !ok {
			t.Errorf("no %s in the scene", id)
		}
	}
}

// A sign stands in its player's lane at its time with its word inside the strip.
func TestStripSigns(t *testing.T) {
	eachStrip(t, func(name string, s Strip) {
		s.Signs = []StripSign{{At: 0.5, Who: game.Near2, Text: "shows"}, {At: s.Rally.To, Who: game.Far1, Text: "turns"}, {At: -99, Who: game.Far2, Text: "shows"}}
		drawn := extentsOf(s.Static())
		for i, sign := range s.Signs {
			id := "strip/sign." + string(rune('0'+i))
			at := centre(drawn[id])
			if want := min(max(sign.At, s.Rally.From), s.Rally.To); math.Abs(float64(s.TimeAt(at.X)-want)) > 1e-6 {
				t.Errorf("%s: sign %d is at %v s, want %v", name, i, s.TimeAt(at.X), want)
			}
			if lane := float64(s.lane(int(sign.Who)+1)) * s.PxPerPoint; math.Abs(at.Y-lane) > 1e-6 {
				t.Errorf("%s: sign %d is %v px down, want in the lane at %v", name, i, at.Y, lane)
			}
			if plate := drawn[id+".text.plate"]; plate.left < 0 || plate.right > float64(s.Width)+0.5 || plate.overlaps(drawn[id]) {
				t.Errorf("%s: the word of sign %d is at %+v, want inside %d px and clear of %+v", name, i, plate, s.Width, drawn[id])
			}
		}
	})
}
