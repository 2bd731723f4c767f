package rally

import (
	"testing"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
)

// A drive that can only clear the net as a lob goes into the net, and says so;
// asked for on a high arc it is the lob. From (0, -22), 2.6 ft up, to an aim 8 ft
// beyond the net at 20 m/s the straight way passes the net's plane near 1 ft.
func TestLowDriveIntoTheNet(t *testing.T) {
	drive := lesson.Play{Shots: []lesson.Shot{{
		By: game.Near1, Aim: court.Pt(0, 8), Intent: lesson.Speed(20),
		From: &lesson.Place{Point: court.Pt(0, -22), Height: 2.6},
	}}}
	for _, id := range game.Players {
		drive.Tracks[id] = []lesson.Keyframe{{}}
	}
	low := solved(t, drive).Strokes[0]
	if !low.Stopped() || low.Trouble != flight.IntoNet {
		t.Errorf("a low drive at the net: stopped %v, trouble %v, want into the net", low.Stopped(), low.Trouble)
	}
	drive.Shots[0].Arc = lesson.High
	high := solved(t, drive).Strokes[0]
	if high.Stopped() || high.Trouble != flight.Possible || high.Planned.Apex.State.At.Z < 5 {
		t.Errorf("the same on a high arc: stopped %v, trouble %v, apex %v m, want a lob", high.Stopped(), high.Trouble, high.Planned.Apex.State.At.Z)
	}
}
