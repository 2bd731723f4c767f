package exporting

import (
	"context"
	"sync"
	"time"

	"fyne.io/fyne/v2"
)

// Work is what is written and measured in the background. All of it ends before
// the program does: a file half written, and an ffmpeg, would outlive it.
type Work struct {
	life context.Context
	stop context.CancelFunc
	busy sync.WaitGroup
}

func newWork() *Work {
	w := &Work{}
	w.life, w.stop = context.WithCancel(context.Background())
	return w
}

// Begin is a context for a piece of work.
func (w *Work) Begin() (context.Context, context.CancelFunc) { return context.WithCancel(w.life) }

// Go does a piece of work.
func (w *Work) Go(f func()) { w.busy.Go(f) }

// Do has the window do something, if there still is one.
func (w *Work) Do(f func()) {
	if w.life.Err() == nil {
		fyne.Do(f)
	}
}

// Wait waits until all that was begun has ended, for tests.
func (w *Work) Wait() { w.busy.Wait() }

// endPatience is how long the end of the program waits for work that is cancelled:
// a disk may have gone away.
const endPatience = 10 * time.Second

// End cancels all work and waits until nothing of it is left.
func (w *Work) End() {
	w.stop()
	gone := make(chan struct{})
	go func() {
		w.busy.Wait()
		close(gone)
	}()
	select {
	case <-gone:
	case <-time.After(endPatience):
	}
}
