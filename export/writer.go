package export

import (
	"context"
	"io"
)

// Writer is w until ctx is cancelled; from then on it writes nothing and
// returns the context's error. It stops encoders that know no context.
func Writer(ctx context.Context, w io.Writer) io.Writer { return &writer{ctx, w} }

type writer struct {
	ctx context.Context
	w   io.Writer
}

func (w *writer) Write(p []byte) (int, error) {
	if err := w.ctx.Err(); err != nil {
		return 0, err
	}
	return w.w.Write(p)
}
