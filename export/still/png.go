package still

import (
	"context"
	"image/png"
	"io"

	"homeside/canvas/raster"
	"homeside/export"
)

// WritePNG writes the moment o.At of a play as a PNG picture. A scene without
// a background gives a transparent one. o may be nil.
func WritePNG(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	m, err := momentOf(ctx, src, o)
	if err != nil {
		return err
	}
	img := raster.NewFrames(m.static).Draw(m.moving)
	return m.written(ctx, "PNG", png.Encode(export.Writer(ctx, w), img))
}
