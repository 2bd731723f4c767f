package lesson_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/homography"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// A photo out of bounds is told with its place in the file.
func TestPhotoBounds(t *testing.T) {
	for want, change := range map[string]func(*lesson.Photo){
		"/plays/0/photo/file":          func(p *lesson.Photo) { p.File = strings.Repeat("a", 1001) },
		"/plays/0/photo/width_px":      func(p *lesson.Photo) { p.Width = 0 },
		"/plays/0/photo/height_px":     func(p *lesson.Photo) { p.Height = 20001 },
		"/plays/0/photo/points":        func(p *lesson.Photo) { p.Points = make([]lesson.PhotoPoint, 13) },
		"/plays/0/photo/points/1/u_px": func(p *lesson.Photo) { p.Points[1].X = math.NaN() },
		"/plays/0/photo/points/0/y_ft": func(p *lesson.Photo) { p.Points[0].Court.Y = 201 },
		"/plays/0/photo/kept":          func(p *lesson.Photo) { p.Kept = "GIF89a" },
		"/plays/0/photo":               func(p *lesson.Photo) { p.File, p.Kept = "", "" },
	} {
		l, photo := lessontest.Sample(), lessontest.SamplePhoto()
		change(&photo)
		l.Plays[0].Photo = &photo
		if bad := lesson.Validate(l); len(bad) != 1 || bad[0].Pointer != want {
			t.Errorf("Validate = %v, want one problem at %s", bad, want)
		}
	}
	l, photo := lessontest.Sample(), lessontest.SamplePhoto()
	photo.Kept = "\xff\xd8\xff" + strings.Repeat("a", lesson.MaxPhotoKept)
	l.Plays[0].Photo = &photo
	if bad := lesson.Validate(l); len(bad) != 1 || bad[0].Pointer != "/plays/0/photo/kept" {
		t.Errorf("Validate of a large kept photo = %v, want a problem", bad)
	}
}

// A point that is not placed says nothing of where the court is, and an error names
// the points by their numbers among all.
func TestUnplacedPointsDoNotCount(t *testing.T) {
	photo := lessontest.SamplePhoto()
	want, err := photo.Map()
	if err != nil {
		t.Fatal(err)
	}
	astray := lesson.PhotoPoint{Court: court.Pt(0, -22), X: 5, Y: 5, Unplaced: true}
	photo.Points = append([]lesson.PhotoPoint{astray}, photo.Points...)
	if got, err := photo.Map(); err != nil || got != want || len(photo.Pairs()) != 4 {
		t.Errorf("with a point that is not placed the map is %v (%v) of %d points, want %v of 4", got, err, len(photo.Pairs()), want)
	}
	photo.Points[0].Unplaced = false
	if got, err := photo.Map(); err == nil && got == want {
		t.Error("placed astray, the point changes nothing")
	}
	photo.Points[0].Unplaced = true
	photo.Points[3].Court = court.Pt(0, -7) // with the first two on the kitchen line
	var e homography.Error
	if _, err := photo.Map(); !errors.As(err, &e) || !slices.Equal(e.Points, []int{1, 2, 3}) {
		t.Errorf("with three points on a line the error is %v, want one of points 1, 2 and 3", err)
	}
}

// Of a play from the other end the photo shows the same ground: what was near is
// far. No picture shows a mirrored play.
func TestPhotoOfATurnedPlay(t *testing.T) {
	p := lessontest.SamplePlay()
	before, err := homography.Fit(p.Photo.Pairs())
	if err != nil {
		t.Fatal(err)
	}
	after, err := homography.Fit(p.Turned().Photo.Pairs())
	if err != nil {
		t.Fatal(err)
	}
	at := court.Pt(3, 5)
	want, _ := before.ToPx(at)
	if got, ok := after.ToPx(at.Mirror()); !ok || math.Hypot(got.X-want.X, got.Y-want.Y) > 1e-6 {
		t.Errorf("turned, %v is at %v, want %v", at.Mirror(), got, want)
	}
	if p.Mirrored().Photo != nil {
		t.Error("a mirrored play has a photo")
	}
}
