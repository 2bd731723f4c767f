package photo

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	_ "image/jpeg" // a format that is read
	_ "image/png"  // a format that is read
	"io"
	"os"

	"golang.org/x/image/draw"
)

// Bounds of a picture that is read.
const (
	MaxBytes  = 64 << 20
	MaxPixels = 80_000_000
	// MaxShown is the longer side in pixels that is kept in memory of a larger one:
	// more than any screen shows of it.
	MaxShown = 2400
)

// What is wrong with a picture, beside what the system says.
var (
	ErrFormat = errors.New("not a JPEG or PNG picture")
	ErrLarge  = errors.New("the picture is too large")
)

// Picture is a picture as it is looked at.
type Picture struct {
	Image         *image.RGBA
	Width, Height int // px of the whole picture; Image may be smaller
}

// Open reads a picture from a file.
func Open(path string) (Picture, error) {
	f, err := os.Open(path)
	if err != nil {
		return Picture{}, fmt.Errorf("open picture: %w", err)
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return Picture{}, fmt.Errorf("open picture: %w", err)
	}
	if !info.Mode().IsRegular() {
		return Picture{}, fmt.Errorf("open picture %s: %w", path, ErrFormat)
	}
	p, err := Read(f)
	if err != nil {
		return Picture{}, fmt.Errorf("open picture %s: %w", path, err)
	}
	return p, nil
}

// Read reads a picture.
func Read(r io.Reader) (Picture, error) {
	data, err := io.ReadAll(io.LimitReader(r, MaxBytes+1))
	if err != nil {
		return Picture{}, err
	}
	if len(data) > MaxBytes {
		return Picture{}, fmt.Errorf("%w: more than %d MB", ErrLarge, MaxBytes>>20)
	}
	c, _, err := image.DecodeConfig(bytes.NewReader(data))
	if err != nil || c.Width < 1 || c.Height < 1 {
		return Picture{}, ErrFormat
	}
	if c.Height > MaxPixels/c.Width {
		return Picture{}, fmt.Errorf("%w: %d x %d px", ErrLarge, c.Width, c.Height)
	}
	img, _, err := image.Decode(bytes.NewReader(data))
	if err != nil {
		return Picture{}, fmt.Errorf("%w: %w", ErrFormat, err)
	}
	way := orientation(data)
	p := Picture{Image: way.turn(shrunk(img, MaxShown)), Width: c.Width, Height: c.Height}
	if way.lies() {
		p.Width, p.Height = p.Height, p.Width
	}
	return p, nil
}

// shrunk is a picture whose longer side is at most so many pixels.
func shrunk(img image.Image, most int) *image.RGBA {
	size := img.Bounds().Size()
	w, h := size.X, size.Y
	if long := max(w, h); long > most {
		w, h = max(w*most/long, 1), max(h*most/long, 1)
	}
	out := image.NewRGBA(image.Rect(0, 0, w, h))
	if w == size.X {
		draw.Draw(out, out.Rect, img, img.Bounds().Min, draw.Src)
	} else {
		draw.BiLinear.Scale(out, out.Rect, img, img.Bounds(), draw.Src, nil)
	}
	return out
}
