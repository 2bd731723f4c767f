package cover

import (
	"errors"
	"math"
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
)

// rallied is a lesson of invented people in which far1 serves: a serve, a return
// and a third shot that is the third given.
func rallied(t testing.TB, second, third lesson.Intent) *rally.Rally {
	t.Helper()
	slow := movement.DefaultPace()
	slow.TopSpeed = 4.5
	pair := [2]lesson.Player{{Name: "Rua"}, {Name: "Lev", Hand: lesson.LeftHanded, Pace: &slow}}
	p := lesson.Play{
		Shots: []lesson.Shot{
			{By: game.Far1, Aim: court.Pt(5, -18), Intent: lesson.Apex(8)},
			{By: game.Near1, Aim: court.Pt(-4, 18), Intent: second},
			{By: game.Far2, Aim: court.Pt(3, -6), Intent: third},
		},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(5, -24)}, {At: lesson.At(lesson.ContactOf(2)), Place: court.Pt(2, -13), Facing: 340, Through: true}},
			{{Place: court.Pt(-5, -7.6), Facing: 5}},
			{{Place: court.Pt(-5, 23), Facing: 180}},
			{{Place: court.Pt(5, 23), Facing: 180}},
		},
	}
	l := lesson.Lesson{Teams: [2]lesson.Team{{Players: pair}, {Players: pair}}, Plays: []lesson.Play{p}}
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestStrikeAt(t *testing.T) {
	r := rallied(t, lesson.Apex(9), lesson.Apex(7))
	third := lesson.ContactOf(2)
	got, err := StrikeAt(r, third, court.Near, Shot{Drive: 20})
	if err != nil {
		t.Fatal(err)
	}
	at, _ := r.TimeOf(third)
	f := r.At(at)
	struck := r.Strokes[2].From
	if x, y, z := float64(got.From.X.Metres()), float64(got.From.Y.Metres()), float64(got.Height); math.Abs(x-struck.X)+math.Abs(y-struck.Y)+math.Abs(z-struck.Z) > 1e-9 {
		t.Errorf("StrikeAt from (%v, %v, %v) m, want where the ball is struck, %v", x, y, z, struck)
	}
	for i, id := range []game.Player{game.Near1, game.Near2} {
		run := f.Players[id].Run
		want := Player{run.Place, run.Facing, r.Player(id).Hand, r.Player(id).Legs()}
		if got.Players[i] != want {
			t.Errorf("StrikeAt's player %d = %+v, want %v as run, %+v", i, got.Players[i], id, want)
		}
	}
	if got.Model != r.Model || got.Team != court.Near || got.Shot.Drive != 20 {
		t.Errorf("StrikeAt = %+v, want the rally's ball, near and 20 m/s", got)
	}
	if m := mustOf(t, got); m.Share() <= 0 || m.Share() >= 1 {
		t.Errorf("Share() = %v, want some covered and some open", m.Share())
	}
}

func TestStrikeAtRefuses(t *testing.T) {
	r := rallied(t, lesson.NetClear(0), lesson.Apex(7)) // the return touches the top of the net
	for name, c := range map[string]struct {
		event lesson.Event
		team  court.End
	}{
		"no such shot":   {lesson.ContactOf(5), court.Near},
		"nobody strikes": {lesson.Event{Shot: 0, Moment: lesson.Bounce}, court.Near},
		"the end":        {lesson.TheEnd, court.Near},
		"its own":        {lesson.ContactOf(1), court.Near},
		"not reached":    {lesson.ContactOf(2), court.Near},
	} {
		if s, err := StrikeAt(r, c.event, c.team, Shot{}); !errors.Is(err, ErrStrike) {
			t.Errorf("%s: StrikeAt(%v, %v) = %+v, %v, want ErrStrike", name, c.event, c.team, s, err)
		}
	}
}

func TestStrikes(t *testing.T) {
	reached, netted := rallied(t, lesson.Apex(9), lesson.Apex(7)), rallied(t, lesson.NetClear(0), lesson.Apex(7))
	for _, c := range []struct {
		name string
		r    *rally.Rally
		team court.End
		want []lesson.Event
	}{
		{"near", reached, court.Near, []lesson.Event{lesson.ContactOf(0), lesson.ContactOf(2)}},
		{"far", reached, court.Far, []lesson.Event{lesson.ContactOf(1)}},
		{"near, return in the net", netted, court.Near, []lesson.Event{lesson.ContactOf(0)}},
	} {
		got := Strikes(c.r, c.team)
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: Strikes = %v, want %v", c.name, got, c.want)
		}
		for _, e := range got {
			if _, err := StrikeAt(c.r, e, c.team, Shot{}); err != nil {
				t.Errorf("%s: StrikeAt(%v): %v", c.name, e, err)
			}
		}
	}
}

// A whole play turned half round gives the other team the same cover.
func TestMirroredPlay(t *testing.T) {
	r := rallied(t, lesson.Apex(9), lesson.Apex(7))
	p := r.Play
	turned := p
	turned.Shots = slices.Clone(p.Shots)
	for i := range turned.Shots {
		turned.Shots[i].By = p.Shots[i].By ^ 2
		turned.Shots[i].Aim = p.Shots[i].Aim.Mirror()
	}
	for id, track := range p.Tracks {
		track = slices.Clone(track)
		for i := range track {
			track[i].Place, track[i].Facing = track[i].Place.Mirror(), track[i].Facing+180
		}
		turned.Tracks[id^2] = track
	}
	other, err := rally.Solve(lesson.Lesson{Teams: r.Teams, Plays: []lesson.Play{turned}}, 0)
	if err != nil {
		t.Fatal(err)
	}
	a, b := mapAt(t, r, court.Near), mapAt(t, other, court.Far)
	for i := range a.Len() {
		if math.Abs(float64(a.Margin(i)-b.Margin(i))) > 1e-6 {
			t.Fatalf("cell %d: Margin %v s, mirrored %v s", i, a.Margin(i), b.Margin(i))
		}
	}
	if a.Share() != b.Share() || a.ShareForehand() != b.ShareForehand() {
		t.Errorf("Share() %v and %v, mirrored %v and %v", a.Share(), a.ShareForehand(), b.Share(), b.ShareForehand())
	}
}

func mapAt(t *testing.T, r *rally.Rally, team court.End) Map {
	t.Helper()
	s, err := StrikeAt(r, lesson.ContactOf(2), team, Shot{})
	if err != nil {
		t.Fatal(err)
	}
	return mustOf(t, s)
}
