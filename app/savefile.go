package app

import (
	"context"
	"errors"
	"io"

	"homeside/export"
	"homeside/words"
)

// saveFile writes a small file without holding up the window: a disk may be slow, or
// at the other end of a network. kept says what is as it was if that fails; done is
// called when the file is there, and may be nil.
func (e *Editor) saveFile(path, kept string, write func(io.Writer) error, done func()) {
	e.stoppable(words.T("Saving…"), func(ctx context.Context) error {
		return export.Save(ctx, path, write)
	}, func(err error) {
		switch {
		case errors.Is(err, context.Canceled):
			e.say(words.T("Saving was cancelled."))
			e.trace.say("cancelled %s", path)
		case err != nil:
			e.fail(err, kept)
		default:
			if done != nil {
				done()
			}
			e.say(words.T("Saved %s", path))
			e.trace.say("saved %s", path)
		}
	})
}
