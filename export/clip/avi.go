package clip

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"sync"

	"github.com/icza/mjpeg"

	"homeside/export"
)

// maxAVI is how long an AVI may be in bytes: many players take lengths for
// signed numbers of 32 bits.
const maxAVI = 2_000_000_000

// aviPerFrame is what a frame needs besides its JPEG: a chunk's head, a byte of
// padding, and an entry of the index.
const aviPerFrame = 8 + 1 + 16

// WriteAVI writes a stretch of a play as an AVI of JPEG frames (Motion JPEG),
// which every player and editor of films reads, with a quarter of the colour
// samples unless FullColour is asked for. It is made in the folder for
// temporary files (see Options.Scratch) and copied to w when it is whole. o may be nil.
func WriteAVI(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	f, err := newFilm(src, o, "an AVI", export.MaxFPS)
	if err != nil {
		return err
	}
	first, err := f.foresee(ctx)
	if err != nil {
		return err
	}
	folder, err := os.MkdirTemp(f.o.Scratch, ".homeside-avi-")
	if err != nil {
		return fmt.Errorf("make a folder for the AVI: %w", err)
	}
	defer os.RemoveAll(folder)
	path := filepath.Join(folder, "clip.avi")
	if err := f.writeFrames(ctx, path, first); err != nil {
		return err
	}
	return copyAVI(w, path)
}

// foresee sees whether the file will be too long, and gives a maker with the
// codes that suit the first frame.
func (f *film) foresee(ctx context.Context) (*jpegMaker, error) {
	m := newJPEGMaker(f, &usual).suited()
	if int64(f.times.Count)*int64(m.raw()+aviPerFrame) <= maxAVI {
		return m, ctx.Err()
	}
	largest, last := 0, f.times.Count-1
	for _, i := range []int{last, last / 2, 0} {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		largest = max(largest, len(m.jpeg(nil, i)))
	}
	return m, checkLength(int64(f.times.Count) * int64(largest+aviPerFrame))
}

func checkLength(size int64) error {
	if size <= maxAVI {
		return nil
	}
	return fmt.Errorf("the AVI would have about %.1f GB and can have %.0f: choose a smaller picture, fewer frames a second or a shorter stretch", float64(size)/1e9, maxAVI/1e9)
}

func (f *film) writeFrames(ctx context.Context, path string, first *jpegMaker) error {
	avi, err := mjpeg.New(path, int32(f.o.Width), int32(f.o.Height), int32(f.o.FPS))
	if err != nil {
		return fmt.Errorf("begin the AVI: %w", err)
	}
	size, spent := int64(0), sync.Pool{New: func() any { return new([]byte) }}
	newMaker := func(worker int) func(int) (*[]byte, error) {
		m := first
		if worker > 0 {
			m = newJPEGMaker(f, first.tables)
		}
		return func(i int) (*[]byte, error) {
			frame := spent.Get().(*[]byte)
			*frame = m.jpeg((*frame)[:0], i)
			return frame, nil
		}
	}
	err = inOrder(ctx, f.times.Count, newMaker, func(i int, frame *[]byte) error {
		size += int64(len(*frame) + aviPerFrame)
		if err := checkLength(size); err != nil {
			return err
		}
		if err := avi.AddFrame(*frame); err != nil {
			return fmt.Errorf("write frame %d of the AVI: %w", i+1, err)
		}
		spent.Put(frame)
		f.o.Progress(i+1, f.times.Count)
		return nil
	})
	if closing := avi.Close(); err == nil && closing != nil {
		err = fmt.Errorf("finish the AVI: %w", closing)
	}
	return err
}

// jpegMaker makes JPEGs for one goroutine.
type jpegMaker struct {
	*camera
	*stills
}

func newJPEGMaker(f *film, t *tables) *jpegMaker {
	return &jpegMaker{f.camera(), newStills(f.o.Width, f.o.Height, f.o.FullColour, t)}
}

// jpeg adds frame i to out.
func (m *jpegMaker) jpeg(out []byte, i int) []byte {
	img, changed := m.frame(i)
	return m.next(out, img, changed)
}

// suited is a maker in place of m with the codes that suit the first frame.
func (m *jpegMaker) suited() *jpegMaker {
	img, _ := m.frame(0)
	return &jpegMaker{m.camera, newStills(m.width, m.height, m.full, m.suiting(img))}
}
