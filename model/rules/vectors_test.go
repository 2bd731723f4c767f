package rules

import (
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// USA Pickleball Official Rulebook 2026, 7.E and 3.A.4.f, as worked vectors: a
// serve from the right, x to the server's right and y beyond the net.
func TestWhereAServeIsGood(t *testing.T) {
	for _, c := range []struct {
		x, y float64
		want finding.ID
	}{
		{-5, 7.000, finding.ServeInKitchen}, // the kitchen line
		{-5, 7.001, ""},
		{-5, 22.000, ""}, // the baseline
		{-5, 22.001, finding.ServeOut},
		{-10, 15, ""}, // the sideline
		{-10.001, 15, finding.ServeOut},
		{0.083, 15, ""}, // the centreline's outer edge
		{0.10, 15, finding.ServeElsewhere},
		{-10.001, 7, finding.ServeOut},
		{-5, -10, finding.ServeOut}, // on the own side
		{10, 22, finding.ServeElsewhere},
	} {
		for _, e := range court.Ends {
			p := court.OwnPoint(e.Other(), units.Feet(c.x), -units.Feet(c.y)) // in the server's terms
			if got := landed(e, court.Right, p); got != c.want {
				t.Errorf("landed(%v, right, %v) = %q, want %q", e, p, got, c.want)
			}
		}
		got := found(t, with(aim(0, c.x, c.y)))
		if c.want != "" && !has(got, c.want) || c.want == "" && finding.Faults(got) {
			t.Errorf("a serve to (%v, %v): %v, want %q", c.x, c.y, ids(got), c.want)
		}
	}
}

// Rulebook 2026, 7.A, as worked vectors: one foot at the contact, x to the
// server's right and y behind the net.
func TestWhereAServersFootIsGood(t *testing.T) {
	for _, c := range []struct {
		right, behind units.Feet
		side          court.Side
		want          finding.ID
	}{
		{5, 22.01, court.Right, ""},
		{5, 22.00, court.Right, finding.FootOnCourt},
		{10.1, 22.5, court.Right, finding.FootOutside},
		{10, 22.5, court.Right, ""},                    // above the sideline's outer edge
		{-0.083, 22.5, court.Right, ""},                // on the centreline's extension: our reading
		{-0.1, 22.5, court.Right, finding.FootOutside}, // beyond it
		{0.083, 22.5, court.Left, ""},
		{0.1, 22.5, court.Left, finding.FootOutside},
		{10.1, 21, court.Right, finding.FootOutside}, // beside the court
		{5, 40, court.Right, ""},                     // as far back as one likes
	} {
		for _, e := range court.Ends {
			foot := court.OwnPoint(e, c.right, c.behind)
			if got := footing(e, c.side, foot); got != c.want {
				t.Errorf("footing(%v, %v, %v) = %q, want %q", e, c.side, foot, got, c.want)
			}
		}
	}
}

// One foot in the serving area does not excuse the other (7.A).
func TestBothFeetCount(t *testing.T) {
	turned := func(_ *lesson.Lesson, p *lesson.Play) {
		p.Tracks[game.Near1] = []lesson.Keyframe{{Place: pt(5, -22.3), Facing: 90}} // feet 0.6 ft before and behind
	}
	got := found(t, with(turned))
	if len(got) != 1 || got[0].ID != finding.FootOnCourt || got[0].Where.Distance(pt(5, -21.7)) > 1e-9 {
		t.Errorf("Check(one foot on the court) = %+v, want foot-on-court at (5, -21.7)", got)
	}
	corner := func(_ *lesson.Lesson, p *lesson.Play) {
		p.Tracks[game.Near1] = []lesson.Keyframe{{Place: pt(10, -22), Facing: 135}} // one foot on the court's corner, one outside
	}
	if got := ids(found(t, with(corner))); len(got) < 2 || !has(found(t, with(corner)), finding.FootOutside) {
		t.Errorf("Check(feet across the corner) = %v, want both foot faults", got)
	}
}

// "Right place, wrong server" after a side out at an even score: the starter
// serves from the right, loses, and serves again from there. The partner holds
// the serve, from the left (5.B.5; worked example in a primer of the rules).
// Where the call leaves both open nothing is said.
func TestRightPlaceWrongServer(t *testing.T) {
	got := found(t, with(serves(game.Near1, 3.5, 0, 3, 2)))
	if len(got) == 0 || got[0].ID != finding.PlaceNotServer {
		t.Fatalf("Check(starter at 0-3-2 from the right) = %v, want %s", ids(got), finding.PlaceNotServer)
	}
	if who, _ := got[0].Args.Get("server"); who != game.Near2 {
		t.Errorf("the right server is %v, want near2", who)
	}
	if side, _ := got[0].Args.Get("court"); side != court.Left {
		t.Errorf("the right court is %v, want left", side)
	}
	open := found(t, with(serves(game.Near1, -3.5, 1, 3, 2)))
	if has(open, finding.PlaceNotServer) || has(open, finding.WrongServer) {
		t.Errorf("Check(1-3-2 from the left) = %v, want no word on the server", ids(open))
	}
}

// The receiver follows from the receiving team's own score (5.B.4): the serves
// of a game with the rally winners A A B B A B B A A A B B B, A first.
func TestReceivers(t *testing.T) {
	a1, a2, b1, b2 := game.Near1, game.Near2, game.Far1, game.Far2
	for _, c := range []struct {
		call             game.Call
		server, receiver game.Player
		from             court.Side
	}{
		{game.Call{Server: 2}, a1, b1, court.Right}, {game.Call{Serving: 1, Server: 2}, a1, b2, court.Left},
		{game.Call{Serving: 2, Server: 2}, a1, b1, court.Right}, {game.Call{Receiving: 2, Server: 1}, b1, a1, court.Right},
		{game.Call{Serving: 1, Receiving: 2, Server: 1}, b1, a2, court.Left}, {game.Call{Serving: 1, Receiving: 2, Server: 2}, b2, a1, court.Right},
		{game.Call{Serving: 2, Receiving: 2, Server: 2}, b2, a2, court.Left}, {game.Call{Serving: 3, Receiving: 2, Server: 2}, b2, a1, court.Right},
		{game.Call{Serving: 2, Receiving: 3, Server: 1}, a1, b2, court.Right}, {game.Call{Serving: 3, Receiving: 3, Server: 1}, a1, b1, court.Left},
		{game.Call{Serving: 4, Receiving: 3, Server: 1}, a1, b2, court.Right}, {game.Call{Serving: 4, Receiving: 3, Server: 2}, a2, b1, court.Left},
		{game.Call{Serving: 3, Receiving: 4, Server: 1}, b2, a1, court.Right}, {game.Call{Serving: 4, Receiving: 4, Server: 1}, b2, a2, court.Left},
	} {
		for _, receiver := range []game.Player{c.receiver, c.receiver.Partner()} {
			got := found(t, rallyAt(c.call, c.server, c.from, receiver))
			if wrong := receiver != c.receiver; has(got, finding.WrongReceiver) != wrong || has(got, finding.WrongServer) || has(got, finding.PlaceNotServer) || has(got, finding.WrongCourt) {
				t.Errorf("%v: %v serves from the %v, %v returns: %v, want wrong receiver: %v and the right server", c.call, c.server, c.from, receiver, ids(got), wrong)
			}
		}
	}
}

// rallyAt is a serve and a return.
func rallyAt(call game.Call, server game.Player, from court.Side, receiver game.Player) lesson.Lesson {
	return with(func(_ *lesson.Lesson, p *lesson.Play) {
		e := server.Team()
		p.Situation = lesson.Situation{Call: call, Serving: e}
		x := 4 * court.SideX(court.Near, from)
		p.Shots = []lesson.Shot{
			{By: server, Aim: court.OwnPoint(e, -x, -17), Intent: lesson.Apex(7.5)},
			{By: receiver, Aim: court.OwnPoint(e, 3, 17), Intent: lesson.Apex(8)},
		}
		stay(p, server, court.OwnPoint(e, x, 23))
		stay(p, server.Partner(), court.OwnPoint(e, -x, 23))
		stay(p, receiver, court.OwnPoint(e, -x, -24))
		stay(p, receiver.Partner(), court.OwnPoint(e, x, -8))
	})
}
