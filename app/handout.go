package app

import (
	"io"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/panel"
	"homeside/export"
	"homeside/export/handout"
	"homeside/model/roster"
	"homeside/words"
)

// pdfExt ends the name of a handout.
const pdfExt = ".pdf"

// handoutForm is what the dialog of handouts asks besides the file.
type handoutForm struct {
	sheet, paper, plays, pairs *panel.Dropdown
	about                      *widget.Label
	of, with                   *widget.Label // before plays and pairs
	roster                     []roster.Pair // the one that is open
}

func newHandoutForm(open []roster.Pair) *handoutForm {
	f := &handoutForm{about: widget.NewLabel(""), of: widget.NewLabel(words.T("Plays")), with: widget.NewLabel(words.T("Pairs")), roster: open}
	f.about.Wrapping = fyne.TextWrapWord
	var sheets, papers []string
	for _, s := range handout.Sheets {
		sheets = append(sheets, s.Title())
	}
	for _, p := range handout.Papers {
		papers = append(papers, p.Title)
	}
	f.plays = panel.NewDropdown([]string{words.T("All plays"), words.T("The play shown")}, nil)
	f.pairs = panel.NewDropdown([]string{words.T("The lesson's two pairs")}, nil)
	if len(open) > 0 {
		f.pairs.Options = append(f.pairs.Options, words.T("The %d pairs of the roster", len(open)))
	}
	f.paper = panel.NewDropdown(papers, nil)
	f.sheet = panel.NewDropdown(sheets, func(string) { f.refresh() })
	f.plays.SetSelectedIndex(0)
	f.pairs.SetSelectedIndex(0)
	f.paper.SetSelectedIndex(0)
	f.sheet.SetSelectedIndex(0)
	return f
}

// chosen is the sheet asked for.
func (f *handoutForm) chosen() handout.Sheet {
	return handout.Sheets[max(f.sheet.SelectedIndex(), 0)]
}

// refresh says what the sheet is for, greys out what it is not made of, and says that.
func (f *handoutForm) refresh() {
	s := f.chosen()
	unused := words.T("It is made of plays: no pairs are chosen for it.")
	if s.Cards {
		unused = words.T("It is made of pairs: no plays are chosen for it.")
	}
	f.about.SetText(s.About() + " " + unused)
	for _, c := range []struct {
		choice *panel.Dropdown
		used   bool
	}{{f.plays, !s.Cards}, {f.pairs, s.Cards}} {
		if c.used {
			c.choice.Enable()
		} else {
			c.choice.Disable()
		}
	}
}

func (f *handoutForm) box() fyne.CanvasObject {
	form := container.New(layout.NewFormLayout(),
		widget.NewLabel(words.T("Sheet")), f.sheet,
		widget.NewLabel(words.T("Paper")), f.paper,
		f.of, f.plays,
		f.with, f.pairs,
	)
	return container.NewVBox(form, f.about)
}

// options are what the form asks; play is the one shown.
func (f *handoutForm) options(play int) *handout.Options {
	o := &handout.Options{Paper: handout.Papers[max(f.paper.SelectedIndex(), 0)]}
	if f.plays.SelectedIndex() == 1 {
		o.Plays = []int{play}
	}
	if f.pairs.SelectedIndex() == 1 {
		o.Pairs = f.roster
	}
	return o
}

// askHandout asks for a sheet, its paper and a file, and prints it into the file.
func (e *Editor) askHandout() {
	f := newHandoutForm(e.pairs.roster.Pairs)
	path := filepath.Join(filepath.Dir(e.suggestedPath()), fileName(e.session.Lesson().Title)+"-"+words.T("handout")+pdfExt)
	e.askPath(words.T("A handout on paper"), words.T("Write PDF"), path, f.box(), func(path string) {
		if !strings.EqualFold(filepath.Ext(path), pdfExt) {
			path += pdfExt
		}
		e.unlessExists(path, "", func() { e.writeHandout(path, f) })
	})
}

// writeHandout runs in the background on a snapshot, with progress and a way to cancel.
func (e *Editor) writeHandout(path string, f *handoutForm) {
	l, sheet, o := e.session.Lesson(), f.chosen(), f.options(e.session.PlayIndex())
	work := e.exports.Work
	ctx, cancel := work.Begin()
	p := e.showProgress(filepath.Base(path), cancel)
	o.Progress = func(done, total int) {
		work.Do(func() { p.bar.SetValue(float64(done) / float64(max(total, 1))) })
	}
	work.Go(func() {
		var result handout.Result
		err := export.Save(ctx, path, func(w io.Writer) (err error) {
			result, err = handout.Write(ctx, w, l, sheet, o)
			return err
		})
		cancel()
		work.Do(func() {
			e.exported(path, err, p)
			if err == nil && len(result.Notes) > 0 {
				e.inform(words.T("The handout is written"), strings.Join(firstLines(result.Notes), "\n"))
			}
		})
	})
}

// firstLines are as many lines as a dialog holds.
func firstLines(lines []string) []string {
	const most = 8
	if len(lines) > most {
		return append(lines[:most:most], "…")
	}
	return lines
}
