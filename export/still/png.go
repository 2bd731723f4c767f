package still

import (
	"context"
	"fmt"
	"image/png"
	"io"

	"homeside/canvas/raster"
	"homeside/export"
)

// WritePNG writes the moment o.At of a play as a PNG picture. A scene without
// a background gives a transparent one. o may be nil.
func WritePNG(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	c, err := o.Checked()
	if err != nil {
		return err
	}
	t, err := c.Moment(src)
	if err != nil {
		return err
	}
	if err := ctx.Err(); err != nil {
		return err
	}
	img := raster.NewFrames(src.Static(c.Width, c.Height)).Draw(src.Moving(c.Width, c.Height, t))
	if err := png.Encode(export.Writer(ctx, w), img); err != nil {
		return fmt.Errorf("write the PNG: %w", err)
	}
	c.Progress(1, 1)
	return nil
}
