//go:build window

package main

import (
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/homography"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// The invented photo: 960 x 640 px, taken by a level camera 13 ft above the ground
// and 40 ft from the net, a little to the left, with a focal length of 900 px.
const photoWidth, photoHeight = 960, 640

var photographed = homography.Map{{900, 480, 900*3 + 480*40}, {0, 60, 900*13 + 60*40}, {0, 1, 40}}

// drawPhoto draws the court as that camera sees it: white lines on blue, grey sky.
func drawPhoto(t *testing.T, path string) *image.RGBA {
	t.Helper()
	img := image.NewRGBA(image.Rect(0, 0, photoWidth, photoHeight))
	for y := range photoHeight {
		for x := range photoWidth {
			img.SetRGBA(x, y, photoColour(homography.Px{X: float64(x), Y: float64(y)}))
		}
	}
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := jpeg.Encode(f, img, &jpeg.Options{Quality: 95}); err != nil {
		t.Fatal(err)
	}
	return img
}

func photoColour(px homography.Px) color.RGBA {
	at, ok := photographed.ToCourt(px)
	if !ok || at.Y > 60 {
		return color.RGBA{190, 200, 210, 255}
	}
	for _, l := range court.Lines {
		if l.Area.Grow(0.1).Contains(at) {
			return color.RGBA{240, 240, 240, 255}
		}
	}
	return color.RGBA{50, 100, 150, 255}
}

// inWindow is where a pixel of the photo is in the window.
func (w *window) inWindow(px homography.Px) image.Point {
	low, high := w.at["photo.topleft"], w.at["photo.bottomright"]
	return image.Pt(
		low.X+int(math.Round(px.X/photoWidth*float64(high.X-low.X))),
		low.Y+int(math.Round(px.Y/photoHeight*float64(high.Y-low.Y))),
	)
}

// onScreen is how many pixels of the photo one of the window takes.
func (w *window) onScreen() float64 {
	return photoWidth / float64(w.at["photo.bottomright"].X-w.at["photo.topleft"].X)
}

// A photo is laid under the court by four points, a player is put where the feet
// are, and the play is exported over the photo. When the picture has gone, that
// is said and the points are kept.
func TestPhotoUnderTheCourt(t *testing.T) {
	path, _ := copyLesson(t)
	picture := filepath.Join(filepath.Dir(path), "court.jpg")
	photo := drawPhoto(t, picture)
	w := openWindow(t, path)
	w.layPhoto(picture)
	for i, p := range asked() {
		px, _ := photographed.ToPx(p)
		w.dragTo(fmt.Sprintf("photo.point%d", i+1), w.inWindow(px))
		w.waitFor(fmt.Sprintf(`step "move point %d of the photo" modified=true`, i+1))
		w.waitFor("painted photo")
	}
	w.screenshot("photo-points.png")

	want := court.Pt(3, -5)
	feet, _ := photographed.ToPx(want)
	w.move(w.inWindow(feet))
	w.do("click", "1")
	w.waitFor(`step "place Ines on the photo" modified=true`)
	w.waitFor("painted photo")
	w.screenshot("photo-placed.png")
	after := w.save(path)
	w.checkPhoto(t, after, want)

	still := filepath.Join(t.TempDir(), "still.png")
	w.click("photo.export")
	w.waitFor("asking Export the photo")
	w.typeText(still)
	w.keys("Return")
	w.waitFor("exported " + still)
	checkStill(t, still, photo, feet)

	if err := os.Remove(picture); err != nil {
		t.Fatal(err)
	}
	again := openWindow(t, path)
	again.keys("ctrl+u")
	again.waitFor("photo missing court.jpg")
	again.waitFor("painted photo")
	again.screenshot("photo-missing.png")
	if got, want := readLesson(t, path).Plays[0].Photo.Points, after.Plays[0].Photo.Points; len(got) != len(want) || got[0] != want[0] {
		t.Errorf("without the picture the points are %v, want %v", got, want)
	}
}

// layPhoto opens the photo's page and chooses a picture.
func (w *window) layPhoto(picture string) {
	w.t.Helper()
	w.keys("ctrl+u")
	w.waitFor("photo open")
	w.waitFor("painted photo")
	w.click("photo.choose")
	w.waitFor("asking Choose a picture")
	w.typeText(picture)
	w.keys("Return")
	w.waitFor("photo shown")
	w.waitFor("painted photo")
}

// asked are the points of the court that a new photo asks for.
func asked() []court.Point {
	return []court.Point{court.Pt(-10, -7), court.Pt(10, -7), court.Pt(10, 22), court.Pt(-10, 22)}
}

// dragTo drags what was painted at a name to a place in the window.
func (w *window) dragTo(name string, to image.Point) {
	w.t.Helper()
	from, ok := w.at[name]
	if !ok {
		w.t.Fatalf("%s was never painted", name)
	}
	w.move(from)
	w.do("mousedown", "1")
	for i := 1; i <= 5; i++ {
		w.move(from.Add(to.Sub(from).Mul(i).Div(5)))
	}
	w.do("mouseup", "1")
}

// checkPhoto compares the saved points and the placed player with the camera's, to
// a pixel of the window and what that is on the ground.
func (w *window) checkPhoto(t *testing.T, l lesson.Lesson, want court.Point) {
	t.Helper()
	p := l.Plays[0].Photo
	if p == nil || p.File != "court.jpg" || p.Kept != "" || p.Width != photoWidth || p.Height != photoHeight {
		t.Fatalf("the saved photo is %+v, want court.jpg beside the lesson and nothing kept", p)
	}
	for _, q := range p.Points {
		px, _ := photographed.ToPx(q.Court)
		if off := math.Hypot(q.X-px.X, q.Y-px.Y); off > 1.5*w.onScreen() {
			t.Errorf("the point %v is %.1f px off, want at most a pixel of the window", q.Court, off)
		}
	}
	const tolerance = 0.5 // ft: a pixel of the window at the far points and at the feet
	if got := served(l, game.Near1); float64(got.Distance(want)) > tolerance {
		t.Errorf("Ines stands at %v, want %v within %v ft", got, want, tolerance)
	}
}

// checkStill looks for the player's disc below the feet and for the photo where
// nothing is drawn.
func checkStill(t *testing.T, path string, photo *image.RGBA, feet homography.Px) {
	t.Helper()
	img := readPicture(t, path)
	if got := img.Bounds().Size(); got != image.Pt(photoWidth, photoHeight) {
		t.Fatalf("the still is %v, want the photo's %d x %d", got, photoWidth, photoHeight)
	}
	pt := photoHeight / 360.0
	team, blue := look.Daylight.Teams[court.Near].Disc, 0
	middle := image.Pt(int(feet.X), int(feet.Y+float64(look.DiscRadius+3)*pt))
	for y := middle.Y - 25; y <= middle.Y+25; y++ {
		for x := middle.X - 25; x <= middle.X+25; x++ {
			if color.NRGBAModel.Convert(img.At(x, y)) == team {
				blue++
			}
		}
	}
	if blue < 300 { // a disc of 16 px without its letters has about 600
		t.Errorf("%d pixels about %v have the team's colour, want a disc", blue, middle)
	}
	const tolerance = 6 // of 255, for what JPEG loses
	for _, at := range []image.Point{{20, 20}, {900, 30}, {20, 600}} {
		got, want := color.RGBAModel.Convert(img.At(at.X, at.Y)).(color.RGBA), photo.RGBAAt(at.X, at.Y)
		if d := max(apart(got.R, want.R), apart(got.G, want.G), apart(got.B, want.B)); d > tolerance {
			t.Errorf("at %v the still is %v, the photo %v", at, got, want)
		}
	}
}

func apart(a, b uint8) int { return max(int(a)-int(b), int(b)-int(a)) }

func readPicture(t *testing.T, path string) image.Image {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return img
}

// From behind the receiver a figure is dragged by its body along the ground, and
// the exported picture is the one of that view.
func TestFromBehindTheReceiver(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	w.keys("ctrl+k")
	w.waitFor("finding a command")
	w.typeText("behind the rec")
	w.waitFor("found 1")
	w.keys("Return")
	w.waitFor("seen From behind the receiver")
	w.waitFor("painted")
	w.screenshot("behind.png")
	w.drag(game.Far1.String(), 0, -24)
	w.waitFor(`step "move Marlo" modified=true`)
	w.waitFor("painted")
	w.screenshot("behind-dragged.png")
	after := w.save(path)
	moved := served(after, game.Far1).Sub(served(before, game.Far1))
	if moved.Y > -0.4 || math.Abs(float64(moved.X)) > 0.6 {
		t.Errorf("dragged up the picture, away from the camera, Marlo moved by %v ft, want toward the net", moved)
	}
	w.exportBehind(path)

	r, err := rally.Solve(after, 0)
	if err != nil {
		t.Fatal(err)
	}
	p := compose.Of(r, before.Venue.Surface(), canvas.Upright).Seen(compose.Sight{Behind: compose.TheReceiver})
	want := raster.NewFrames(p.Static(1080, 1920)).Draw(p.Moving(1080, 1920, 0))
	got := readPicture(t, filepath.Join(filepath.Dir(path), "behind.png"))
	if got.Bounds() != want.Bounds() {
		t.Fatalf("the picture is %v, want %v", got.Bounds(), want.Bounds())
	}
	const tolerance = 0.5 // of 255, on the average
	if d := meanDifference(got, want); d > tolerance {
		t.Errorf("the picture differs by %v of 255 on the average, want at most %v", d, tolerance)
	}
}

// exportBehind exports a still of the moment shown beside the lesson.
func (w *window) exportBehind(path string) {
	w.t.Helper()
	still := filepath.Join(filepath.Dir(path), "behind.png")
	w.choosePicture()
	w.exportTo(still)
	w.waitFor("exported " + still)
}

func meanDifference(a, b image.Image) float64 {
	sum := 0
	for y := a.Bounds().Min.Y; y < a.Bounds().Max.Y; y++ {
		for x := a.Bounds().Min.X; x < a.Bounds().Max.X; x++ {
			p, q := color.RGBAModel.Convert(a.At(x, y)).(color.RGBA), color.RGBAModel.Convert(b.At(x, y)).(color.RGBA)
			sum += apart(p.R, q.R) + apart(p.G, q.G) + apart(p.B, q.B)
		}
	}
	return float64(sum) / float64(3*a.Bounds().Dx()*a.Bounds().Dy())
}

// The presenter steps by a clicker's keys and by clicks, says more at each level,
// shows two plays, takes strokes and lets the apex be dragged.
func TestPresent(t *testing.T) {
	path, before := copyLesson(t)
	w := openWindow(t, path)
	editor := w.id
	w.keys("ctrl+F5")
	w.waitFor("present open")
	w.waitFor("painted present serve.before level=0 pair=0 strokes=0 1400x900") // all of the screen
	w.id = lastWord(w.do("search", "--sync", "--onlyvisible", "--name", "presenting"))
	w.keys("Next")
	w.waitFor("painted present serve.contact")
	w.keys("Next")
	w.waitFor("painted present serve.net")
	w.keys("Prior")
	w.waitFor("painted present serve.contact level=0")
	w.screenshot("present-words.png")
	w.keys("2")
	w.waitFor("painted present serve.contact level=1")
	w.keys("3")
	w.waitFor("painted present serve.contact level=2")
	w.screenshot("present-figures.png")

	w.move(image.Pt(300, 300))
	w.do("click", "1")
	w.waitFor("painted present serve.net level=2 pair=0 strokes=0")
	w.do("click", "3")
	w.waitFor("painted present serve.contact level=2 pair=0 strokes=0")
	w.at["line"] = image.Pt(300, 300)
	w.dragTo("line", image.Pt(420, 380))
	w.waitFor("strokes=1")
	w.screenshot("present-strokes.png")
	w.keys("e")
	w.waitFor("strokes=0")

	top := w.at["present.apex"]
	w.dragTo("present.apex", top.Add(image.Pt(60, 0)))
	w.waitFor(`step "change the height of the serve" modified=true`)
	w.keys("c")
	w.waitFor("pair=1")
	w.screenshot("present-overlaid.png")
	w.keys("c")
	w.waitFor("pair=2")
	w.screenshot("present-beside.png")
	w.keys("Escape")
	w.waitFor("present closed")

	w.id = editor
	w.do("windowactivate", "--sync", w.id)
	after := w.save(path)
	if a, b := after.Plays[0].Shots[0].Intent, before.Plays[0].Shots[0].Intent; a == b {
		t.Errorf("the serve is still %+v", a)
	}
	after.Plays[0].Shots[0].Intent = before.Plays[0].Shots[0].Intent
	if after.Plays[0].Tracks[0][0] != before.Plays[0].Tracks[0][0] || len(after.Plays) != len(before.Plays) {
		t.Error("presenting has changed something else")
	}
}

// lastWord is the last of the ids that a search lists.
func lastWord(s string) string {
	all := strings.Fields(s)
	return all[len(all)-1]
}
