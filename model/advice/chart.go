package advice

import (
	"homeside/model/flight"
	"homeside/model/units"
)

// Chart is the margin of a returner against the return's depth and apex.
type Chart struct {
	Depths []units.Feet      // rows: how far inside the baseline the return lands
	Apexes []units.Feet      // columns: its greatest height
	Margin [][]units.Seconds // to stand at the target when the third arrives; 0 where there is no such return
	Reason [][]flight.Reason // why there is none; Possible where there is
	Line   []Spot            // where the returner is just set, a spot for each depth that has one
}

// Spot is a return by its depth and apex.
type Spot struct{ Depth, Apex units.Feet }

// The chart where nothing else is asked for: 60 depths, 3 in apart from 3 in to
// 15 ft, and 40 heights, 6 in apart from 4.5 to 24 ft.
const (
	chartDepths                = 60
	chartApexes                = 40
	depthApart      units.Feet = 0.25
	apexApart       units.Feet = 0.5
	chartLowestApex units.Feet = 4.5
)

// Chart is the chart over depths and apexes, each growing; nil is 60 by 40 of the
// usual ones. The error is a pace out of range.
func (a Advisor) Chart(depths, apexes []units.Feet) (Chart, error) {
	n, err := a.Needs()
	if err != nil {
		return Chart{}, err
	}
	if depths == nil {
		depths = ladder(depthApart, depthApart, chartDepths)
	}
	if apexes == nil {
		apexes = ladder(chartLowestApex, apexApart, chartApexes)
	}
	heights := make([]units.Metres, len(apexes))
	for i, h := range apexes {
		heights[i] = h.Metres()
	}
	c := Chart{Depths: depths, Apexes: apexes}
	for i, row := range a.Model.Chart(a.Return, depths, heights) {
		c.add(row, n)
		if apex, ok := c.just(i); ok {
			c.Line = append(c.Line, Spot{depths[i], apex})
		}
	}
	return c, nil
}

func ladder(from, apart units.Feet, n int) []units.Feet {
	out := make([]units.Feet, n)
	for i := range out {
		out[i] = from + apart*units.Feet(i)
	}
	return out
}

// add is one more row.
func (c *Chart) add(row []flight.Bought, n Needs) {
	margin, why := make([]units.Seconds, len(row)), make([]flight.Reason, len(row))
	for j, b := range row {
		why[j] = b.Reason
		if b.Reason == flight.Possible {
			margin[j] = b.Line - n.Stopped
		}
	}
	c.Margin, c.Reason = append(c.Margin, margin), append(c.Reason, why)
}

// just is the apex at which a row's margin passes 0, straight between columns;
// false if it does not between two returns that can be hit.
func (c *Chart) just(i int) (units.Feet, bool) {
	for j := 1; j < len(c.Apexes); j++ {
		v, w := c.Margin[i][j-1], c.Margin[i][j]
		if c.Reason[i][j-1] == flight.Possible && c.Reason[i][j] == flight.Possible && v < 0 && w >= 0 {
			return c.Apexes[j-1] + (c.Apexes[j]-c.Apexes[j-1])*units.Feet(v/(v-w)), true
		}
	}
	return 0, false
}
