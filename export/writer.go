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

// piece is how much is copied before ctx is looked at again.
const piece = 4 << 20

// ReadFrom copies r. From a file to a file the system may do it by itself.
func (w *writer) ReadFrom(r io.Reader) (n int64, err error) {
	for {
		if err := w.ctx.Err(); err != nil {
			return n, err
		}
		k, err := io.CopyN(w.w, r, piece)
		if n += k; err == io.EOF {
			return n, nil
		} else if err != nil {
			return n, err
		}
	}
}
