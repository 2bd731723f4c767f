package clip

import (
	"cmp"
	"image"
	"image/color"

	"homeside/canvas"
	"homeside/canvas/raster"
	"homeside/export"
)

// film is what a clip shows: a source with checked options.
type film struct {
	src   export.Source
	o     export.Options
	times export.Times
	base  *image.RGBA // the static layer; read only
}

// newFilm is a film for formats that know no transparency: what is transparent
// in the scene stands on white paper.
func newFilm(src export.Source, o *export.Options, format string, maxFPS int) (*film, error) {
	if o != nil && o.Ground.Clear {
		return nil, &export.ClearError{Of: format}
	}
	return filmOn(opaque, src, o, format, maxFPS)
}

// clearFilm is a film for formats that can be transparent.
func clearFilm(src export.Source, o *export.Options, format string, maxFPS int) (*film, error) {
	return filmOn(func(s *canvas.Scene) *canvas.Scene { return s }, src, o, format, maxFPS)
}

// filmOn checks the options against the play and the bounds of a format; paper
// is what becomes of the static layer.
func filmOn(paper func(*canvas.Scene) *canvas.Scene, src export.Source, o *export.Options, format string, maxFPS int) (*film, error) {
	c, err := o.Checked()
	if err != nil {
		return nil, err
	}
	err = cmp.Or(
		export.Between("width", float64(c.Width), export.MinSide, export.MaxClipSide, "px", format),
		export.Between("height", float64(c.Height), export.MinSide, export.MaxClipSide, "px", format),
		export.Between("fps", float64(c.FPS), 1, float64(maxFPS), "", format),
	)
	if err != nil {
		return nil, err
	}
	times, err := c.Times(src)
	if err != nil {
		return nil, err
	}
	src = c.Ground.Of(src)
	return &film{src, c, times, raster.Scene(paper(c.Ground.Under(src.Static(c.Width, c.Height))))}, nil
}

// opaque is s on white paper.
func opaque(s *canvas.Scene) *canvas.Scene {
	c, over := *s, func(v, a uint8) uint8 { return uint8((int(v)*int(a) + 255*(255-int(a)) + 127) / 255) }
	b := s.Background
	c.Background = color.NRGBA{over(b.R, b.A), over(b.G, b.A), over(b.B, b.A), 255}
	return &c
}

// camera draws the frames of a film for one goroutine.
type camera struct {
	*film
	frames *raster.Frames
	at     int // the frame drawn last; -1 for none
}

func (f *film) camera() *camera { return &camera{f, raster.Over(f.base), -1} }

// frame is frame i, with the tiles that are not as in the frame drawn before it,
// or as in the base for the first. Both are lent until the next call.
func (c *camera) frame(i int) (*image.RGBA, *raster.Tiles) {
	c.at = i
	img := c.frames.Draw(c.src.Moving(c.o.Width, c.o.Height, c.times.At(i)))
	return img, c.frames.Changed()
}
