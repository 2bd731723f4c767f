package app

import (
	"context"
	"errors"
	"path/filepath"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/panel"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export"
	"homeside/export/formats"
	"homeside/words"
)

// sizes to choose from, by what they are for.
var sizes = []struct {
	name          string
	width, height int
}{
	{words.Text("Phone, 720 x 1280"), 720, 1280},
	{words.Text("Phone, 1080 x 1920"), 1080, 1920},
	{words.Text("Video, 1280 x 720"), 1280, 720},
	{words.Text("Video, 1920 x 1080"), 1920, 1080},
	{words.Text("Square, 1080 x 1080"), 1080, 1080},
}

var rates = []string{"10", "15", "25", "30", "50"}

// sizeFor is the first size that suits a way of seeing.
func sizeFor(seen compose.Sight) int {
	wide := seen.Turn == canvas.Lying || seen.Behind != compose.Nobody
	for i, s := range sizes {
		if wide && s.width > s.height {
			return i
		}
	}
	return 0
}

// exportForm is what the export dialog asks besides the file.
type exportForm struct {
	format, size, rate, speed *panel.Dropdown
}

func newExportForm(seen compose.Sight) *exportForm {
	f := &exportForm{
		format: panel.NewDropdown(nil, nil), size: panel.NewDropdown(nil, nil), rate: panel.NewDropdown(rates, nil), speed: panel.NewDropdown(speedNames(), nil),
	}
	for _, m := range formats.All {
		f.format.Options = append(f.format.Options, words.Said(m.Name))
	}
	for _, s := range sizes {
		f.size.Options = append(f.size.Options, words.Said(s.name))
	}
	f.format.SetSelectedIndex(0)
	f.size.SetSelectedIndex(sizeFor(seen))
	f.speed.SetSelectedIndex(0)
	f.rate.SetSelected("25")
	return f
}

func (f *exportForm) box() fyne.CanvasObject {
	return container.New(layout.NewFormLayout(),
		widget.NewLabel(words.T("Format")), f.format,
		widget.NewLabel(words.T("Size")), f.size,
		widget.NewLabel(words.T("Frames a second (clips)")), f.rate,
		widget.NewLabel(words.T("Speed (clips)")), f.speed,
	)
}

// askExport asks for a file and its form and starts the export. A still shows
// the present moment, a clip the whole play.
func (e *Editor) askExport() {
	r := e.session.Current()
	if r == nil {
		e.say(words.T("There is no play to export."))
		return
	}
	f := newExportForm(e.court.Sight())
	path := filepath.Join(filepath.Dir(e.suggestedPath()), fileName(r.Play.Title)+formats.All[0].Ext)
	e.askPath(words.T("Export the play"), words.T("Export"), path, f.box(), func(path string) {
		if filepath.Ext(path) == "" || f.format.SelectedIndex() > 0 {
			path = strings.TrimSuffix(path, filepath.Ext(path)) + formats.All[f.format.SelectedIndex()].Ext
		}
		if m := formats.All[f.format.SelectedIndex()]; m.Needs != nil && m.Needs() != nil {
			e.fail(m.Needs(), words.T("Nothing was written. The other formats work without it."))
			return
		}
		e.unlessExists(path, "", func() { e.export(path, f) })
	})
}

// export runs in the background on a snapshot, with progress and a way to cancel.
func (e *Editor) export(path string, f *exportForm) {
	src := compose.Of(e.session.Current(), e.session.Lesson().Venue.Surface(), canvas.Upright).Seen(e.court.Sight())
	now := e.session.Now()
	fps, _ := strconv.Atoi(f.rate.Selected)
	size := sizes[f.size.SelectedIndex()]
	ctx, cancel := context.WithCancel(context.Background())
	progress := e.showProgress(filepath.Base(path), cancel)
	o := &export.Options{Width: size.width, Height: size.height, FPS: fps, Speed: speeds[f.speed.SelectedIndex()].rate, At: &now, Progress: progress.set}
	go func() {
		err := formats.Save(ctx, path, src, o)
		cancel()
		fyne.Do(func() { e.exported(path, err, progress) })
	}()
}

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

// progress is the dialog of an export under way.
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

// set is called by the export's own goroutine.
func (p *progress) set(done, total int) {
	fyne.Do(func() {
		p.bar.TextFormatter = func() string { return words.T("%d of %d frames", done, total) }
		p.bar.SetValue(float64(done) / float64(max(total, 1)))
	})
}
