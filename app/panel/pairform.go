package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/plan"
	"homeside/model/units"
	"homeside/words"
)

// PairForm asks what a pair says of itself: the score in a sentence, names,
// hands, legs, and what it wants from its sides.
type PairForm struct {
	Box     fyne.CanvasObject
	serving *Dropdown // who of the teams serves
	call    *heard.Entry
	lead    *Dropdown // who of the pair serves or receives
	does    *widget.Label
	who     [2]personForm
	goal    *Dropdown
	goals   []goalChoice
	changed func()
	enter   func()
	filling bool
}

// personForm is what is asked of one player.
type personForm struct {
	name  *heard.Entry
	hand  *Dropdown
	legs  *Dropdown
	timed *heard.Entry // seconds over 15 ft; empty leaves it to the legs
}

// NewPairForm is an empty form. changed hears of every change, enter of Enter.
func NewPairForm(changed, enter func()) *PairForm {
	f := &PairForm{changed: changed, enter: enter, does: widget.NewLabel("")}
	f.serving = NewDropdown([]string{words.T("We serve"), words.T("They serve")}, func(string) { f.change() })
	f.serving.Selected = f.serving.Options[0]
	f.call = f.entry("0-0-2")
	f.call.Text = "0-0-2"
	f.lead = NewDropdown(nil, func(string) { f.change() })
	f.goal = NewDropdown(nil, func(string) { f.change() })
	var people []fyne.CanvasObject
	for i := range f.who {
		f.who[i] = f.person(i)
		for _, field := range []struct {
			name string
			of   fyne.CanvasObject
		}{
			{words.T("Name"), f.who[i].name}, {words.T("Paddle hand"), f.who[i].hand}, {words.T("Legs, or age"), f.who[i].legs},
			{words.T("or %s from standing, in s", words.Length(15)), f.who[i].timed},
		} {
			people = append(people, caption(field.name), field.of)
		}
	}
	score := container.New(&flow{}, f.serving, beside(words.T("at")), inWidth(callWidth, f.call), beside(words.T("and")), Roomy(f.lead), f.does)
	goal := container.New(&flow{}, beside(words.T("What do you want from your sides?")), Roomy(f.goal))
	f.Box = container.NewVBox(score, container.New(&fields{}, people...), goal)
	f.relabel()
	return f
}

func caption(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Importance = widget.LowImportance
	l.Truncation = fyne.TextTruncateEllipsis
	return l
}

func (f *PairForm) entry(hint string) *heard.Entry {
	e := heard.NewEntry()
	e.SetPlaceHolder(hint)
	e.OnChanged = func(string) { f.change() }
	e.OnSubmitted = func(string) { f.enter() }
	return e
}

func (f *PairForm) person(i int) personForm {
	p := personForm{name: f.entry(words.Partner(i).Name), timed: f.entry("1.9")}
	p.hand = NewDropdown(words.Hands(), func(string) { f.change() })
	p.hand.Selected = p.hand.Options[0]
	var presets []string
	for _, m := range movement.Presets {
		presets = append(presets, words.PaceName(m))
	}
	p.legs = NewDropdown(presets, func(string) { f.change() })
	p.legs.Selected = presets[presetIndex(movement.DefaultPace())]
	return p
}

// change takes in what was changed: names stand in the choices.
func (f *PairForm) change() {
	if f.filling {
		return
	}
	f.relabel()
	f.changed()
}

// relabel puts the names into the choices and keeps what is chosen.
func (f *PairForm) relabel() {
	f.filling = true
	defer func() { f.filling = false }()
	players, _ := f.players() // a time that is no number is told when the play is written
	l := session.PairStart{Players: players}.Pair().Lesson
	relabel(f.lead, []string{l.NameOf(game.Near1), l.NameOf(game.Near2)}, max(f.lead.SelectedIndex(), 0))
	f.does.SetText(words.T("serves."))
	if f.serving.SelectedIndex() == 1 {
		f.does.SetText(words.T("receives."))
	}
	before := f.chosenGoal()
	f.goals = goalsOf(plan.Pair{Lesson: l, Team: court.Near})
	var options []string
	chosen := 0
	for i, g := range f.goals {
		options = append(options, words.Goal(l, g.goal, g.who))
		if before.goal == g.goal && about(before) == about(g) {
			chosen = i
		}
	}
	relabel(f.goal, options, chosen)
}

func (f *PairForm) chosenGoal() goalChoice {
	if i := f.goal.SelectedIndex(); i >= 0 && i < len(f.goals) {
		return f.goals[i]
	}
	return goalChoice{}
}

// about is the number of the player that a goal is about, 0 for nobody.
func about(g goalChoice) int {
	if g.who == nil {
		return 0
	}
	return g.who.Number()
}

func (f *PairForm) players() (all [2]lesson.Player, err error) {
	for i, w := range f.who {
		all[i] = words.Partner(i)
		if name := shortened(w.name.Text, lesson.MaxName); name != "" {
			all[i].Name, all[i].Initials = name, words.Initials(name)
		}
		all[i].Hand = lesson.Hand(max(w.hand.SelectedIndex(), 0))
		preset := movement.Presets[max(w.legs.SelectedIndex(), 0)]
		pace := preset.Pace
		all[i].Wheelchair = preset.Key == "wheelchair"
		if w.timed.Text != "" {
			var v float64
			if v, err = number(w.timed.Text); err == nil {
				pace, err = pace.Calibrated(movement.Timing{Distance: stopwatchDistance.Metres(), Time: units.Seconds(v)})
			}
			if err != nil {
				return all, err
			}
		}
		if pace != movement.DefaultPace() {
			all[i].Pace = &pace
		}
	}
	return all, nil
}

// Start is what the form says; the error says what of it is no number.
func (f *PairForm) Start() (session.PairStart, error) {
	players, err := f.players()
	g := f.chosenGoal()
	return session.PairStart{
		Players: players, Goal: g.goal, About: about(g), Call: f.call.Text, Returns: f.serving.SelectedIndex() == 1, Lead: max(f.lead.SelectedIndex(), 0) + 1,
	}, err
}
