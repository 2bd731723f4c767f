package drilling

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/looks"
	"homeside/app/panel"
	"homeside/app/session"
	"homeside/canvas/compose"
	"homeside/canvas/raster"
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/lesson"
	"homeside/words"
)

// signalForm is what is set up of a signal drill.
type signalForm struct {
	box                   fyne.CanvasObject
	options               Options
	role, pair, when      *panel.Dropdown
	means                 [len(drill.Meanings{})]*panel.Dropdown
	hands                 [len(drill.Meanings{})]*fynecanvas.Image
	often, fakes, unclear *heard.Entry
	seed                  *heard.Entry
	mix                   *widget.Label // what the match says of how often to switch
}

func newSignalForm(o Options, start func()) *signalForm {
	f := &signalForm{options: o, mix: widget.NewLabel("")}
	f.mix.Wrapping = fyne.TextWrapWord
	p := o.Prefs
	f.role = panel.NewLettingGo([]string{words.T("read the sign and answer it"), words.T("give the sign")}, min(max(p.Int(keptRole), 0), 1), nothing)
	f.when = panel.NewLettingGo([]string{words.T("when they receive"), words.T("when they serve")}, 0, nothing)
	f.pair = panel.NewLettingGo(pairNames(o.Session.Lesson()), 0, func(int) { f.choosePair() })
	f.often, f.fakes, f.unclear = entry(p.StringWithFallback(keptSwitch, usualSwitch), start), entry(p.StringWithFallback(keptFake, usualFake), start), entry(p.StringWithFallback(keptUnclear, usualUnclear), start)
	f.seed = entry(seedOf(p, "signals"), start)
	for i := range f.means {
		f.means[i] = panel.NewLettingGo(meaningNames(), 0, func(at int) { f.mean(drill.Sign(i), lesson.Meaning(at)) })
		f.hands[i] = fynecanvas.NewImageFromImage(nil)
		f.hands[i].SetMinSize(fyne.NewSize(handSide, handSide))
	}
	f.box = f.layOut()
	f.refresh()
	return f
}

func nothing(int) {}

// entry is a field; Enter in it starts the drill.
func entry(text string, start func()) *heard.Entry {
	e := heard.NewEntry()
	e.SetText(text)
	e.OnSubmitted = func(string) { start() }
	return e
}

func meaningNames() []string {
	var all []string
	for m := lesson.Stay; m <= lesson.Fake; m++ {
		all = append(all, words.MeaningName(m))
	}
	return all
}

// handSide is the side of a hand in the form.
const handSide = 88

func (f *signalForm) layOut() fyne.CanvasObject {
	take := heard.NewButton(words.T("Take it from the match"), f.fromTally)
	who := container.New(layout.NewFormLayout(),
		label(words.T("The pair")), f.pair,
		label(words.T("drills")), f.when,
		label(words.T("Its task")), f.role,
		label(words.T("Switches, of 100 stays and switches")), container.NewBorder(nil, nil, nil, take, f.often),
		label(words.T("Fakes, of 100 signs")), f.fakes,
		label(words.T("Hidden signs, of 100")), f.unclear,
		label(words.T("Seed")), f.seed,
	)
	signs := container.New(layout.NewFormLayout())
	for i := range f.means {
		signs.Add(f.hands[i])
		signs.Add(container.NewBorder(bold(words.SignName(drill.Sign(i))), nil, nil, nil, container.NewVBox(f.means[i])))
	}
	right := container.NewVBox(bold(words.T("What your signs mean")), signs, wrapped(words.T("Each meaning has one sign: choosing one swaps two. The lesson keeps them. Unsure, also about a hidden sign, means stay.")))
	left := container.NewVBox(bold(words.T("Signal drill")), who, f.mix, wrapped(words.T("The same seed asks the same signs in the same order; every start takes the next one.")))
	return container.New(columns{}, left, right)
}

func label(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Alignment = fyne.TextAlignTrailing
	return l
}

func bold(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.TextStyle.Bold = true
	return l
}

func wrapped(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Wrapping = fyne.TextWrapWord
	return l
}

// refresh names the pairs and says what their signs mean as the lesson does, and draws
// the hands in the look of now.
func (f *signalForm) refresh() {
	namePairs(f.pair, f.options.Session.Lesson())
	f.showMeanings()
	for i, img := range f.hands {
		img.Image = raster.Scene(compose.Hand(drill.Sign(i), 2*handSide, looks.Now()))
		img.Refresh()
	}
}

// pairNames are a lesson's pairs, by court.End.
func pairNames(l lesson.Lesson) []string {
	return []string{words.PairOf(l, court.Near), words.PairOf(l, court.Far)}
}

// namePairs names the pairs to choose from; the one chosen stays.
func namePairs(d *panel.Dropdown, l lesson.Lesson) {
	at := max(d.SelectedIndex(), 0)
	d.Options = pairNames(l)
	d.Selected = d.Options[at]
	d.Refresh()
}

func (f *signalForm) serves() bool { return f.when.SelectedIndex() == 1 }

func (f *signalForm) team() court.End { return court.End(max(f.pair.SelectedIndex(), 0)) }

// meanings are those that the lesson keeps of the pair chosen.
func (f *signalForm) meanings() drill.Meanings {
	return drill.MeaningsOf(f.options.Session.Lesson().Team(f.team()).Signs)
}

// choosePair takes the meanings of the pair chosen.
func (f *signalForm) choosePair() {
	f.mix.SetText("")
	f.showMeanings()
}

func (f *signalForm) showMeanings() {
	for i, what := range f.meanings() {
		d := f.means[i]
		d.Selected = d.Options[what]
		d.Refresh()
	}
}

// mean gives a sign a meaning in the lesson; the sign that had it takes this one's.
func (f *signalForm) mean(sign drill.Sign, what lesson.Meaning) {
	m := f.meanings()
	m[sign], m[m.SignFor(what)] = what, m[sign]
	f.options.Session.Agree(f.team(), m)
	f.showMeanings()
}

// Why a drill cannot start. They are said by words.T where they come up.
type problem string

func (p problem) Error() string { return string(p) }

// read is the drill as it is set up.
func (f *signalForm) read() (o drill.SignalOptions, err error) {
	o.Role, o.Meanings = drill.Role(max(f.role.SelectedIndex(), 0)), f.meanings()
	for _, e := range []struct {
		from *heard.Entry
		to   *float64
		what string
	}{{f.often, &o.Switch, words.T("Switches")}, {f.fakes, &o.Fake, words.T("Fakes")}, {f.unclear, &o.Unclear, words.T("Hidden signs")}} {
		if *e.to, err = session.ParsePercent(e.from.Text); err != nil {
			return o, problem(words.T("%s: want a number from 0 to 100.", e.what))
		}
	}
	if o.Seed, err = parseSeed(f.seed.Text); err != nil {
		return o, err
	}
	if o.Check() != nil { // the lesson's meanings are sound
		return o, problem(words.T("Fakes and hidden signs make %.0f %% together: at most 100.", 100*(o.Fake+o.Unclear)))
	}
	return o, nil
}

func parseSeed(text string) (uint64, error) {
	seed, err := strconv.ParseUint(strings.TrimSpace(text), 10, 64)
	if err != nil {
		return 0, problem(words.T("Seed: want a whole number, 0 or more."))
	}
	return seed, nil
}

// keep keeps what was set up for the next time.
func (f *signalForm) keep(o drill.SignalOptions) {
	p := f.options.Prefs
	p.SetInt(keptRole, int(o.Role))
	p.SetString(keptSwitch, f.often.Text)
	p.SetString(keptFake, f.fakes.Text)
	p.SetString(keptUnclear, f.unclear.Text)
	keepNextSeed(p, "signals", o.Seed)
}

// fromTally takes how often to switch from the best mix by the match's tally.
func (f *signalForm) fromTally() {
	if !f.serves() {
		f.mix.SetText(words.T("A match's tally tells how often to switch on the own serve only."))
		return
	}
	from := court.Right
	if s, err := newMovements(f.options.Session, f.team(), true).situation(); err == nil {
		from = s.State.From()
	}
	mix, ok := mixOf(f.options.Session.Lesson(), f.team(), from)
	if !ok {
		f.mix.SetText(words.T("The match has too few rallies served from the %v by this pair in which it is noted whether it switched and where the return went.", words.Name(from)))
		return
	}
	f.often.SetText(strconv.FormatFloat(100*mix.Switch, 'f', 0, 64))
	f.mix.SetText(words.T("As the match was counted, serving from the %v it is best to switch in %.0f %% of the rallies.", words.Name(from), 100*mix.Switch))
}
