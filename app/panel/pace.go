package panel

import (
	"fmt"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
	"homeside/words"
)

// Pace is the part of the player card that says how fast somebody moves: a
// preset, a top speed in the unit one likes, or a stopwatch time; and what it
// means on court.
type Pace struct {
	Box     *fyne.Container
	session *session.Session
	preset  *Dropdown
	speed   *commitEntry
	unit    *Dropdown
	timed   *commitEntry
	means   *widget.Label
}

// speedUnits are the units a top speed can be read and typed in.
var speedUnits = []struct {
	name string
	of   func(units.MetresPerSecond) float64
	to   func(float64) units.MetresPerSecond
}{
	{"m/s", func(v units.MetresPerSecond) float64 { return float64(v) }, func(v float64) units.MetresPerSecond { return units.MetresPerSecond(v) }},
	{"ft/s", units.MetresPerSecond.FeetPerSecond, units.FeetPerSecond},
	{"mph", units.MetresPerSecond.MilesPerHour, units.MilesPerHour},
}

// ownPace is the choice of a pace that is no preset.
func ownPace() string { return words.T("Own figures") }

// NewPace is the pace part of a session's player card.
func NewPace(s *session.Session) *Pace {
	p := &Pace{session: s, means: widget.NewLabel("")}
	p.means.Wrapping = fyne.TextWrapWord
	options := make([]string, 0, len(movement.Presets)+1)
	for _, m := range movement.Presets {
		options = append(options, words.Pace(m.Name))
	}
	p.preset = NewDropdown(append(options, ownPace()), nil)
	p.preset.OnChanged = func(string) { p.usePreset(p.preset.SelectedIndex()) }
	p.speed = newCommitEntry(p.useSpeed)
	p.unit = NewDropdown([]string{speedUnits[0].name, speedUnits[1].name, speedUnits[2].name}, func(string) { p.Refresh() })
	p.unit.Selected, p.unit.PlaceHolder = speedUnits[0].name, "" // one is always chosen
	p.timed = newCommitEntry(p.useTime)
	p.timed.SetPlaceHolder("1.9")
	p.Box = container.NewVBox(
		container.New(&namedChoices{},
			widget.NewLabel(words.T("Pace")), p.preset,
			widget.NewLabel(words.T("Top speed")), container.NewBorder(nil, nil, nil, Roomy(p.unit), p.speed),
			widget.NewLabel(words.T("%s took (s)", words.Length(15))), p.timed,
		),
		p.means,
	)
	return p
}

func (p *Pace) change(pace movement.Pace) {
	id := p.session.Selected()
	p.session.ChangePlayer(words.T("change the pace of %s", p.session.Lesson().NameOf(id)), id, func(w lesson.Player) lesson.Player {
		if w.Legs() != pace {
			w.Pace = &pace
		}
		return w
	})
}

func (p *Pace) usePreset(i int) {
	if i >= 0 && i < len(movement.Presets) {
		p.change(movement.Presets[i].Pace)
	}
}

// useSpeed takes a typed top speed in the chosen unit.
func (p *Pace) useSpeed(text string) {
	v, err := number(text)
	pace := p.legs()
	pace.TopSpeed = speedUnits[p.unitIndex()].to(v)
	if err == nil {
		err = pace.Validate()
	}
	if err != nil {
		p.means.SetText(words.Refused(err))
		return
	}
	p.change(pace)
}

// stopwatchDistance is the distance that is timed: from the baseline to the kitchen line.
const stopwatchDistance units.Feet = 15

// useTime takes a stopwatch time over 15 ft, run through from standing.
func (p *Pace) useTime(text string) {
	if text == "" {
		return
	}
	v, err := number(text)
	var pace movement.Pace
	if err == nil {
		pace, err = p.legs().Calibrated(movement.Timing{Distance: stopwatchDistance.Metres(), Time: units.Seconds(v)})
	}
	if err != nil {
		p.means.SetText(words.Refused(err))
		return
	}
	p.change(pace)
}

func number(text string) (float64, error) {
	v, err := strconv.ParseFloat(strings.ReplaceAll(strings.TrimSpace(text), ",", "."), 64)
	if err != nil {
		return 0, fmt.Errorf("%q is not a number", text)
	}
	return v, nil
}

func (p *Pace) unitIndex() int { return max(p.unit.SelectedIndex(), 0) }

func (p *Pace) legs() movement.Pace { return p.session.Lesson().Player(p.session.Selected()).Legs() }

// Refresh shows the selected player's pace.
func (p *Pace) Refresh() {
	pace := p.legs()
	choose(p.preset, presetIndex(pace))
	p.speed.show(strconv.FormatFloat(speedUnits[p.unitIndex()].of(pace.TopSpeed), 'f', 1, 64))
	setText(p.means, words.PaceMeans(pace))
}

// presetIndex is the preset that a pace is, or the choice after them.
func presetIndex(pace movement.Pace) int {
	for i, m := range movement.Presets {
		if m.Pace == pace {
			return i
		}
	}
	return len(movement.Presets)
}
