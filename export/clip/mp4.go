package clip

import (
	"context"
	"io"

	"homeside/export"
)

// WriteMP4 writes a stretch of a play as an MP4 (H.264, 4:2:0, BT.709) that
// starts to play before it is there as a whole. ffmpeg packs it, an
// *FFmpegError if it is not installed or fails; the same ffmpeg on the same
// machine gives the same bytes. Sides must be even. It is made in the folder for
// temporary files and copied to w when it is whole. o may be nil.
func WriteMP4(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	return writeMP4(ctx, w, src, o, patience)
}

func writeMP4(ctx context.Context, w io.Writer, src export.Source, o *export.Options, wait patient) error {
	f, err := newFilm(src, o, "an MP4", export.MaxFPS)
	if err != nil {
		return err
	}
	return f.pack(ctx, w, recipe{kind: "MP4", ext: ".mp4", even: true, pixels: "yuv420p", args: x264, sound: aac}, wait)
}

// aac are the arguments for what is heard. Players leave out the encoder's
// beginning, as the file tells them to (an edit list).
var aac = []string{"-c:a", "aac", "-b:a", "96k", "-movflags", "+faststart"}

// x264 are the arguments between the frames and the file.
var x264 = []string{"-c:v", "libx264", "-preset", "veryfast", "-crf", "18", "-pix_fmt", "yuv420p", "-movflags", "+faststart"}
