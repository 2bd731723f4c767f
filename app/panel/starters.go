package panel

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/canvas/compose"
	"homeside/model/game"
	"homeside/model/units"
	"homeside/words"
)

// starters compares the two starting servers of a pair and shows the time to
// spare in each situation, as sentences and as bars.
type starters struct {
	box     fyne.CanvasObject
	say     *widget.Label
	spare   *widget.Label
	compare *chart
	margins *chart
}

func newStarters() *starters {
	s := &starters{say: wrapped(), spare: wrapped(), compare: newChart(), margins: newChart()}
	s.spare.SetText(words.T("Time to spare at the worst deadline of each situation, at full effort. Below 0 somebody is late."))
	left := container.NewVBox(s.say, s.compare.Raster)
	right := container.NewVBox(s.spare, s.margins.Raster)
	s.box = container.NewVScroll(container.NewGridWithColumns(2, left, right))
	return s
}

func (s *starters) show(m session.MatchPlan) {
	if len(m.Rows) == 0 {
		s.say.SetText("")
		s.compare.show(compose.BarChart{})
		s.margins.show(compose.BarChart{})
		return
	}
	one, two := m.Pair.Player(1), m.Pair.Player(2)
	s.say.SetText(words.Starter(m.Starters[0], one) + "\n" + words.Starter(m.Starters[1], two) + "\n" + words.BetterStarter(m.Starters))
	s.compare.show(startersChart(m))
	s.margins.show(marginsChart(m))
}

// startersChart sets the two starters side by side.
func startersChart(m session.MatchPlan) compose.BarChart {
	l := m.Pair.Lesson
	section := func(title, format string, value func(i int) float64) compose.BarSection {
		sec := compose.BarSection{Title: title}
		for i := range m.Starters {
			v := value(i)
			sec.Bars = append(sec.Bars, compose.Bar{Label: starts(m, i), Value: v, Text: fmt.Sprintf(format, v), Other: i == 1})
		}
		return sec
	}
	c := compose.BarChart{Title: words.T("The two starters"), Sections: []compose.BarSection{
		section(words.T("Chance to win"), "%.1f %%", func(i int) float64 { return 100 * m.Starters[i].Win }),
		section(words.T("Stacks in a game"), "%.2f", func(i int) float64 { return m.Starters[i].Stacks }),
	}}
	for number := range 2 {
		title := words.T("What %s runs in a game", l.NameOf(m.Pair.Player(number+1)))
		c.Sections = append(c.Sections, distances(title, m, number))
	}
	return c
}

// distances is what a partner runs in a game, by who starts.
func distances(title string, m session.MatchPlan, number int) compose.BarSection {
	sec := compose.BarSection{Title: title}
	for i := range m.Starters {
		f := m.Starters[i].Feet[number]
		sec.Bars = append(sec.Bars, compose.Bar{Label: starts(m, i), Value: float64(f), Text: words.Distance(f), Other: i == 1})
	}
	return sec
}

// starts is the label of the bar of a starting server.
func starts(m session.MatchPlan, i int) string {
	return words.T("%s starts", clipped(m.Pair.Lesson.NameOf(m.Pair.Player(i+1))))
}

// marginsChart shows the time to spare row by row, serving first. A row whose
// margin nobody knows has no bar.
func marginsChart(m session.MatchPlan) compose.BarChart {
	c := compose.BarChart{Title: words.T("Time to spare"), OneScale: true, Sections: []compose.BarSection{{Title: words.T("Serving")}, {Title: words.T("Receiving")}}}
	for _, r := range m.Rows {
		at := &c.Sections[1]
		if r.Serving {
			at = &c.Sections[0]
		}
		label := fmt.Sprintf("%s, %s: %s", words.Parity(r.Score), nameAndSide(m, r.Lead, words.Name(r.From)), words.Formation(r.Formation))
		at.Bars = append(at.Bars, compose.Bar{Label: label, Value: secondsOr0(r.Margin), Text: words.PlanMargin(r)})
	}
	return c
}

func nameAndSide(m session.MatchPlan, who game.Player, side string) string {
	return clipped(m.Pair.Lesson.NameOf(who)) + " " + side
}

// clipped keeps a long name from pushing what stands beside it out of the window.
func clipped(name string) string {
	const most = 20
	if r := []rune(name); len(r) > most {
		return string(r[:most-1]) + "…"
	}
	return name
}

func secondsOr0(t *units.Seconds) float64 {
	if t == nil {
		return 0
	}
	return float64(*t)
}
