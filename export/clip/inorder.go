package clip

import "context"

// workers make frames side by side; more would not help a machine that also
// runs the window.
const workers = 2

// run is how many pieces in a row a worker makes: a frame is made from the one
// before. It is also how many pieces it may be ahead, whatever the clip's length.
const run = 16

// inOrder makes the pieces 0 to n-1 side by side and hands them to emit in
// order, on the caller's goroutine. Every worker has a maker of its own, which
// gets its runs in order. The
// first error, or cancelling ctx, ends it; all goroutines have ended when it
// returns. A cancelled ctx gives ctx.Err().
func inOrder[T any](ctx context.Context, n int, newMaker func(worker int) func(i int) (T, error), emit func(i int, piece T) error) error {
	working, cancel := context.WithCancelCause(ctx)
	var lanes [workers]chan T
	done := make(chan struct{}, workers)
	for k := range lanes {
		lanes[k] = make(chan T, run)
		go func() {
			defer func() { done <- struct{}{} }()
			if err := fillLane(working, lanes[k], k, n, newMaker(k)); err != nil {
				cancel(err)
			}
		}()
	}
	defer func() {
		for range lanes {
			<-done
		}
	}()
	defer cancel(nil)
	err := drain(working, lanes, n, emit)
	if ctx.Err() != nil {
		return ctx.Err()
	}
	return err
}

// fillLane makes every piece of worker k.
func fillLane[T any](ctx context.Context, lane chan<- T, k, n int, maker func(i int) (T, error)) error {
	for i := k * run; i < n; i = next(i) {
		if ctx.Err() != nil {
			return nil
		}
		piece, err := maker(i)
		if err != nil {
			return err
		}
		select {
		case lane <- piece:
		case <-ctx.Done():
			return nil
		}
	}
	return nil
}

// next is the piece that a worker makes after piece i.
func next(i int) int {
	if i++; i%run == 0 {
		i += (workers - 1) * run
	}
	return i
}

func drain[T any](ctx context.Context, lanes [workers]chan T, n int, emit func(i int, piece T) error) error {
	for i := range n {
		if ctx.Err() != nil {
			return context.Cause(ctx)
		}
		select {
		case piece := <-lanes[i/run%workers]:
			if err := emit(i, piece); err != nil {
				return err
			}
		case <-ctx.Done():
			return context.Cause(ctx)
		}
	}
	return nil
}
