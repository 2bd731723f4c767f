package compose

import (
	"math"
	"testing"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/homography"
)

// fromBehind is a photo of 1600 x 1200 px from a level camera 36 ft behind the
// net's middle and 12 ft high, with a focal length of 1400 px: a point x, y is
// 1400 x / (y + 36) to the right of its middle and 1400 * 12 / (y + 36) below 200.
var fromBehind = homography.Map{{1400, 800, 800 * 36}, {0, 200, 1400*12 + 200*36}, {0, 1, 36}}

func seenAt(x, y float64) canvas.Px {
	return canvas.Px{X: 800 + 1400*x/(y+36), Y: 200 + 1400*12/(y+36)}
}

func onPhoto(t *testing.T, width, height int) (Picture, PhotoLayout) {
	t.Helper()
	l, ok := PhotoAlone(width, height).Over(fromBehind, 1600, 1200, court.Pt(0, 0))
	if !ok {
		t.Fatal("the photo shows no court")
	}
	l.Lines = true
	return pictureOf(t, invented(), 0, canvas.Upright), l
}

// Everything stands where the photo's own perspective has it, at any size.
func TestOnPhoto(t *testing.T) {
	for _, k := range []float64{1, 0.5} {
		p, l := onPhoto(t, int(1600*k), int(1200*k))
		s := p.OnPhoto(l, 0)
		drawn := extentsOf(s)
		for _, id := range []game.Player{game.Far1, game.Far2} {
			place := p.Rally.At(0).Players[id].Run.Place
			want := seenAt(float64(place.X), float64(place.Y))
			// round the feet; a circle on the ground is seen a little nearer than its middle
			feet := drawn["court/"+PlayerShape(id)+".feet"]
			if x, y := (feet.left+feet.right)/2, (feet.top+feet.bottom)/2; math.Abs(x-want.X*k) > 1.5 || math.Abs(y-want.Y*k) > 1.5 {
				t.Errorf("at %v times: %v's feet are at %v, %v, want %v", k, id, x, y, want)
			}
			if feet.width() <= feet.height() {
				t.Errorf("%v's ring is %v x %v px, want it flat on the ground", id, feet.width(), feet.height())
			}
			disc := drawn["court/"+PlayerShape(id)]
			if math.Abs(disc.width()-disc.height()) > 1e-6 || disc.top < feet.top {
				t.Errorf("%v's disc is %+v, want upright below the feet %+v", id, disc, feet)
			}
		}
		far := drawn["court/line.5"]                                         // the far baseline
		want := canvas.Px{X: seenAt(-10, 22-2.0/12).X, Y: seenAt(-10, 22).Y} // a line is 2 in wide
		if math.Abs(far.left-want.X*k) > 1e-6 || math.Abs(far.top-want.Y*k) > 1e-6 {
			t.Errorf("at %v times: the far baseline begins at %v, %v, want %v", k, far.left, far.top, want)
		}
	}
}

// What is behind the camera, as the near baseline's ends may be, is left out, and
// nothing is drawn outside the photo.
func TestOnPhotoInside(t *testing.T) {
	p, l := onPhoto(t, 400, 300)
	l.Photo = Area{Min: canvas.Px{X: 100, Y: 50}, Max: canvas.Px{X: 300, Y: 200}}
	l, ok := l.Over(fromBehind, 1600, 1200, court.Pt(0, 0))
	if !ok {
		t.Fatal("no court")
	}
	for id, b := range extentsOf(p.OnPhoto(l, 1)) {
		if b.left < 100-1e-6 && b.right > 100 || b.right > 300+20 || b.bottom > 200+20 {
			t.Errorf("%s is at %+v, want inside the photo", id, b)
		}
	}
	if _, ok := l.Over(homography.Map{}, 1600, 1200, court.Pt(0, 0)); ok {
		t.Error("a map of nothing shows a court")
	}
	if _, ok := l.Over(fromBehind, 1600, 1200, court.Pt(0, -36)); ok {
		t.Error("a point at the camera is in front of it")
	}
}

// The points have rings whose middle is free and are numbered; a line leads to
// where each would be.
func TestPhotoPoints(t *testing.T) {
	l := PhotoAlone(720, 720)
	s := &canvas.Scene{Width: 720, Height: 720, PxPerPoint: l.PxPerPoint}
	l.Points(s, &look.Daylight, []PhotoPoint{{At: canvas.Px{X: 100, Y: 200}}, {At: canvas.Px{X: 300, Y: 400}, Fitted: canvas.Px{X: 310, Y: 400}, Fits: true, Chosen: true}})
	drawn, shapes := extentsOf(s), shapesOf(s)
	ring := drawn["points/point.1"]
	if x, y := (ring.left+ring.right)/2, (ring.top+ring.bottom)/2; math.Abs(x-100) > 1e-6 || math.Abs(y-200) > 1e-6 || shapes["points/point.1"].Style.Fill.A != 0 {
		t.Errorf("the first ring is at %v, %v with fill %v", x, y, shapes["points/point.1"].Style.Fill)
	}
	if off := drawn["points/point.2.off"]; math.Abs(off.width()-10) > 1e-6 {
		t.Errorf("the line to where it would be is %v px, want 10", off.width())
	}
	if _, ok := drawn["points/point.1.off"]; ok {
		t.Error("there is a line without a map")
	}
	if shapes["points/point.1"].Style.Stroke == shapes["points/point.2"].Style.Stroke {
		t.Error("the chosen point looks like the others")
	}
}

// At the photo's lower edge the disc stands above the feet, so that its initials are read.
func TestDiscIsInThePhoto(t *testing.T) {
	p, l := onPhoto(t, 1600, 1200)
	feet := l.Court.ToPx(p.Rally.At(0).Players[game.Far1].Run.Place)
	for _, c := range []struct {
		room  float64 // px below the feet
		above bool
	}{{400, false}, {20, true}} {
		l.Photo.Max.Y = feet.Y + c.room
		disc := extentsOf(p.OnPhoto(l, 0))["court/"+PlayerShape(game.Far1)]
		if above := disc.bottom < feet.Y; above != c.above || disc.bottom > l.Photo.Max.Y {
			t.Errorf("with %v px below the feet the disc ends %v px below them, want above them: %v", c.room, disc.bottom-feet.Y, c.above)
		}
	}
}
