package exporting

import (
	"context"
	"errors"
	"path/filepath"
	"strings"
	"time"

	"fyne.io/fyne/v2"

	"homeside/words"
)

// job is an export under way.
type job struct {
	path   string
	cancel context.CancelFunc
	begun  time.Time
	told   time.Time // when the bar was moved last
	notes  []string  // of what the file lacks, said at the end
}

// Busy says whether an export is under way.
func (g *Page) Busy() bool { return g.job != nil }

// ask exports to the path of the field, after a yes if a file is there.
func (g *Page) ask() {
	if g.job != nil || !g.ready || g.export.Disabled() || g.path.Text == "" {
		return
	}
	path := g.withExt(g.path.Text)
	g.path.SetText(path)
	g.events.Unless(path, func() { g.start(path) })
}

// start exports in the background on a snapshot.
func (g *Page) start(path string) {
	g.unmeasure()
	o, s := g.chosenOutput(), g.subject
	opt := g.choice.options(o, s)
	ctx, cancel := g.Work.Begin()
	j := &job{path: path, cancel: cancel, begun: time.Now()}
	g.job = j
	opt.Progress = func(done, total int) { g.Work.Do(func() { g.progress(j, done, total) }) }
	opt.Note = func(note string) { g.Work.Do(func() { j.notes = append(j.notes, note) }) }
	opt.Lacks = func(letters []rune) { opt.Note(words.Lacks(letters)) }
	g.folder = filepath.Dir(path)
	g.prefs.SetString(keptFolder, g.folder)
	g.say(words.T("Exporting %s", filepath.Base(path)))
	g.bar.SetValue(0)
	g.bar.TextFormatter = func() string { return "" }
	g.running(true)
	g.Work.Go(func() {
		err := o.Save(ctx, path, s, opt)
		cancel()
		g.Work.Do(func() { g.done(j, err) })
	})
	g.events.Trace("exporting %s", path)
}

// running shows the controls of an export under way, or those of none.
func (g *Page) running(yes bool) {
	visible(g.bar, yes)
	g.export.Unless(g.hindered())
	w := fyne.CurrentApp().Driver().CanvasForObject(g.cancel)
	if !yes && w != nil && w.Focused() == g.cancel {
		w.Focus(g.export) // whoever works by keys goes on there
	}
	visible(g.cancel, yes)
	if yes {
		g.show.Hide()
	}
	g.pulse.Refresh()
}

// oftenEnough is how often the bar moves: it would slow down what it tells of.
const oftenEnough = 100 * time.Millisecond

// surely is after how long the time left is told: what a file begins with takes longer.
const surely = 2 * time.Second

func (g *Page) progress(j *job, done, total int) {
	now := time.Now()
	if g.job != j || total < 1 || done < total && now.Sub(j.told) < oftenEnough {
		return
	}
	first := j.told.IsZero()
	j.told = now
	gone := now.Sub(j.begun)
	left := gone * time.Duration(total-done) / time.Duration(max(done, 1))
	g.bar.TextFormatter = func() string {
		if gone < surely || done < 1 {
			return words.T("%d of %d", done, total)
		}
		return words.ExportProgress(done, total, left.Seconds())
	}
	g.bar.SetValue(float64(done) / float64(total))
	if first {
		g.events.Trace("export runs %d of %d", done, total)
	}
}

// stop cancels the export under way.
func (g *Page) stop() {
	if g.job != nil {
		g.job.cancel()
	}
}

func (g *Page) done(j *job, err error) {
	if g.job != j {
		return
	}
	g.job = nil
	g.running(false)
	if err != nil && g.estimate.Text == "" { // it may be tried again
		g.remeasure()
	}
	switch {
	case errors.Is(err, context.Canceled):
		g.say(words.T("Export cancelled; nothing was written."))
		g.events.Trace("cancelled %s", j.path)
	case err != nil:
		g.say("")
		g.events.Fail(err)
	default:
		g.written = j.path
		g.say(strings.Join(append([]string{words.T("Exported %s", j.path)}, j.notes...), "\n"))
		g.show.Show()
		g.events.Trace("exported %s", j.path)
	}
	g.pulse.Refresh()
}

// showFolder opens the folder of what was written last.
func (g *Page) showFolder() {
	if err := g.events.Show(filepath.Dir(g.written)); err != nil {
		g.say(words.Sentence(err))
	}
}
