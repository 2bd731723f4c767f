package app

import (
	"context"
	"errors"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"homeside/words"
)

// progress is the dialog of writing a file.
type progress struct {
	dialog dialog.Dialog
	bar    *widget.ProgressBar
}

func (e *Editor) showProgress(name string, cancel func()) *progress {
	p := &progress{bar: widget.NewProgressBar()}
	p.dialog = dialog.NewCustomWithoutButtons(words.T("Exporting %s", name), container.NewVBox(p.bar, widget.NewButton(words.T("Cancel"), cancel)), e.win)
	p.dialog.Resize(fyne.NewSize(420, 140))
	p.dialog.Show()
	return p
}

// exported ends a dialog of writing a file and says what came of it.
func (e *Editor) exported(path string, err error, p *progress) {
	p.dialog.Hide()
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
