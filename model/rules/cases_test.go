package rules

import (
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// change makes something of the base lesson.
type change func(l *lesson.Lesson, p *lesson.Play)

// one case of each finding: a play that has it, and one that just has not. Rule
// numbers are those of the USA Pickleball Official Rulebook 2026.
var cases = []struct {
	id       finding.ID
	rule     string
	has, not change
}{
	{finding.CallMissing, "6.C", call(0, 0, 0), call(0, 0, 2)},
	{finding.CallImpossible, "4.A", call(12, 3, 1), call(12, 12, 1)},
	{finding.CallImpossible, "4.A", call(4, 7, 0), call(4, 7, 1)},
	{finding.WrongTeam, "5.B.5", func(_ *lesson.Lesson, p *lesson.Play) { p.Situation.Serving = court.Far }, call(0, 1, 1)},
	{finding.WrongServer, "5.B.5", serves(game.Near2, 3.5, 0, 1, 1), serves(game.Near1, 3.5, 0, 1, 1)},
	{finding.PlaceNotServer, "5.B.5", serves(game.Near2, -3.5, 0, 1, 1), serves(game.Near2, -3.5, 0, 1, 2)},
	{finding.WrongCourt, "5.B.3", serves(game.Near1, -3.5, 0, 1, 1), serves(game.Near1, 3.5, 0, 1, 1)},
	{finding.WrongReceiver, "5.C.1.c", returns(game.Far2), returns(game.Far1)},
	{finding.FootOnCourt, "7.A.2", at(game.Near1, 5, -22), at(game.Near1, 5, -22.01)},
	{finding.FootOutside, "7.A.3", at(game.Near1, 9.5, -22.5), at(game.Near1, 9.4, -22.5)},
	{finding.FeetOffGround, "7.A.1", func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[0].Airborne = true }, at(game.Near1, 5, -22.5)},
	{finding.ServeIntoNet, "7.E", hit(0, lesson.NetClear(-0.1)), hit(0, lesson.NetClear(0.1))}, // the second brushes the net: no lets
	{finding.ServeInKitchen, "7.E", aim(0, -5, 7), aim(0, -5, 7.001)},
	{finding.ServeElsewhere, "7.E", aim(0, 0.1, 15), aim(0, 0.083, 15)},
	{finding.ServeOut, "7.E", aim(0, -5, 22.001), aim(0, -5, 22)},
	{finding.ServeHitsOwn, "7.E.4", onBall(game.Near2, 0, 0.1, 0), onBall(game.Near2, 0, 0.1, 0.8)},
	{finding.ServeHitsOwn, "7.E.4", onBall(game.Near2, 0, 0.1, 0), onBall(game.Near2, 0, 0.4, 0)}, // flies over
	{finding.ServeHitsOther, "7.E.5", onBall(game.Far2, 0, 0.95, 0), onBall(game.Far2, 0, 0.95, 0.8)},
	{finding.ServeHitsOther, "7.E.5", onBall(game.Far1, 0, 0.95, 0), onBall(game.Far1, 0, 1.1, 0)}, // it has bounced, and he strikes it
	{finding.ServeVolleyed, "10.A", met(0, lesson.OnVolley), met(0, lesson.Rising)},
	{finding.ReturnVolleyed, "10.A", met(1, lesson.OnVolley), met(1, lesson.Rising)},
	{finding.SecondBounce, "", met(2, lesson.SecondTop), wheelchair(game.Far2, met(2, lesson.SecondTop))},
	{finding.KitchenVolley, "11.A", volleyFrom(180, 7), volleyFrom(180, 7.001)},
	{finding.KitchenVolley, "11.A", volleyFrom(90, 7.6), volleyFrom(90, 7.601)}, // one foot in front of the other
	{finding.Momentum, "11.A.2", rushes(7.5, true), rushes(7.5, false)},
	{finding.Momentum, "11.A.2", rushes(7.5, true), rushes(12, true)}, // comes to a stop before the line
	{finding.Momentum, "11.A.2", late(6.5), late(7.5)},
	{finding.WrongSide, "5.B.4", at(game.Near2, -5, 0.1), at(game.Near2, -5, -0.1)},
	{finding.OverNet, "", goes(game.Far2, 5, -0.1), goes(game.Far2, 5, 0)},
	{finding.BallHitsPlayer, "", onBall(game.Near2, 2, 0.1, 0), onBall(game.Near2, 2, 0.1, 0.8)},
	{finding.ShotIntoNet, "", hit(2, lesson.NetClear(-0.1)), hit(2, lesson.NetClear(0.1))},
	{finding.ShotOut, "", aim(3, -2, -22.001), aim(3, -2, -22)},
	{finding.ShotOut, "", aim(3, -2, 5), aim(3, -2, -5)}, // on the own side
	{finding.ShotImpossible, "", hit(3, lesson.Speed(3)), hit(3, lesson.Speed(13))},
	{finding.OffSurface, "3.A.3", at(game.Near2, -14.5, -23), at(game.Near2, -14.4, -23)},
	{finding.OffSurface, "3.A.3", venue(1, at(game.Near2, -10.5, -23)), venue(2, at(game.Near2, -10.5, -23))},
	{finding.PartnerInside, "10.A", at(game.Near2, -5, -22), at(game.Near2, -5, -22.01)},
	{finding.PartnerInside, "10.A", goes(game.Near1, 4, -20), goes(game.Near1, 4, -22.5)}, // the server walks in
	{finding.StackLegal, "5.B.4", at(game.Near2, 8, -23), at(game.Near2, -8, -23)},
	{finding.StackLegal, "5.B.4", at(game.Far2, 10.5, 8), at(game.Far2, 9.5, 8)},
	{finding.StackUseless, "", fixed(at(game.Near2, 8, -23)), fixed(at(game.Near2, -8, -23))},
	{finding.StackUseless, "", fixed(crossing), crossing},
}

func call(serving, receiving, server int) change {
	return func(_ *lesson.Lesson, p *lesson.Play) {
		p.Situation.Call = game.Call{Serving: serving, Receiving: receiving, Server: server}
	}
}

// serves has a player of the near team serve from x at a call.
func serves(id game.Player, x float64, serving, receiving, server int) change {
	return func(l *lesson.Lesson, p *lesson.Play) {
		call(serving, receiving, server)(l, p)
		p.Shots[0].By, p.Shots[0].Aim.X = id, units.Feet(-x)
		stay(p, id, pt(x, -23))
		stay(p, id.Partner(), pt(-x, -23))
	}
}

func returns(id game.Player) change {
	return func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[1].By = id }
}

func at(id game.Player, x, y float64) change {
	return func(_ *lesson.Lesson, p *lesson.Play) { stay(p, id, pt(x, y)) }
}

// goes has a player at a place when the third is struck.
func goes(id game.Player, x, y float64) change {
	return func(_ *lesson.Lesson, p *lesson.Play) {
		k := p.Tracks[id][0]
		k.At, k.Place = lesson.Anchor{Event: lesson.ContactOf(2), Offset: -0.3}, pt(x, y)
		p.Tracks[id] = []lesson.Keyframe{p.Tracks[id][0], k}
	}
}

func aim(shot int, x, y float64) change {
	return func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[shot].Aim = pt(x, y) }
}

func hit(shot int, in lesson.Intent) change {
	return func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[shot].Intent = in }
}

// met has a shot taken in a way, where a height counts at 1 ft.
func met(shot int, how lesson.MeetHow) change {
	return func(_ *lesson.Lesson, p *lesson.Play) {
		p.Shots[shot].Meet = lesson.Meet{How: how}
		if how.AtHeight() {
			p.Shots[shot].Meet.Height = 1
		}
	}
}

func wheelchair(id game.Player, then change) change {
	return func(l *lesson.Lesson, p *lesson.Play) {
		l.Teams[id.Team()].Players[id.Number()-1].Wheelchair = true
		then(l, p)
	}
}

func venue(beside units.Feet, then change) change {
	return func(l *lesson.Lesson, p *lesson.Play) {
		l.Venue.BesideSideline = beside
		then(l, p)
	}
}

func fixed(then change) change {
	return func(l *lesson.Lesson, p *lesson.Play) {
		l.Scoring.Format, p.Situation.Call = game.RallyFixed, game.Call{}
		then(l, p)
	}
}

// crossing has the near partners change halves after the third.
func crossing(_ *lesson.Lesson, p *lesson.Play) {
	for i, x := range []float64{-4.5, 4.5} {
		k := &p.Tracks[i][1]
		k.At, k.Place = lesson.At(lesson.TheEnd), pt(x, -14)
	}
}

// onBall puts a player so far aside of shot i's way over the ground, at a share
// of its time in the air.
func onBall(id game.Player, i int, share float64, aside units.Feet) change {
	return func(l *lesson.Lesson, p *lesson.Play) {
		r, err := rally.Solve(*l, 0)
		if err != nil {
			panic(err) // the base lesson can be solved
		}
		s := r.Strokes[i]
		ball := r.At(s.At + s.Planned.Duration*units.Seconds(share)).Ball
		way, _ := flight.State{At: ball.Velocity}.Ground().Unit()
		stay(p, id, ball.Ground().Add(court.Pt(way.Y, -way.X).Times(float64(aside))))
		k := p.Tracks[id][0]
		k.At = lesson.Anchor{Event: lesson.ContactOf(i), Offset: s.Planned.Duration * 1.2}
		p.Tracks[id] = append(p.Tracks[id], k)
	}
}

// volleyFrom has the fourth volleyed from a distance to the net.
func volleyFrom(facing units.Degrees, y float64) change {
	return func(_ *lesson.Lesson, p *lesson.Play) {
		p.Tracks[game.Far2] = []lesson.Keyframe{{Place: pt(6.5, y), Facing: facing}, {At: lesson.At(lesson.ContactOf(3)), Place: pt(6.5, y), Facing: facing}}
	}
}

// rushes has the fourth volleyed at a distance to the net by one who comes
// running from far behind.
func rushes(y float64, through bool) change {
	return func(_ *lesson.Lesson, p *lesson.Play) {
		contact := lesson.ContactOf(3)
		p.Tracks[game.Far2] = []lesson.Keyframe{
			{Place: pt(6.5, y+8), Facing: 180},
			{At: lesson.At(contact), Place: pt(6.5, y), Facing: 180, Through: through, Leave: &lesson.Anchor{Event: contact, Offset: -1.5}},
		}
	}
}

// late has the volleyer of the fourth still on the way to a place when the ball comes.
func late(y float64) change {
	return func(_ *lesson.Lesson, p *lesson.Play) {
		contact := lesson.ContactOf(3)
		p.Tracks[game.Far2] = []lesson.Keyframe{
			{Place: pt(6.5, 22), Facing: 180},
			{At: lesson.At(contact), Place: pt(6.5, y), Facing: 180, Leave: &lesson.Anchor{Event: contact, Offset: -1.2}},
		}
	}
}

func TestCases(t *testing.T) {
	for _, c := range cases {
		got := found(t, with(c.has))
		if !has(got, c.id) {
			t.Errorf("%s: Check(trigger) = %v, want it among them", c.id, ids(got))
		}
		for _, f := range got {
			if f.ID == c.id && f.Rule.Number(finding.USAP2026) != c.rule {
				t.Errorf("%s by rule %q, want %q", c.id, f.Rule.Number(finding.USAP2026), c.rule)
			}
		}
		if got := found(t, with(c.not)); has(got, c.id) {
			t.Errorf("%s: Check(near miss) = %+v, want it not among them", c.id, got)
		}
	}
}

func TestEveryKindHasACase(t *testing.T) {
	covered := map[finding.ID]bool{}
	for _, c := range cases {
		covered[c.id] = true
	}
	for _, k := range finding.RuleKinds {
		if !covered[k.ID] {
			t.Errorf("no case has %s", k.ID)
		}
	}
}
