package panel

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// LessonForm asks what holds for a whole lesson: its title, the scoring, the
// ball and the air, and the room around the court.
type LessonForm struct {
	Box    fyne.CanvasObject
	before lesson.Lesson
	title  *heard.Entry
	format *Dropdown
	ball   *Dropdown
	fields []field
}

// field is one figure of the form. An empty entry keeps the default.
type field struct {
	name  string
	entry *heard.Entry
	set   func(*lesson.Lesson, *float64) // nil for the default
}

// NewLessonForm is a form filled in from a lesson.
func NewLessonForm(l lesson.Lesson) *LessonForm {
	f := &LessonForm{before: l, title: heard.NewEntry()}
	f.title.SetText(l.Title)
	names := make([]string, len(game.Formats))
	for i, m := range game.Formats {
		names[i] = words.Format(m)
	}
	f.format = NewDropdown(names, nil)
	f.format.SetSelectedIndex(int(l.Scoring.Format))
	f.ball = NewDropdown(words.Balls(), nil)
	f.ball.SetSelectedIndex(map[bool]int{false: 0, true: 1}[l.Conditions.Indoor])
	f.fields = fieldsOf(l)
	form := container.New(layout.NewFormLayout(),
		widget.NewLabel(words.T("Title")), f.title, widget.NewLabel(words.T("Scoring")), f.format, widget.NewLabel(words.T("Ball")), f.ball)
	for _, v := range f.fields {
		form.Add(widget.NewLabel(v.name))
		form.Add(v.entry)
	}
	f.Box = form
	return f
}

func fieldsOf(l lesson.Lesson) []field {
	said := func(v float64) *float64 { // 0 is the default of all but the temperature
		if v == 0 {
			return nil
		}
		return &v
	}
	zero := func(v *float64) float64 {
		if v == nil {
			return 0
		}
		return *v
	}
	c := l.Conditions
	return []field{
		newField(words.T("Points that win"), "11", said(float64(l.Scoring.To)), func(l *lesson.Lesson, v *float64) { l.Scoring.To = int(zero(v)) }),
		roomField(words.T("Run-off behind the baseline (%s)", words.Measured().Tag()), 8, l.Venue.BehindBaseline, func(l *lesson.Lesson, f units.Feet) { l.Venue.BehindBaseline = f }),
		roomField(words.T("Run-off beside the sideline (%s)", words.Measured().Tag()), 5, l.Venue.BesideSideline, func(l *lesson.Lesson, f units.Feet) { l.Venue.BesideSideline = f }),
		newField(words.T("Height above the sea (m)"), "0", said(float64(c.Altitude)), func(l *lesson.Lesson, v *float64) { l.Conditions.Altitude = units.Metres(zero(v)) }),
		newField(words.T("Temperature (°C)"), words.T("15 at the sea"), c.Temperature, func(l *lesson.Lesson, v *float64) { l.Conditions.Temperature = v }),
		newField(words.T("Wind to the right (m/s)"), "0", said(float64(c.WindX)), func(l *lesson.Lesson, v *float64) { l.Conditions.WindX = units.MetresPerSecond(zero(v)) }),
		newField(words.T("Wind to the far end (m/s)"), "0", said(float64(c.WindY)), func(l *lesson.Lesson, v *float64) { l.Conditions.WindY = units.MetresPerSecond(zero(v)) }),
	}
}

// roomField is a length in the measures chosen; 0 is the default.
func roomField(name string, usual, now units.Feet, set func(*lesson.Lesson, units.Feet)) field {
	var v *float64
	if now != 0 {
		shown := measured(now)
		v = &shown
	}
	f := newField(name, strconv.FormatFloat(measured(usual), 'g', 3, 64), v, nil)
	before := f.entry.Text
	f.set = func(l *lesson.Lesson, v *float64) {
		switch {
		case f.entry.Text == before: // what is only shown rounded stays as it is
			set(l, now)
		case v == nil:
			set(l, 0)
		case words.Measured() == words.Metric:
			set(l, units.Metres(*v).Feet())
		default:
			set(l, units.Feet(*v))
		}
	}
	return f
}

// measured is a length as a figure of the measures chosen, metres to the
// millimetre.
func measured(f units.Feet) float64 {
	if words.Measured() == words.Metric {
		return math.Round(float64(f.Metres())*1000) / 1000
	}
	return float64(f)
}

func newField(name, usual string, v *float64, set func(*lesson.Lesson, *float64)) field {
	e := heard.NewEntry()
	e.SetPlaceHolder(usual)
	if v != nil {
		e.SetText(strconv.FormatFloat(*v, 'g', -1, 64))
	}
	return field{name, e, set}
}

// FocusOn is what takes the keys first.
func (f *LessonForm) FocusOn() fyne.Focusable { return f.title }

// Lesson is the lesson as the form has it, or what is wrong with the form.
func (f *LessonForm) Lesson() (lesson.Lesson, error) {
	l := f.before
	l.Title = shortened(f.title.Text, lesson.MaxTitle)
	l.Scoring.Format = game.Formats[f.format.SelectedIndex()]
	l.Conditions.Indoor = f.ball.SelectedIndex() == 1
	for _, v := range f.fields {
		if strings.TrimSpace(v.entry.Text) == "" {
			v.set(&l, nil)
			continue
		}
		x, err := number(v.entry.Text)
		if err != nil {
			return f.before, fmt.Errorf("%s: %w", v.name, err)
		}
		v.set(&l, &x)
	}
	if problems := lesson.Validate(l); len(problems) > 0 {
		return f.before, fmt.Errorf("%s: %s", strings.TrimPrefix(problems[0].Pointer, "/"), problems[0].Text)
	}
	return l, nil
}
