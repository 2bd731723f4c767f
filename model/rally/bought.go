package rally

import (
	"math"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/units"
)

// theReturn is the number of the return of serve.
const theReturn = 1

// TimeBought is the time that a return buys, for depths and heights about the
// play's own.
type TimeBought struct {
	Depths []units.Feet      // rows: how far inside the opponents' baseline it lands
	Apexes []units.Feet      // columns: greatest height of the ball's centre
	Bought [][]flight.Bought // by row and column
	Depth  units.Feet        // of the play's return
	Apex   units.Feet        // likewise
	Own    flight.Bought     // what the play's return buys
}

// Rows and columns of the chart.
const (
	boughtColumns            = 60
	boughtRows               = 40
	leastApex     units.Feet = 4
	mostApex      units.Feet = 18
	mostDepth     units.Feet = 15
)

// TimeBought is the chart for the play's return: struck where it is struck, with
// its spin; false if the play has none.
func (r *Rally) TimeBought() (TimeBought, bool) {
	if len(r.Strokes) <= theReturn {
		return TimeBought{}, false
	}
	shot, s := r.Play.Shots[theReturn], r.Strokes[theReturn]
	in := flight.Return{From: s.From, AimX: shot.Aim.X.Metres(), Spin: shot.Spin, Side: shot.Side}
	t := TimeBought{
		Depth: court.Baseline - units.Feet(math.Abs(float64(shot.Aim.Y))),
		Apex:  s.Planned.Apex.State.Height().Feet(),
	}
	apexes := make([]units.Metres, boughtColumns)
	for i := range boughtColumns {
		t.Apexes = append(t.Apexes, leastApex+(mostApex-leastApex)*units.Feet(i)/(boughtColumns-1))
		apexes[i] = t.Apexes[i].Metres()
	}
	for i := range boughtRows {
		t.Depths = append(t.Depths, mostDepth*units.Feet(i)/(boughtRows-1))
	}
	t.Bought = r.Model.Chart(in, t.Depths, apexes)
	t.Own = r.Model.Bought(in, t.Depth, t.Apex.Metres())
	return t, true
}
