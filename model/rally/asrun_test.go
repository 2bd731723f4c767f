package rally

import (
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/movement"
	"homeside/model/units"
)

// solveDrawn solves a play of random people and runs around an ordinary rally.
func solveDrawn(t *rapid.T, bends bool) (*Rally, lesson.Lesson) {
	p := lessontest.Plays().Draw(t, "play")
	for i, s := range p.Shots {
		end := s.By.Team()
		p.Shots[i] = lesson.Shot{By: s.By, Aim: court.Pt(4, -16*end.Sign()), Intent: lesson.Apex(8)}
		if i == 0 {
			p.Shots[i].From = &lesson.Place{Point: court.Pt(3, 23*end.Sign()), Height: 2.6}
		}
	}
	if !bends {
		for id := range p.Tracks {
			for i := range p.Tracks[id] {
				p.Tracks[id][i].Via = nil
			}
		}
	}
	l := lesson.Lesson{Teams: teams(), Plays: []lesson.Play{p}}
	for _, id := range game.Players {
		who, preset := l.Player(id), rapid.SampledFrom(movement.Presets).Draw(t, "preset")
		preset.Pace.TopSpeed *= units.MetresPerSecond(rapid.Float64Range(0.1, 2).Draw(t, "speed"))
		who.Pace = &preset.Pace
		l = l.WithPlayer(id, who)
	}
	r, err := Solve(l, 0)
	if err != nil {
		t.Fatalf("Solve: %v", err)
	}
	return r, l
}

// As run and as drawn agree at every keyframe that the legs reach in time, and a
// late player is late by exactly what the fastest run takes too long.
func TestRunAgreesWithDrawnWhereTheWindowsAllow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, _ := solveDrawn(t, true)
		for _, id := range game.Players {
			track := r.Tracks[id]
			if len(track.Legs) != len(track.Runs) || len(track.Stops) != len(track.Runs)+1 {
				t.Fatalf("%v: %d stops, %d runs, %d legs", id, len(track.Stops), len(track.Runs), len(track.Legs))
			}
			for i, s := range track.Stops {
				if s.Late == 0 && track.RunAt(s.At).Place.Distance(s.Keyframe.Place) > 1e-6 {
					t.Fatalf("%v is on time for stop %d and at %v, want %v", id, i, track.RunAt(s.At).Place, s.Keyframe.Place)
				}
				if i > 0 {
					checkLate(t, r.Player(id).Legs(), track.Legs[i-1], s)
				}
			}
		}
	})
}

func checkLate(t *rapid.T, pace movement.Pace, leg Leg, s Stop) {
	fastest, err := leg.Gait.Of(pace).Fastest(leg.Run)
	if err != nil {
		t.Fatalf("Fastest(%+v): %v", leg.Run, err)
	}
	late := float64(leg.Push() + fastest.Duration() - s.At)
	if leg.Run.Distance == 0 {
		late = 0
	}
	if !near(float64(s.Late), max(late, 0), 1e-9) {
		t.Fatalf("late by %v s, want %v: leaves %v, needs %v, due %v", s.Late, late, leg.Push(), fastest.Duration(), s.At)
	}
	if leg.Push()+1e-9 < leg.To && leg.Profile.Distance() != leg.Run.Distance {
		t.Fatalf("the profile is %v m long, want %v", leg.Profile.Distance(), leg.Run.Distance)
	}
}

// Nobody jumps: in a short time a player gets no further than at top speed.
func TestRunNeverJumps(t *testing.T) {
	const step = 1e-3
	rapid.Check(t, func(t *rapid.T) {
		r, _ := solveDrawn(t, true)
		id := rapid.SampledFrom(game.Players[:]).Draw(t, "id")
		track, top := r.Tracks[id], r.Player(id).Legs().TopSpeed
		from := units.Seconds(rapid.Float64Range(float64(r.From), float64(r.To)).Draw(t, "from"))
		last := track.RunAt(from).Place
		for i := range 200 {
			pose := track.RunAt(from + units.Seconds(float64(i+1)*step))
			if got, most := float64(last.Distance(pose.Place).Metres()), float64(top)*step; got > most*1.1+1e-9 { // within a chord of a bend the speed is not even
				t.Fatalf("%v goes %v m in %v s at %v s, at most %v m", id, got, step, from, most)
			}
			if !(pose.Speed >= 0 && pose.Speed <= top*1.0000001) {
				t.Fatalf("%v runs at %v m/s, top speed %v", id, pose.Speed, top)
			}
			last = pose.Place
		}
	})
}

// A play seen from the other end runs the same. Without bends: one may fold, and
// then a hair decides.
func TestMirroredPlaysRunTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, l := solveDrawn(t, false)
		l.Teams[0], l.Teams[1] = l.Teams[1], l.Teams[0]
		l.Plays[0] = edit.Turned(l.Plays[0])
		m, err := Solve(l, 0)
		if err != nil {
			t.Fatalf("Solve: %v", err)
		}
		for _, id := range game.Players {
			a, b := r.Tracks[id], m.Tracks[id^2]
			for i := range a.Stops {
				if x, y := float64(a.Stops[i].Late), float64(b.Stops[i].Late); !near(x, y, 1e-4) {
					t.Fatalf("%v, stop %d: late by %v s, mirrored by %v", id, i, x, y)
				}
			}
		}
	})
}

// A faster player never gets there later.
func TestFasterIsNeverLater(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lesson.Lesson{Teams: teams(), Plays: []lesson.Play{play(four()[:3]...)}}
		to := lesson.Keyframe{At: after(units.Seconds(rapid.Float64Range(0.1, 3).Draw(t, "at"))), Facing: 180}
		to.Place = court.Pt(units.Feet(rapid.Float64Range(-12, 12).Draw(t, "x")), units.Feet(rapid.Float64Range(6, 26).Draw(t, "y")))
		to.Through = rapid.Bool().Draw(t, "through")
		l.Plays[0] = l.Plays[0].WithTrack(game.Far2, []lesson.Keyframe{{Place: court.Pt(5, 7.5), Facing: 180}, to})
		late := units.Seconds(1e9)
		for _, v := range []units.MetresPerSecond{1, 2, 3, 4, 5, 6, 7, 8} {
			pace := movement.DefaultPace()
			pace.TopSpeed = v
			p := l.Player(game.Far2)
			p.Pace = &pace
			r, err := Solve(l.WithPlayer(game.Far2, p), 0)
			if err != nil {
				t.Fatal(err)
			}
			if got := r.Tracks[game.Far2].Stops[1].Late; got > late {
				t.Fatalf("at %v m/s late by %v s, slower by %v", v, got, late)
			} else {
				late = got
			}
		}
	})
}
