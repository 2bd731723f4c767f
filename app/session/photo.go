package session

import (
	"slices"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/homography"
	"homeside/model/lesson"
	"homeside/words"
)

// Photo is the picture under the play shown; nil if there is none.
func (s *Session) Photo() *lesson.Photo {
	p, _ := s.Play()
	return p.Photo
}

// PhotoMap maps the court to the photo; an error, a homography.Error, if its
// points do not say how or there is none.
func (s *Session) PhotoMap() (homography.Map, error) {
	p := s.Photo()
	if p == nil {
		return homography.Map{}, homography.Error{Reason: homography.TooFew}
	}
	return p.Map()
}

// firstPoints are where a photo's points are before they are dragged: where a
// camera behind the near baseline may see them, as shares of its sides.
var firstPoints = []lesson.PhotoPoint{
	{Court: court.Pt(-court.HalfWidth, -court.Kitchen), X: 0.15, Y: 0.8},
	{Court: court.Pt(court.HalfWidth, -court.Kitchen), X: 0.85, Y: 0.8},
	{Court: court.Pt(court.HalfWidth, court.Baseline), X: 0.66, Y: 0.42},
	{Court: court.Pt(-court.HalfWidth, court.Baseline), X: 0.34, Y: 0.42},
}

// PutPhoto puts a picture of a size in pixels under the play as one step. One of
// the same size keeps the points of the one before.
func (s *Session) PutPhoto(file string, width, height int) {
	photo := lesson.Photo{File: file, Width: width, Height: height}
	if old := s.Photo(); old != nil && old.Width == width && old.Height == height {
		photo.Points = old.Points
	} else {
		for _, p := range firstPoints {
			p.X, p.Y = p.X*float64(width), p.Y*float64(height)
			photo.Points = append(photo.Points, p)
		}
	}
	s.doPhoto(words.T("put a photo under the court"), &photo)
}

// RemovePhoto takes the photo away as one step.
func (s *Session) RemovePhoto() {
	if s.Photo() != nil {
		s.doPhoto(words.T("take the photo away"), nil)
	}
}

// KeepPhoto keeps a picture's bytes in the lesson as one step; none drops them.
func (s *Session) KeepPhoto(data string) {
	name := words.T("keep the photo in the lesson")
	if data == "" {
		name = words.T("keep the photo out of the lesson")
	}
	s.changePhoto(name, func(p *lesson.Photo) { p.Kept = data })
}

// MovePhotoPoint previews point i at a place in the photo, in its pixels.
func (s *Session) MovePhotoPoint(i int, x, y float64) {
	photo := s.savedPhoto()
	if photo == nil || i < 0 || i >= len(photo.Points) || x-x != 0 || y-y != 0 {
		return
	}
	photo.Points[i].X, photo.Points[i].Y, photo.Points[i].Unplaced = x, y, false
	s.Preview(s.withPhoto(photo))
}

// photoPoint is a point that keys move.
type photoPoint int

// NudgePhotoPoint puts point i at a place in the photo, in its pixels; nudges of
// one point that follow one another are one step.
func (s *Session) NudgePhotoPoint(i int, x, y float64) {
	s.Cancel()
	photo := s.savedPhoto()
	if photo == nil || i < 0 || i >= len(photo.Points) || x-x != 0 || y-y != 0 {
		return
	}
	photo.Points[i].X, photo.Points[i].Y, photo.Points[i].Unplaced = x, y, false
	s.doMore(photoPoint(i), PhotoPointStep(i), s.withPhoto(photo))
}

// PhotoPointStep names the step that moves point i.
func PhotoPointStep(i int) string { return words.T("move point %d of the photo", i+1) }

// NamePhotoPoint says which point of the court point i is, as one step. One that is
// not placed yet goes where the photo has it now.
func (s *Session) NamePhotoPoint(i int, at court.Point) {
	s.changePhoto(words.T("name a point of the photo"), func(p *lesson.Photo) {
		switch {
		case i < 0 || i >= len(p.Points):
		case p.Points[i].Unplaced:
			p.Points[i] = unplaced(*p, at)
		default:
			p.Points[i].Court = at
		}
	})
}

// AddPhotoPoint adds a point of the court as one step. It counts when it has been
// moved: until then it only shows where the other points have it.
func (s *Session) AddPhotoPoint(at court.Point) {
	s.changePhoto(words.T("add a point to the photo"), func(p *lesson.Photo) {
		if len(p.Points) < lesson.MaxPhotoPoints {
			p.Points = append(p.Points, unplaced(*p, at))
		}
	})
}

// unplaced is a point of the court where the photo has it as far as is known,
// otherwise in the photo's middle.
func unplaced(p lesson.Photo, at court.Point) lesson.PhotoPoint {
	q := lesson.PhotoPoint{Court: at, X: float64(p.Width) / 2, Y: float64(p.Height) / 2, Unplaced: true}
	m, err := p.Map()
	if px, ok := m.ToPx(at); err == nil && ok && px.X >= 0 && px.Y >= 0 && px.X <= float64(p.Width) && px.Y <= float64(p.Height) {
		q.X, q.Y = px.X, px.Y
	}
	return q
}

// DropPhotoPoint takes point i away as one step.
func (s *Session) DropPhotoPoint(i int) {
	s.changePhoto(words.T("take a point off the photo"), func(p *lesson.Photo) {
		if i >= 0 && i < len(p.Points) {
			p.Points = slices.Delete(p.Points, i, i+1)
		}
	})
}

// PlaceOnPhoto puts a player at the moment shown where the photo has a pixel on
// the ground, as one step; false if there is no ground there that a lesson holds.
func (s *Session) PlaceOnPhoto(id game.Player, x, y float64) bool {
	m, err := s.PhotoMap()
	if err != nil {
		return false
	}
	at, ok := m.ToCourt(homography.Px{X: x, Y: y})
	if !ok || max(at.X, -at.X, at.Y, -at.Y) > lesson.MaxCoordinate {
		return false
	}
	l, ok := s.PlaceAt(id, at)
	if ok {
		s.Do(words.T("place %s on the photo", s.Lesson().NameOf(id)), l)
	}
	return ok
}

// savedPhoto is a copy of the photo as it is saved; nil if there is none.
func (s *Session) savedPhoto() *lesson.Photo {
	l := s.history.Lesson()
	if s.play >= len(l.Plays) || l.Plays[s.play].Photo == nil {
		return nil
	}
	photo := *l.Plays[s.play].Photo
	photo.Points = slices.Clone(photo.Points)
	return &photo
}

func (s *Session) changePhoto(name string, change func(*lesson.Photo)) {
	s.Cancel()
	photo := s.savedPhoto()
	if photo == nil {
		return
	}
	change(photo)
	s.doPhoto(name, photo)
}

func (s *Session) doPhoto(name string, photo *lesson.Photo) {
	s.Cancel()
	if s.play < len(s.history.Lesson().Plays) {
		s.Do(name, s.withPhoto(photo))
	}
}

// withPhoto is the lesson as it is saved with another photo under the play shown.
func (s *Session) withPhoto(photo *lesson.Photo) lesson.Lesson {
	l := s.history.Lesson()
	return edit.ReplacePlay(l, s.play, l.Plays[s.play].WithPhoto(photo))
}
