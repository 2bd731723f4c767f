package film_test

import (
	"image/color"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/raster"
	"homeside/model/lesson"
	"homeside/model/units"
)

// cleared is a moment of a film over nothing, drawn.
func cleared(f interface {
	Static(w, h int) *canvas.Scene
	Over(w, h int, t units.Seconds) *canvas.Scene
}, w, h int, at units.Seconds) func(x, y int) color.NRGBA {
	static := *f.Static(w, h)
	static.Background = color.NRGBA{}
	img := raster.NewFrames(&static).Draw(f.Over(w, h, at))
	return func(x, y int) color.NRGBA { return color.NRGBAModel.Convert(img.At(x, y)).(color.NRGBA) }
}

// Laid over footage, a card hides no more of it than its words need: the corners
// are clear, and every word stands on the card's plate.
func TestCardsOverFootage(t *testing.T) {
	for name, f := range reels(t) {
		for _, size := range [][2]int{{180, 320}, {320, 180}, {200, 200}} {
			w, h := size[0], size[1]
			cards := 0
			for _, at := range moments(f, 60) {
				if f.Reel.At(at).Card == nil {
					continue
				}
				cards++
				seen := cleared(f, w, h, at)
				if seen(1, 1).A != 0 || seen(1, h-2).A != 0 || seen(w-2, h-2).A != 0 {
					t.Fatalf("%s at %dx%d, %.1f s: the corners are not clear", name, w, h, float64(at))
				}
				checkOnPlate(t, f.Over(w, h, at))
			}
			if cards < 2 {
				t.Errorf("%s: %d of 60 moments are on cards", name, cards)
			}
		}
	}
}

// checkOnPlate wants every word of a card on its plate.
func checkOnPlate(t *testing.T, s *canvas.Scene) {
	t.Helper()
	card, _ := panelOf(s, "card")
	var plate [2]canvas.Px
	for _, shape := range card.Shapes {
		switch shape.ID {
		case "ground":
			t.Error("the card has a ground")
		case "plate":
			corner := func(p canvas.Pos) canvas.Px {
				return canvas.Px{X: float64(p.Right) * s.PxPerPoint, Y: float64(p.Down) * s.PxPerPoint}
			}
			plate = [2]canvas.Px{corner(shape.Path[0].P[0]), corner(shape.Path[2].P[0])}
		}
	}
	for id, box := range extentsOf(s) {
		if panel, _, _ := strings.Cut(id, "/"); panel == "card" && (box[0].X < plate[0].X || box[0].Y < plate[0].Y || box[1].X > plate[1].X || box[1].Y > plate[1].Y) {
			t.Errorf("%s is at %v, its plate at %v", id, box, plate)
		}
	}
}

// Above the horizon of a court seen from behind there is footage, not sky.
func TestNoSkyOverFootage(t *testing.T) {
	f := reels(t)[lesson.BehindReceiver.String()]
	for _, at := range moments(f, 40) {
		if f.Reel.At(at).Card != nil {
			continue
		}
		if got := cleared(f, 320, 180, at)(2, 2); got.A != 0 {
			t.Fatalf("at %.1f s the upper corner is %v, want nothing", float64(at), got)
		}
	}
}
