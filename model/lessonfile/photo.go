package lessonfile

import (
	"homeside/model/lesson"
	"homeside/model/units"
)

type photo struct {
	File   string       `json:"file,omitzero"`
	Width  int          `json:"width_px"`
	Height int          `json:"height_px"`
	Points []photoPoint `json:"points,omitempty"`
	Kept   []byte       `json:"kept,omitempty"` // base64 (RFC 4648, 4)
}

type photoPoint struct {
	X        *units.Feet `json:"x_ft"`
	Y        *units.Feet `json:"y_ft"`
	U        float64     `json:"u_px"`
	V        float64     `json:"v_px"`
	Unplaced bool        `json:"unplaced,omitzero"`
}

func (r *reader) photo(p photo) lesson.Photo {
	return lesson.Photo{
		File: p.File, Width: p.Width, Height: p.Height, Kept: string(p.Kept),
		Points: each(r, "points", p.Points, func(q photoPoint) lesson.PhotoPoint {
			return lesson.PhotoPoint{Court: r.place(q.X, q.Y), X: q.U, Y: q.V, Unplaced: q.Unplaced}
		}),
	}
}

func toPhoto(p *lesson.Photo) *photo {
	if p == nil {
		return nil
	}
	return &photo{p.File, p.Width, p.Height, mapped(p.Points, func(q lesson.PhotoPoint) photoPoint {
		return photoPoint{&q.Court.X, &q.Court.Y, q.X, q.Y, q.Unplaced}
	}), []byte(p.Kept)}
}
