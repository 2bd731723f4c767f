package main

import (
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/homography"
	"homeside/model/lesson"
)

// seenFromBehind is a photo of 800 x 600 px by a level camera 35 ft behind the net's middle
// and 12 ft high, with a focal length of 700 px.
var seenFromBehind = homography.Map{{700, 400, 400 * 35}, {0, 100, 700*12 + 100*35}, {0, 1, 35}}

// photographedDrill is the drill, its first play with a grey photo beside it.
func photographedDrill(t *testing.T) (path string, l lesson.Lesson) {
	t.Helper()
	l = drill()
	photo := lesson.Photo{File: "court.png", Width: 800, Height: 600}
	for _, p := range []court.Point{court.Pt(-10, -7), court.Pt(10, -7), court.Pt(10, 22), court.Pt(-10, 22)} {
		px, _ := seenFromBehind.ToPx(p)
		photo.Points = append(photo.Points, lesson.PhotoPoint{Court: p, X: px.X, Y: px.Y})
	}
	l.Plays[0].Photo = &photo
	path = lessonFile(t, l)
	img := image.NewGray(image.Rect(0, 0, 800, 600))
	for i := range img.Pix {
		img.Pix[i] = 0x90
	}
	f, err := os.Create(filepath.Join(filepath.Dir(path), "court.png"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, img); err != nil {
		t.Fatal(err)
	}
	return path, l
}

// The still is as large as the photo, shows it where nothing is drawn, and has
// the far team's disc below the feet of a player of it.
func TestPhotoStill(t *testing.T) {
	path, l := photographedDrill(t)
	out := filepath.Join(t.TempDir(), "still.png")
	if _, errs, code := cli("photo", path, "--out", out); code != 0 {
		t.Fatalf("exit %d: %s", code, errs)
	}
	img := readPNG(t, out)
	if got := img.Bounds().Size(); got != image.Pt(800, 600) {
		t.Fatalf("the still is %v, want 800 x 600", got)
	}
	if got := color.NRGBAModel.Convert(img.At(20, 20)); got != (color.NRGBA{0x90, 0x90, 0x90, 0xFF}) {
		t.Errorf("the sky is %v, want the photo's grey", got)
	}
	feet, _ := seenFromBehind.ToPx(l.Plays[0].Tracks[2][0].Place)
	at := image.Pt(int(math.Round(feet.X))-11, int(math.Round(feet.Y+float64(look.DiscRadius+3)*600/360)))
	if got, want := color.NRGBAModel.Convert(img.At(at.X, at.Y)), look.Daylight.Teams[court.Far].Disc; got != want {
		t.Errorf("at %v, left of the letters in the disc, the still is %v, want %v", at, got, want)
	}
}

// Letters that no font has are told of.
func TestPhotoSaysWhichLettersAreLacking(t *testing.T) {
	path, l := photographedDrill(t)
	l.Plays[0].Photo.File = filepath.Join(filepath.Dir(path), l.Plays[0].Photo.File)
	l.Teams[court.Near].Players[0].Initials = "中"
	out := filepath.Join(t.TempDir(), "still.png")
	if _, errs, code := cli("photo", lessonFile(t, l), "--out", out); code != exitOK || !strings.HasPrefix(errs, out+": No font here has 中 (U+4E2D)") {
		t.Errorf("exit %d, %q, want it to say that 中 is lacking", code, errs)
	}
}

func TestPhotoRefuses(t *testing.T) {
	path, l := photographedDrill(t)
	out := filepath.Join(t.TempDir(), "x.png")
	refused(t, "photo "+path, `required flag(s) "out" not set`)
	refused(t, "photo "+path+" --play 2 --out "+out, "this play has no photo")
	refused(t, "photo "+path+" --at 99 --out "+out, "--at 99: outside the ")
	l.Plays[0].Photo.Points[1] = l.Plays[0].Photo.Points[0]
	refused(t, "photo "+lessonFile(t, l)+" --out "+out, "points on a line")
	if err := os.Remove(filepath.Join(filepath.Dir(path), "court.png")); err != nil {
		t.Fatal(err)
	}
	refused(t, "photo "+path+" --out "+out, "the photo court.png is not there")
	if _, err := os.Stat(out); err == nil {
		t.Error("a refused still is written")
	}
}
