package app

import (
	"context"
	"time"

	"fyne.io/fyne/v2/widget"

	"homeside/words"
)

// patience is how long the window waits for a file before it says so.
const patience = 500 * time.Millisecond

// background is stoppable for work that cannot be stopped in the middle.
func (e *Editor) background(title string, work func() error, done func(error)) {
	e.stoppable(title, func(context.Context) error { return work() }, done)
}

// stoppable works on files without holding up the window, then calls done with
// the outcome. After half a second a dialog says what is under way and lets it
// be cancelled: done then hears context.Canceled, work's context ends, and what
// it still comes to is not heard. One thing is done at a time; what comes meanwhile is refused with
// a line.
func (e *Editor) stoppable(title string, work func(context.Context) error, done func(error)) {
	if e.working {
		e.say(words.T("One moment: a file is still being read or written."))
		e.trace.say("refused: busy")
		return
	}
	e.working = true
	var shown *question
	ended := false
	ctx, cancel := context.WithCancel(context.Background())
	finish := func(err error) {
		if ended {
			return // it was cancelled
		}
		ended, e.working = true, false
		cancel()
		if shown != nil {
			shown.give(nil)
		}
		done(err)
		e.takeDropped()
	}
	out := make(chan error, 1)
	go func() { out <- work(ctx) }()
	go func() {
		select {
		case err := <-out:
			e.inWindow(func() { finish(err) })
			return
		case <-time.After(patience):
		}
		e.inWindow(func() {
			if !ended {
				shown = e.showWorking(title, func() { finish(context.Canceled) })
			}
		})
		err := <-out
		e.inWindow(func() { finish(err) })
	}()
}

// showWorking shows what is under way until it is given an answer.
func (e *Editor) showWorking(title string, cancel func()) *question {
	bar := widget.NewProgressBarInfinite()
	return e.askWith(title, bar, answer{label: words.T("Cancel"), do: cancel})
}
