package words

import (
	"homeside/model/movement"
	"homeside/model/units"
)

// ChartTitle heads the chart of a returner's margin.
func ChartTitle(who string) string {
	return T("Time to spare for %s, by the height and depth of the return", inSentence(who))
}

// ChartReads says how to read it.
func ChartReads() string {
	return T("To the right the return goes higher, downward it lands shorter. Lines: seconds to spare when the third ball arrives, negative where too late. Thick dashes: just set. Dot: this play's return.")
}

// HeightsTitle heads the table of heights.
func HeightsTitle() string { return T("How high must the return go, to be set in time?") }

// HeightsRead says what the table rests on.
func HeightsRead(run, most units.Feet) string {
	return T("Top of the ball's flight, for the run of this play (%s) and a third of 15 m/s. Above %s the honest advice is not to stack on this return. Paces below the line are assumptions: time your own.", FeetInches(run), FeetInches(most))
}

// PaceName is a usual pace for a list.
func PaceName(p movement.Preset) string {
	switch p.Key {
	case "fit-adult":
		return T("Fit adult")
	case "recreational-adult":
		return T("Recreational adult")
	case "50-plus":
		return T("50 and over")
	case "65-plus":
		return T("65 and over")
	case "cautious":
		return T("Cautious mover")
	case "wheelchair":
		return T("Wheelchair: push and turn")
	}
	return p.Name
}
