package lesson

import (
	"errors"
	"strings"

	"homeside/model/court"
	"homeside/model/homography"
)

// Photo is a picture of a court under a play. The picture stays a file of its own,
// unless the coach asks for it to be kept in the lesson.
type Photo struct {
	File          string // where the picture is, as chosen or relative to the lesson's file; empty for one that is only kept
	Width, Height int    // px, as it is looked at, upright
	Points        []PhotoPoint
	Kept          string // the bytes of a JPEG or PNG file; empty unless asked for
}

// PhotoPoint says where a point of the court is in the picture.
type PhotoPoint struct {
	Court    court.Point
	X, Y     float64 // px from the picture's upper left corner
	Unplaced bool    // nobody has put it there yet: it says nothing of where the court is
}

// Bounds of a photo.
const (
	MaxPhotoPoints = 12
	MaxPhotoSide   = 20000   // px
	MaxPhotoKept   = 1 << 20 // bytes
	MaxPath        = 1000    // characters
)

const jpegSignature = "\xff\xd8\xff"

// Pair is the point as a map of the court is fitted to it.
func (q PhotoPoint) Pair() homography.Pair {
	return homography.Pair{Court: q.Court, Px: homography.Px{X: q.X, Y: q.Y}}
}

// Placed are the numbers of the points that have been put on the picture.
func (p Photo) Placed() (all []int) {
	for i, q := range p.Points {
		if !q.Unplaced {
			all = append(all, i)
		}
	}
	return all
}

// Pairs are the photo's placed points as a map of the court is fitted to them.
func (p Photo) Pairs() (pairs []homography.Pair) {
	for _, i := range p.Placed() {
		pairs = append(pairs, p.Points[i].Pair())
	}
	return pairs
}

// Map maps the court to the picture. The points that a homography.Error names are
// the photo's.
func (p Photo) Map() (homography.Map, error) {
	m, err := homography.Fit(p.Pairs())
	var e homography.Error
	if placed := p.Placed(); errors.As(err, &e) && len(e.Points) > 0 {
		e.Points = each(e.Points, func(i int) int { return placed[i] })
		return m, e
	}
	return m, err
}

// WithPhoto is the play with another photo; nil is none.
func (p Play) WithPhoto(photo *Photo) Play {
	p.Photo = photo
	return p
}

func (c *checker) photo(p Photo) {
	c.text("file", p.File, MaxPath)
	side := func(name string, px int) {
		if px < 1 || px > MaxPhotoSide {
			c.say(name, "%d px, want 1 to %d", px, MaxPhotoSide)
		}
	}
	side("width_px", p.Width)
	side("height_px", p.Height)
	c.count("points", len(p.Points), MaxPhotoPoints)
	c.each("points", len(p.Points), func(i int) {
		q := p.Points[i]
		c.point(q.Court)
		number(c, "u_px", q.X, -MaxPhotoSide, 2*MaxPhotoSide) // a corner may lie outside the picture
		number(c, "v_px", q.Y, -MaxPhotoSide, 2*MaxPhotoSide)
	})
	switch {
	case p.File == "" && p.Kept == "":
		c.say("", "want a file, or a picture kept in the lesson")
	case len(p.Kept) > MaxPhotoKept:
		c.say("kept", "%d bytes, want at most %d", len(p.Kept), MaxPhotoKept)
	case p.Kept != "" && !strings.HasPrefix(p.Kept, jpegSignature) && !strings.HasPrefix(p.Kept, pngSignature):
		c.say("kept", "is not a JPEG or PNG picture")
	}
}
