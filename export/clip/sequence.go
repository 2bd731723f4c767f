package clip

import (
	"context"
	"fmt"
	"io"
	"regexp"

	"homeside/export"
)

// pngName is the name of frame i, counted from 1 in the folder.
func pngName(i int) string { return fmt.Sprintf("%06d.png", i+1) }

var pngNames = regexp.MustCompile(`^[0-9]{6}\.png$`)

// OwnPNG says whether a file is named like a frame of FillPNGs.
func OwnPNG(name string) bool { return pngNames.MatchString(name) }

// FillPNGs writes a stretch of a play as numbered PNG pictures, 000001.png and
// so on, as editors of films read them: all colours exactly, the ground as
// transparent as was asked for. o may be nil.
func FillPNGs(ctx context.Context, put export.Put, src export.Source, o *export.Options) error {
	f, err := clearFilm(src, o, "a folder of PNGs", export.MaxFPS)
	if err != nil {
		return err
	}
	newMaker := func(int) func(int) ([]byte, error) {
		m := &pngMaker{f.camera(), newBands(f.base, !f.base.Opaque())}
		return m.png
	}
	return inOrder(ctx, f.times.Count, newMaker, func(i int, file []byte) error {
		err := put(pngName(i), func(w io.Writer) error {
			_, err := w.Write(file)
			return err
		})
		if err != nil {
			return fmt.Errorf("write frame %d: %w", i+1, err)
		}
		f.o.Progress(i+1, f.times.Count)
		return nil
	})
}

// pngMaker makes pictures for one goroutine.
type pngMaker struct {
	*camera
	bands *bands
}

func (m *pngMaker) png(i int) ([]byte, error) {
	img, changed := m.frame(i)
	if err := m.bands.update(img, changed); err != nil {
		return nil, fmt.Errorf("pack frame %d: %w", i+1, err)
	}
	return m.bands.png(), nil
}
