package session_test

import (
	"errors"
	"math"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/homography"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// photographed is a session of a play with the sample's photo.
func photographed(t *testing.T) *session.Session {
	t.Helper()
	l := drill()
	l.Plays[0].Photo = new(lessontest.SamplePhoto())
	return session.New(l, "", nil)
}

func lastStep(t *testing.T, s *session.Session, want string) {
	t.Helper()
	if got, _ := s.CanUndo(); got != want {
		t.Errorf("the last step is %q, want %q", got, want)
	}
}

// A photo comes with four points that fit a court, so that dragging begins with a
// picture of one.
func TestPutPhoto(t *testing.T) {
	s := session.New(drill(), "", nil)
	if s.Photo() != nil {
		t.Fatal("the drill has a photo")
	}
	if _, err := s.PhotoMap(); err == nil {
		t.Error("there is a map without a photo")
	}
	s.PutPhoto("a.jpg", 1600, 1200)
	lastStep(t, s, "put a photo under the court")
	if p := s.Photo(); p == nil || len(p.Points) != 4 || p.File != "a.jpg" {
		t.Fatalf("the photo is %+v", p)
	}
	if _, err := s.PhotoMap(); err != nil {
		t.Errorf("the first points: %v", err)
	}
	s.MovePhotoPoint(2, 1000, 500)
	s.Commit("move")
	s.PutPhoto("b.jpg", 1600, 1200)
	if p := s.Photo().Points[2]; p.X != 1000 || p.Y != 500 {
		t.Errorf("another picture of the size has the point at %v, %v, want it kept", p.X, p.Y)
	}
	s.PutPhoto("c.jpg", 800, 600)
	if p := s.Photo().Points[2]; p.X != 0.66*800 {
		t.Errorf("a picture of another size has the point at %v, want %v", p.X, 0.66*800)
	}
	s.RemovePhoto()
	if s.Photo() != nil {
		t.Error("the photo is still there")
	}
	s.Undo()
	if s.Photo() == nil {
		t.Error("undo does not bring the photo back")
	}
}

// A drag previews, its end is one step, and what is no number moves nothing.
func TestMovePhotoPoint(t *testing.T) {
	s := photographed(t)
	before := s.Photo().Points[1]
	s.MovePhotoPoint(1, 1500, 710)
	s.MovePhotoPoint(1, 1501, 711)
	if !s.Previewing() || s.Photo().Points[1].X != 1501 {
		t.Errorf("the point is at %v, previewing %v", s.Photo().Points[1], s.Previewing())
	}
	s.Cancel()
	if got := s.Photo().Points[1]; got != before {
		t.Errorf("cancelled, the point is at %v, want %v", got, before)
	}
	for _, i := range []int{-1, 4} {
		s.MovePhotoPoint(i, 1, 1)
	}
	s.MovePhotoPoint(0, math.NaN(), 1)
	s.MovePhotoPoint(0, 1, math.Inf(1))
	if s.Previewing() {
		t.Error("something is moved that is not there")
	}
}

// Nudges of a point are one step; the next point's are another.
func TestNudgePhotoPoint(t *testing.T) {
	s := photographed(t)
	was := s.Photo().Points[1]
	s.NudgePhotoPoint(1, was.X+1, was.Y)
	s.NudgePhotoPoint(1, was.X+2, was.Y)
	s.NudgePhotoPoint(0, 5, 5)
	s.NudgePhotoPoint(9, 5, 5)
	s.NudgePhotoPoint(0, math.NaN(), 5)
	lastStep(t, s, "move point 1 of the photo")
	s.Undo()
	lastStep(t, s, "move point 2 of the photo")
	if got := s.Photo().Points[1].X; got != was.X+2 {
		t.Errorf("the point is at %v, want %v", got, was.X+2)
	}
	s.Undo()
	if got := s.Photo().Points[1]; got != was {
		t.Errorf("after one undo the point is at %v, want %v", got, was)
	}
}

// Points are added where the map has them, named and taken away.
func TestPhotoPoints(t *testing.T) {
	s := photographed(t)
	at := court.Pt(10, 22)
	s.AddPhotoPoint(at)
	q := s.Photo().Points[4]
	m, err := s.PhotoMap()
	if err != nil {
		t.Fatal(err)
	}
	if r, ok := m.Residual(homography.Pair{Court: at, Px: homography.Px{X: q.X, Y: q.Y}}); !ok || r.Inches() > 1e-3 {
		t.Errorf("the added point is %v in off, want where the map has it", r.Inches())
	}
	s.NamePhotoPoint(4, court.Pt(-10, 22))
	if got, _ := m.ToPx(court.Pt(-10, 22)); s.Photo().Points[4] != (lesson.PhotoPoint{Court: court.Pt(-10, 22), X: got.X, Y: got.Y, Unplaced: true}) {
		t.Errorf("the point is %+v, want the left corner at %v, not placed", s.Photo().Points[4], got)
	}
	s.MovePhotoPoint(4, 700, 400)
	s.Commit("placed")
	s.NamePhotoPoint(4, at)
	if got := s.Photo().Points[4]; got != (lesson.PhotoPoint{Court: at, X: 700, Y: 400}) {
		t.Errorf("placed and named again the point is %+v, want it where it was put", got)
	}
	s.DropPhotoPoint(4)
	if n := len(s.Photo().Points); n != 4 {
		t.Errorf("%d points, want 4", n)
	}
	for range 20 {
		s.AddPhotoPoint(at)
	}
	if n := len(s.Photo().Points); n != lesson.MaxPhotoPoints {
		t.Errorf("%d points, want at most %d", n, lesson.MaxPhotoPoints)
	}
	s.KeepPhoto("")
	if s.Photo().Kept != "" {
		t.Error("the photo is still kept")
	}
}

// A click on the feet puts the player on that point of the ground, as one step;
// one on the sky puts nobody anywhere.
func TestPlaceOnPhoto(t *testing.T) {
	s := photographed(t)
	m, err := s.PhotoMap()
	if err != nil {
		t.Fatal(err)
	}
	want := court.Pt(4, -6)
	px, _ := m.ToPx(want)
	if !s.PlaceOnPhoto(game.Near2, px.X, px.Y) {
		t.Fatal("nobody is placed")
	}
	if got := s.Current().At(s.Now()).Players[game.Near2].Drawn.Place; got.Distance(want) > 1e-6 {
		t.Errorf("near2 stands at %v, want %v", got, want)
	}
	revision := s.Revision()
	if s.PlaceOnPhoto(game.Near2, px.X, -5000) || s.Revision() != revision {
		t.Error("somebody is placed in the sky")
	}
	s.MovePhotoPoint(0, s.Photo().Points[1].X, s.Photo().Points[1].Y)
	s.Commit("one on the other")
	if s.PlaceOnPhoto(game.Near2, px.X, px.Y) {
		t.Error("somebody is placed on points that say nothing")
	}
	var e homography.Error
	if _, err := s.PhotoMap(); !errors.As(err, &e) {
		t.Errorf("PhotoMap: %v, want a reason", err)
	}
}
