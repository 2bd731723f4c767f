package photo

import (
	"bytes"
	"errors"
	"image"
	"image/jpeg"
	"image/png"
	"io"

	"golang.org/x/image/draw"

	"homeside/canvas"
	"homeside/canvas/raster"
)

// Over is the picture with a scene over it, as large as the scene.
func (p Picture) Over(s *canvas.Scene) *image.RGBA {
	out := p.Scaled(s.Width, s.Height)
	raster.New(out).Draw(s)
	return out
}

// Scaled is the picture at a size in pixels.
func (p Picture) Scaled(width, height int) *image.RGBA {
	out := image.NewRGBA(image.Rect(0, 0, max(width, 1), max(height, 1)))
	draw.CatmullRom.Scale(out, out.Rect, p.Image, p.Image.Rect, draw.Src, nil)
	return out
}

// Size is the size at which the picture is exported: as large as it is shown.
func (p Picture) Size() (width, height int) { return p.Image.Rect.Dx(), p.Image.Rect.Dy() }

// WritePNG writes the picture with a scene over it.
func (p Picture) WritePNG(w io.Writer, s *canvas.Scene) error { return png.Encode(w, p.Over(s)) }

// errKept is what Kept says if even a small picture takes too much room.
var errKept = errors.New("the picture cannot be made small enough to keep")

// Kept is the picture as a JPEG of at most so many bytes: the largest of some
// sizes that fits. Nothing but pixels is kept: no place, no camera, no name.
func (p Picture) Kept(most int) ([]byte, error) {
	for _, side := range []int{1600, 1280, 1024, 800, 640, 320} {
		var b bytes.Buffer
		if err := jpeg.Encode(&b, shrunk(p.Image, side), &jpeg.Options{Quality: 82}); err != nil {
			return nil, err
		}
		if b.Len() <= most {
			return b.Bytes(), nil
		}
	}
	return nil, errKept
}
