package clip

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

	"homeside/export"
)

// patience is how long ffmpeg may do nothing.
const patience = time.Minute

// WriteMP4 writes a stretch of a play as an MP4 (H.264, 4:2:0, BT.709) that
// starts to play before it is there as a whole. ffmpeg packs it, an
// *FFmpegError if it is not installed or fails; the same ffmpeg on the same
// machine gives the same bytes. Sides must be even. It is made in the folder for
// temporary files and copied to w when it is whole. o may be nil.
func WriteMP4(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	return writeMP4(ctx, w, src, o, patience)
}

func writeMP4(ctx context.Context, w io.Writer, src export.Source, o *export.Options, patience time.Duration) error {
	f, err := newFilm(src, o, "an MP4", export.MaxFPS)
	if err != nil {
		return err
	}
	if err := ctx.Err(); err != nil {
		return err
	}
	if f.o.Width%2 != 0 || f.o.Height%2 != 0 {
		return fmt.Errorf("%d x %d px: the sides of an MP4 must be even, such as %d x %d", f.o.Width, f.o.Height, f.o.Width&^1, f.o.Height&^1)
	}
	folder, err := os.MkdirTemp("", "homeside-mp4-")
	if err != nil {
		return fmt.Errorf("make a folder for the MP4: %w", err)
	}
	defer os.RemoveAll(folder)
	path := filepath.Join(folder, "clip.mp4")
	if err := f.feed(ctx, path, patience); err != nil {
		return err
	}
	return copyFile(export.Writer(ctx, w), path)
}

// x264 are the arguments between the frames and the file.
var x264 = []string{
	"-c:v", "libx264", "-preset", "veryfast", "-crf", "18", "-pix_fmt", "yuv420p", "-movflags", "+faststart",
	"-color_range", "tv", "-colorspace", "bt709", "-color_primaries", "bt709", "-color_trc", "bt709",
	"-map_metadata", "-1", "-fflags", "+bitexact", "-flags:v", "+bitexact",
}

// feed gives the frames to ffmpeg.
func (f *film) feed(ctx context.Context, path string, patience time.Duration) error {
	size := fmt.Sprintf("%dx%d", f.o.Width, f.o.Height)
	args := []string{"-f", "rawvideo", "-pix_fmt", "yuv420p", "-video_size", size, "-framerate", fmt.Sprint(f.o.FPS), "-i", "pipe:0"}
	p, err := startFFmpeg(ctx, patience, append(append(args, x264...), path)...)
	if err != nil {
		return err
	}
	c, planes := f.camera(), newPlanes(f.base)
	for i := 0; i < f.times.Count && ctx.Err() == nil; i++ {
		planes.update(c.frame(i))
		if err := p.write(planes.pix); err != nil {
			break // finish tells why
		}
		f.o.Progress(i+1, f.times.Count)
	}
	return p.finish()
}

func copyFile(w io.Writer, path string) error {
	f, err := os.Open(path)
	if err != nil {
		return fmt.Errorf("read the MP4 back: %w", err)
	}
	defer f.Close()
	if _, err := io.Copy(w, f); err != nil {
		return fmt.Errorf("write the MP4: %w", err)
	}
	return nil
}
