package panel

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/flight"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Shot is the card of the shot in play at the moment shown: its word, its
// figures as sliders that agree with one another, and what follows from them.
type Shot struct {
	Box      *fyne.Container
	session  *session.Session
	title    *widget.Label
	kind     *Dropdown
	meet     *Dropdown
	mean     *heard.Button
	scatter  *heard.Check
	figures  []*figure
	followed int    // the shot last followed
	Resized  func() // called when the card grows or shrinks; nil means nobody asks
	facts    *widget.Label
}

// NewShot is the shot card of a session.
func NewShot(s *session.Session) *Shot {
	p := &Shot{session: s, title: widget.NewLabel(""), facts: widget.NewLabel("")}
	p.title.TextStyle.Bold = true
	p.title.Wrapping = fyne.TextWrapWord
	p.facts.Wrapping = fyne.TextWrapWord
	p.kind = NewDropdown(words.ShotKinds(), nil)
	p.meet = NewDropdown(words.Meets(), nil)
	p.mean = heard.NewButton(words.T("Make this the usual one here"), p.define)
	p.scatter = heard.NewCheck(words.T("Show how it scatters"), nil)
	p.figures = p.newFigures()
	p.Box = container.NewVBox(p.rows()...)
	p.listen()
	return p
}

// rows are what the card shows, from the top down.
func (p *Shot) rows() []fyne.CanvasObject {
	all := []fyne.CanvasObject{p.title, container.New(&namedChoices{}, widget.NewLabel(words.T("Hit as")), p.kind, widget.NewLabel(words.T("Met")), p.meet)}
	for i, f := range p.figures {
		if i == scatterFigures {
			all = append(all, p.mean, p.scatter)
		}
		all = append(all, f.box)
	}
	return append(all, p.facts)
}

// scatterFigures is the first of the figures that belong to the scatter.
const scatterFigures = 3

func (p *Shot) newFigures() []*figure {
	return []*figure{
		p.figure(words.Text("change the top of %s"), 1, 24, 0.25, func(s lesson.Shot, v float64) lesson.Shot {
			s.Intent = lesson.Apex(max(units.Feet(v), p.lowest()))
			return s
		}),
		p.figure(words.Text("change the speed of %s"), 4, 30, 0.25, func(s lesson.Shot, v float64) lesson.Shot {
			s.Intent = lesson.Speed(units.MetresPerSecond(v))
			return s
		}),
		p.figure(words.Text("change the spin of %s"), -1500, 1500, 50, func(s lesson.Shot, v float64) lesson.Shot {
			s.Spin = units.RPM(v)
			return s
		}),
		p.figure(words.Text("change the scatter of the speed of %s"), 0, 3, 0.1, func(s lesson.Shot, v float64) lesson.Shot {
			s.Error = &lesson.AimError{Speed: units.MetresPerSecond(v), Angle: errorOf(s).Angle}
			return s
		}),
		p.figure(words.Text("change the scatter of the direction of %s"), 0, 6, 0.1, func(s lesson.Shot, v float64) lesson.Shot {
			s.Error = &lesson.AimError{Speed: errorOf(s).Speed, Angle: units.Degrees(v)}
			return s
		}),
	}
}

// usualError is the scatter first shown: our assumption of a club player's.
var usualError = lesson.AimError{Speed: 0.5, Angle: 1.5}

func errorOf(s lesson.Shot) lesson.AimError {
	if s.Error == nil {
		return usualError
	}
	return *s.Error
}

func (p *Shot) listen() {
	p.kind.OnChanged = func(string) {
		k := lesson.ShotKind(p.kind.SelectedIndex())
		p.do(words.Text("change how %s is hit"), func(s lesson.Shot) lesson.Shot { return s.Hit(k, p.session.Lesson().Manner(k)) })
	}
	p.meet.OnChanged = func(string) {
		how := lesson.MeetHow(p.meet.SelectedIndex())
		p.do(words.Text("change how %s is met"), func(s lesson.Shot) lesson.Shot {
			s.Meet = lesson.Meet{How: how}
			if how.AtHeight() {
				s.Meet.Height = usualHeight
			}
			return s
		})
	}
	p.scatter.OnChanged = func(on bool) {
		p.do(words.Text("change the scatter of %s"), func(s lesson.Shot) lesson.Shot {
			s.Error = nil
			if on {
				s.Error = &usualError
			}
			return s
		})
	}
}

// usualHeight is where a ball is met that is not met at the top: below the waist.
const usualHeight units.Feet = 2.5

// levelHit is how far above the contact the top of a level shot is.
const levelHit units.Feet = 0.05

// lowest is the lowest top of the shot in play: just above its contact.
func (p *Shot) lowest() units.Feet {
	r := p.session.Current()
	if r == nil {
		return 0
	}
	return r.ContactHeight(p.shot()) + levelHit
}

// define makes the shot's figures what its word means in this lesson.
func (p *Shot) define() {
	if r := p.session.Current(); r != nil {
		p.session.Define(p.shot(), words.T("change what this word means here: %s", words.ShotKinds()[r.Play.Shots[p.shot()].Kind]))
	}
}

// shot is the number of the shot on the card.
func (p *Shot) shot() int {
	if r := p.session.Current(); r != nil {
		return r.ShotAt(p.session.Now())
	}
	return 0
}

// do changes the shot as one step; what is its text with the shot.
func (p *Shot) do(what string, change func(lesson.Shot) lesson.Shot) {
	i := p.shot()
	p.session.PreviewShot(i, change)
	p.session.Commit(words.OfShot(what, i))
}

// Follow shows the shot in play; while playing only when another one begins.
func (p *Shot) Follow(playing bool) {
	i := p.shot()
	if playing && i == p.followed {
		return
	}
	p.followed = i
	p.Refresh()
}

// Refresh shows the shot in play.
func (p *Shot) Refresh() {
	r := p.session.Current()
	if r == nil {
		p.Box.Hide()
		return
	}
	p.Box.Show()
	i := p.shot()
	s, st := r.Play.Shots[i], &r.Strokes[i]
	setText(p.title, words.ShotTitle(r, i))
	choose(p.kind, int(s.Kind))
	choose(p.meet, int(s.Meet.How))
	if p.scatter.Checked != (s.Error != nil) {
		p.scatter.Checked = s.Error != nil
		p.scatter.Refresh()
	}
	p.show(r, i, s, st)
	p.showMeaning(s)
	setText(p.facts, words.ShotFacts(r, i))
}

// showMeaning offers to define the shot's word where its figures differ from it.
func (p *Shot) showMeaning(s lesson.Shot) {
	same := s.Hit(s.Kind, p.session.Lesson().Manner(s.Kind))
	if s.Kind == lesson.OwnShot || s == same {
		p.mean.Hide()
		return
	}
	p.mean.Show()
}

func (p *Shot) show(r *rally.Rally, i int, s lesson.Shot, st *rally.Stroke) {
	top := st.Planned.Apex.State.Height().Feet()
	speed := launchSpeed(st.Planned)
	p.figures[0].show(float64(top), words.T("Top %s (%s)", words.Length(top), words.TimesNet(top, r.NetTop(i))))
	p.figures[1].show(float64(speed), words.T("Speed %.1f m/s (%.0f mph)", float64(speed), speed.MilesPerHour()))
	p.figures[2].show(float64(s.Spin), words.Spin(s.Spin))
	e := errorOf(s)
	p.figures[3].show(float64(e.Speed), words.T("Speed varies by %.1f m/s", float64(e.Speed)))
	p.figures[4].show(float64(e.Angle), words.T("Direction varies by %.1f degrees", float64(e.Angle)))
	shown := p.figures[scatterFigures].box.Visible()
	for _, f := range p.figures[scatterFigures:] {
		f.visible(s.Error != nil)
	}
	if shown != (s.Error != nil) && p.Resized != nil {
		p.Resized()
	}
}

func launchSpeed(p *flight.Path) units.MetresPerSecond { return p.At(0).Speed() }

// figure is a slider with its words.
type figure struct {
	box    *fyne.Container
	label  *widget.Label
	slider *heard.Slider
}

// figure makes a slider whose drag previews a change and whose end makes it a step.
func (p *Shot) figure(what string, lo, hi, step float64, change func(lesson.Shot, float64) lesson.Shot) *figure {
	f := &figure{label: widget.NewLabel(""), slider: heard.NewSlider(lo, hi)}
	f.slider.Step = step
	f.slider.OnChanged = func(v float64) {
		p.session.Pause()
		p.session.PreviewShot(p.shot(), func(s lesson.Shot) lesson.Shot { return change(s, v) })
	}
	f.slider.OnChangeEnded = func(float64) {
		p.session.Commit(words.OfShot(what, p.shot()))
	}
	f.box = container.NewVBox(f.label, f.slider)
	return f
}

// show sets the slider without asking for a change.
func (f *figure) show(v float64, text string) {
	setText(f.label, text)
	v = math.Min(math.Max(v, f.slider.Min), f.slider.Max)
	if f.slider.Value != v {
		f.slider.Value = v
		f.slider.Refresh()
	}
}

func (f *figure) visible(yes bool) {
	if yes {
		f.box.Show()
	} else {
		f.box.Hide()
	}
}

func setText(l *widget.Label, text string) {
	if l.Text != text {
		l.SetText(text)
	}
}

// choose selects an entry without telling anybody; one that is not there, none.
func choose(s *Dropdown, i int) {
	if i < 0 || i >= len(s.Options) {
		return
	}
	if s.Selected != s.Options[i] {
		s.Selected = s.Options[i]
		s.Refresh()
	}
}
