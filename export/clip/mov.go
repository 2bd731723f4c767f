package clip

import (
	"context"
	"io"

	"homeside/export"
)

// WriteMOV writes a stretch of a play as a QuickTime file of ProRes 4444, which
// editors of films cut and lay over footage: 10 bits, all colour samples, BT.709,
// with a straight alpha channel if the ground is clear. For what else it promises
// see WriteMP4.
func WriteMOV(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	return writeMOV(ctx, w, src, o, patience)
}

func writeMOV(ctx context.Context, w io.Writer, src export.Source, o *export.Options, wait patient) error {
	f, err := clearFilm(src, o, "a ProRes clip", export.MaxFPS)
	if err != nil {
		return err
	}
	pixels := "yuv444p10le"
	if !f.base.Opaque() {
		pixels = "yuva444p10le"
	}
	return f.pack(ctx, w, recipe{kind: "ProRes", ext: ".mov", even: true, pixels: pixels, args: append([]string{"-pix_fmt", pixels}, prores...)}, wait)
}

// prores are the arguments between the frames and the file.
// The encoder takes the colours from the frames, not from its options.
var prores = []string{
	"-c:v", "prores_aw", "-profile:v", "4", "-vendor", "apl0", "-threads", "2", "-movflags", "+faststart+write_colr",
	"-vf", "setparams=range=tv:color_primaries=bt709:color_trc=bt709:colorspace=bt709",
}
