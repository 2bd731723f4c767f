package app

import (
	"context"
	"errors"

	"fyne.io/fyne/v2/widget"

	"homeside/words"
)

// progress is the dialog of writing a file.
type progress struct {
	*question
	bar *widget.ProgressBar
}

func (e *Editor) showProgress(name string, cancel func()) *progress {
	p := &progress{bar: widget.NewProgressBar()}
	p.question = e.askWith(words.T("Exporting %s", name), p.bar, answer{label: words.T("Cancel"), do: cancel}).size(420, 140)
	return p
}

// exported ends a dialog of writing a file and says what came of it.
func (e *Editor) exported(path string, err error, p *progress) {
	p.give(nil)
	switch {
	case errors.Is(err, context.Canceled):
		e.say(words.T("Export cancelled; nothing was written."))
		e.trace.say("cancelled %s", path)
	case err != nil:
		e.fail(err, words.T("Nothing was written. Your lesson is unchanged."))
	default:
		e.say(words.T("Exported %s", path))
		e.trace.say("exported %s", path)
	}
}
