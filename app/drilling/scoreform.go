package drilling

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/words"
)

// scoreForm is what is set up of a score drill.
type scoreForm struct {
	box     fyne.CanvasObject
	options Options
	pair    *panel.Dropdown
	seed    *heard.Entry
	about   *widget.Label // the lesson's scoring, who started
}

func newScoreForm(o Options, start func()) *scoreForm {
	f := &scoreForm{options: o, about: wrapped("")}
	f.pair = panel.NewLettingGo(pairNames(o.Session.Lesson()), 0, nothing)
	f.seed = entry(seedOf(o.Prefs, "scores"), start)
	who := container.New(layout.NewFormLayout(), label(words.T("The pair")), f.pair, label(words.T("Seed")), f.seed)
	left := container.NewVBox(bold(words.T("Score drill")), who, f.about, wrapped(words.T("The same seed asks the same scores in the same order; every start takes the next one.")))
	right := container.NewVBox(bold(words.T("What is asked")),
		wrapped(words.T("A call is shown and what led to it. Who serves, and who of the pair stands on the right, facing the net? Then the court shows everybody's place, and why.")))
	f.box = container.New(columns{}, left, right)
	f.refresh()
	return f
}

// refresh says what the lesson says of now.
func (f *scoreForm) refresh() {
	l := f.options.Session.Lesson()
	namePairs(f.pair, l)
	f.about.SetText(words.DrillScoring(l))
}

// read is the drill as it is set up.
func (f *scoreForm) read() (drill.ScoreOptions, error) {
	seed, err := parseSeed(f.seed.Text)
	l := f.options.Session.Lesson()
	set := l.Settings()
	return drill.ScoreOptions{Settings: set, Team: court.End(max(f.pair.SelectedIndex(), 0)), Seed: seed}, err
}
