package clip

import (
	"context"
	"fmt"
	"image"
	"io"
	"os"
	"path/filepath"
	"strings"
	"time"

	"homeside/canvas/raster"
	"homeside/export"
)

// patient is how long ffmpeg may do nothing.
type patient = time.Duration

const patience = time.Minute

// recipe is how ffmpeg packs frames into a file of a kind.
type recipe struct {
	kind   string // "MP4"
	ext    string
	even   bool // both sides must be even
	pixels string
	args   []string // between the frames and the file
	sound  []string // arguments for what is heard; nil for a clip that is silent
}

// always are arguments of every recipe: the colours of what it is fed with, and
// nothing of the machine or the clock.
var always = []string{
	"-color_range", "tv", "-colorspace", "bt709", "-color_primaries", "bt709", "-color_trc", "bt709",
	"-map_metadata", "-1", "-fflags", "+bitexact", "-flags", "+bitexact",
}

// feed is a frame in the form that ffmpeg is fed with.
type feed interface {
	update(img *image.RGBA, changed *raster.Tiles) // takes over the tiles that changed
	bytes() []byte                                 // the frame; lent until the next update
}

func newFeed(pixels string, img *image.RGBA) feed {
	all := raster.NewTiles(img.Rect.Dx(), img.Rect.Dy())
	all.Fill()
	var f feed
	switch clear := strings.HasPrefix(pixels, "yuva"); {
	case strings.HasSuffix(pixels, "10le"):
		f = newDeep(img.Rect.Dx(), img.Rect.Dy(), clear)
	default:
		f = newPlanes(img.Rect.Dx(), img.Rect.Dy(), clear)
	}
	f.update(img, all)
	return f
}

// pack makes the clip with ffmpeg in the folder for temporary files and copies
// it to w when it is whole.
func (f *film) pack(ctx context.Context, w io.Writer, r recipe, wait patient) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	if r.even && (f.o.Width%2 != 0 || f.o.Height%2 != 0) {
		return &export.EvenError{Width: f.o.Width, Height: f.o.Height, Of: r.kind}
	}
	folder, err := os.MkdirTemp(f.o.Scratch, ".homeside-"+r.ext[1:]+"-")
	if err != nil {
		return fmt.Errorf("make a folder for the %s: %w", r.kind, err)
	}
	defer os.RemoveAll(folder)
	path := filepath.Join(folder, "clip"+r.ext)
	track, err := f.track(ctx, folder, r)
	if err != nil {
		return err
	}
	if err := f.feed(ctx, path, r, wait); err != nil {
		return err
	}
	if path, err = addTrack(ctx, path, track, r, wait); err != nil {
		return err
	}
	return copyFile(w, path, r.kind)
}

// feed gives the frames to ffmpeg.
func (f *film) feed(ctx context.Context, path string, r recipe, wait patient) error {
	p, err := startFFmpeg(ctx, wait, f.args(path, r)...)
	if err != nil {
		return err
	}
	c, now := f.camera(), newFeed(r.pixels, f.base)
	for i := 0; i < f.times.Count && ctx.Err() == nil; i++ {
		now.update(c.frame(i))
		if err := p.write(now.bytes()); err != nil {
			break // finish tells why
		}
		f.o.Progress(i+1, f.times.Count)
	}
	return p.finish()
}

// args are all arguments of ffmpeg but its first.
func (f *film) args(path string, r recipe) []string {
	size := fmt.Sprintf("%dx%d", f.o.Width, f.o.Height)
	args := []string{"-f", "rawvideo", "-pix_fmt", r.pixels, "-video_size", size, "-framerate", fmt.Sprint(f.o.FPS), "-i", "pipe:0"}
	return append(append(append(args, r.args...), always...), path)
}

func copyFile(w io.Writer, path, kind string) error {
	f, err := os.Open(path)
	if err != nil {
		return fmt.Errorf("read the %s back: %w", kind, err)
	}
	defer f.Close()
	if _, err := io.Copy(w, f); err != nil {
		return fmt.Errorf("write the %s: %w", kind, err)
	}
	return nil
}
