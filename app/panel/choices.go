package panel

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// anchorChoice is a choice of a moment of a play: its own start or end, then its
// events, and whatever stands there now.
type anchorChoice struct {
	*Dropdown
	own     string           // the play's own start or end; empty where a moment is needed
	anchors []*lesson.Anchor // of the options; nil for the play's own
}

func newAnchorChoice(own string, chosen func(*lesson.Anchor)) *anchorChoice {
	c := &anchorChoice{own: own}
	c.Dropdown = NewDropdown(nil, func(string) {
		if i := c.SelectedIndex(); i >= 0 && i < len(c.anchors) {
			chosen(c.anchors[i])
		}
	})
	return c
}

// show offers the events of a play and chooses a moment.
func (c *anchorChoice) show(p lesson.Play, now *lesson.Anchor) {
	c.anchors = nil
	if c.own != "" {
		c.anchors = append(c.anchors, nil)
	}
	add := func(a lesson.Anchor) { c.anchors = append(c.anchors, &a) }
	for i := range p.Shots {
		add(lesson.At(lesson.ContactOf(i)))
		add(lesson.At(lesson.Event{Shot: i, Moment: lesson.Bounce}))
	}
	add(lesson.At(lesson.TheEnd))
	chosen := slices.IndexFunc(c.anchors, func(a *lesson.Anchor) bool { return a == now || a != nil && now != nil && *a == *now })
	if chosen < 0 && now != nil {
		add(*now)
		chosen = len(c.anchors) - 1
	}
	names := make([]string, len(c.anchors))
	for i, a := range c.anchors {
		names[i] = c.own
		if a != nil {
			names[i] = words.When(*a)
		}
	}
	relabel(c.Dropdown, names, chosen)
}

// speeds that a take is offered.
var takeSpeeds = []float64{1, 0.75, 0.5, 0.35, 0.25, 0.1, 1.5, 2}

// speedChoice is a choice of a speed: some usual ones, and whatever stands there now.
type speedChoice struct {
	*Dropdown
	speeds []float64
}

func newSpeedChoice(chosen func(float64)) *speedChoice {
	c := &speedChoice{}
	c.Dropdown = NewDropdown(nil, func(string) {
		if i := c.SelectedIndex(); i >= 0 && i < len(c.speeds) {
			chosen(c.speeds[i])
		}
	})
	return c
}

func (c *speedChoice) show(now float64) {
	c.speeds = slices.Clone(takeSpeeds)
	if !slices.Contains(c.speeds, now) {
		c.speeds = append(c.speeds, now)
	}
	names := make([]string, len(c.speeds))
	for i, v := range c.speeds {
		if names[i] = words.SpeedTag(v); names[i] == "" {
			names[i] = words.T("match speed")
		}
	}
	relabel(c.Dropdown, names, slices.Index(c.speeds, now))
}

// secondsOf reads a length in seconds within bounds, a comma for a point too.
func secondsOf(text string, least, most units.Seconds) (units.Seconds, error) {
	v, err := strconv.ParseFloat(strings.ReplaceAll(strings.TrimSpace(text), ",", "."), 64)
	if s := units.Seconds(v); err == nil && s >= least && s <= most {
		return s, nil
	}
	return 0, fmt.Errorf("%s", words.T("want %v to %v seconds", float64(least), float64(most)))
}

// secondsText is a length for a field, to hundredths.
func secondsText(s units.Seconds) string {
	return strconv.FormatFloat(math.Round(float64(s)*100)/100, 'f', -1, 64)
}
