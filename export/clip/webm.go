package clip

import (
	"context"
	"io"

	"homeside/export"
)

// WriteWebM writes a stretch of a play as a WebM (VP9, 4:2:0, BT.709), with an
// alpha channel if the ground is clear: browsers and editors of films then show
// what is under it, and it is silent, for the footage has its own sound. For what else it promises see WriteMP4.
func WriteWebM(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	return writeWebM(ctx, w, src, o, patience)
}

func writeWebM(ctx context.Context, w io.Writer, src export.Source, o *export.Options, wait patient) error {
	f, err := clearFilm(src, o, "a WebM", export.MaxFPS)
	if err != nil {
		return err
	}
	pixels, sound := "yuv420p", opus
	if !f.base.Opaque() {
		pixels, sound = "yuva420p", nil
	}
	return f.pack(ctx, w, recipe{kind: "WebM", ext: ".webm", even: true, pixels: pixels, args: append([]string{"-pix_fmt", pixels}, vp9...), sound: sound}, wait)
}

// opus are the arguments for what is heard. The encoder's beginning is as short
// as it can be (2.5 ms): an ffmpeg that does not add it to the times of what is
// heard (5.1) is early by no more.
var opus = []string{"-c:a", "libopus", "-application", "lowdelay", "-b:a", "64k"}

// vp9 are the arguments between the frames and the file. A frame that is kept
// back for later ones would lose the alpha channel (libvpx).
var vp9 = []string{
	"-c:v", "libvpx-vp9", "-deadline", "realtime", "-cpu-used", "5", "-row-mt", "1", "-threads", "2",
	"-crf", "18", "-b:v", "0", "-auto-alt-ref", "0",
}
