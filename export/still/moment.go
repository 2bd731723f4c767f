package still

import (
	"cmp"
	"context"
	"fmt"

	"homeside/canvas"
	"homeside/export"
)

// moment is what a still shows: what stands still, and what is drawn over it.
type moment struct {
	options        export.Options
	static, moving *canvas.Scene
}

// momentOf composes the moment o.At of a play. o may be nil.
func momentOf(ctx context.Context, src export.Source, o *export.Options) (moment, error) {
	c, err := o.Checked()
	if err != nil {
		return moment{}, err
	}
	t, err := c.Moment(src)
	if err == nil {
		err = ctx.Err()
	}
	if err != nil {
		return moment{}, err
	}
	src = c.Ground.Of(src)
	return moment{c, c.Ground.Under(src.Static(c.Width, c.Height)), src.Moving(c.Width, c.Height, t)}, nil
}

func (m moment) draw(s canvas.Surface) {
	canvas.Draw(s, m.static)
	canvas.Draw(s, m.moving)
}

func (m moment) title() string { return cmp.Or(m.static.Title, m.moving.Title) }

// written ends an export in a format: its error, or the news that it is done.
func (m moment) written(ctx context.Context, format string, err error) error {
	if err == nil {
		err = ctx.Err()
	}
	if err != nil {
		return fmt.Errorf("write the %s: %w", format, err)
	}
	m.options.Progress(1, 1)
	return nil
}
