package film

import (
	"errors"
	"fmt"
	"image"
	"image/draw"
	"image/png"
	"strings"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/lesson"
)

// DecodeLogo is a lesson's logo as pixels, nil where it has none. The bounds of
// lesson.Validate keep it small.
func DecodeLogo(g lesson.Logo) (*image.NRGBA, error) {
	if g.PNG == "" {
		return nil, nil
	}
	w, h, err := g.Size()
	if err == nil && (w > lesson.MaxLogoSide || h > lesson.MaxLogoSide) {
		err = errors.New("is too large")
	}
	if err != nil {
		return nil, fmt.Errorf("the logo %w", err)
	}
	img, err := png.Decode(strings.NewReader(g.PNG))
	if err != nil {
		return nil, fmt.Errorf("read the logo: %w", err)
	}
	out := image.NewNRGBA(image.Rectangle{Max: img.Bounds().Size()})
	draw.Draw(out, out.Rect, img, img.Bounds().Min, draw.Src)
	return out, nil
}

// The largest a logo is, as shares of a picture's shorter side: our choice.
const (
	logoWide = 0.22
	logoHigh = 0.11
)

// logoSize is a logo's size in a picture in pixels; zero for none.
func (f *Film) logoSize(width, height int) canvas.Px {
	if f.logo == nil || f.Reel.Of.Logo == lesson.NoCorner {
		return canvas.Px{}
	}
	side := float64(min(width, height))
	w, h := float64(f.logo.Rect.Dx()), float64(f.logo.Rect.Dy())
	k := min(side*logoWide/w, side*logoHigh/h)
	return canvas.Px{X: w * k, Y: h * k}
}

// logoArea is where the logo stands in its corner of an area; empty for none.
func (f *Film) logoArea(in compose.Area, width, height int) compose.Area {
	size, corner, at := f.logoSize(width, height), f.Reel.Of.Logo, in.Min
	if corner.Right() {
		at.X = in.Max.X - size.X
	}
	if corner.Bottom() {
		at.Y = in.Max.Y - size.Y
	}
	return compose.Area{Min: at, Max: canvas.Px{X: at.X + size.X, Y: at.Y + size.Y}}
}

// putLogo puts the logo into its corner of an area.
func (f *Film) putLogo(s *canvas.Scene, in compose.Area) {
	a := f.logoArea(in, s.Width, s.Height)
	if a.Empty() {
		return
	}
	b := f.board(s, "logo")
	b.panel.Add(canvas.Shape{ID: "logo", Layer: canvas.Marks, Label: "logo", Image: &canvas.Image{Min: b.at(a.Min), Max: b.at(a.Max), Pix: f.logo}})
	s.Panels = append(s.Panels, b.panel)
}
