package clip

import (
	"cmp"
	"image"
	"image/color"

	"homeside/canvas"
	"homeside/canvas/raster"
	"homeside/export"
	"homeside/model/units"
)

// film is what a clip shows: a source with checked options.
type film struct {
	src    export.Source
	o      export.Options
	times  export.Times
	static *canvas.Scene
	base   *image.RGBA // static drawn; read only
}

// newFilm checks the options against the play and the bounds of a format.
func newFilm(src export.Source, o *export.Options, format string, maxFPS int) (*film, error) {
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
	static := opaque(src.Static(c.Width, c.Height))
	return &film{src, c, times, static, raster.Scene(static)}, nil
}

// opaque is s on white paper: these formats know no transparency.
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
}

func (f *film) camera() camera { return camera{f, raster.NewFrames(f.static)} }

// frame is frame i; it is lent until the next call.
func (c camera) frame(i int) *image.RGBA { return c.moment(c.times.At(i)) }

func (c camera) moment(t units.Seconds) *image.RGBA {
	return c.frames.Draw(c.src.Moving(c.o.Width, c.o.Height, t))
}
