package lesson_test

import (
	"reflect"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/movement"
	"homeside/model/units"
)

// A lesson is a value: each With gives a new one and leaves the old as it was.
func TestWithLeavesTheOldLesson(t *testing.T) {
	old := lessontest.Sample()
	p := old.Plays[0]
	changed := old.
		WithPlay(0, p.WithShot(1, lesson.Shot{By: game.Near2}).WithTrack(game.Far2, nil)).
		WithPlayer(game.Far1, lesson.Player{Name: "Pia"})
	if got := changed.Plays[0].Shots[1].By; got != game.Near2 {
		t.Errorf("WithShot(1): hit by %v, want near2", got)
	}
	if got := changed.Plays[0].Tracks[game.Far2]; got != nil {
		t.Errorf("WithTrack(far2, nil) = %v, want nil", got)
	}
	if got := changed.Player(game.Far1).Name; got != "Pia" {
		t.Errorf("WithPlayer(far1) = %q, want Pia", got)
	}
	if want := lessontest.Sample(); !reflect.DeepEqual(old, want) {
		t.Errorf("the old lesson became %+v, want %+v", old, want)
	}
}

func TestScoringPoints(t *testing.T) {
	for to, want := range map[int]int{0: 11, 15: 15} { // 11 is usual: rulebook 2026, 4.A
		if got := (lesson.Scoring{To: to}).Points(); got != want {
			t.Errorf("Scoring{To: %d}.Points() = %d, want %d", to, got, want)
		}
	}
}

// The least surface is 30 x 60 ft (rulebook 2026, 3.A.3), 5 ft beside and 8 ft
// behind a court of 20 x 44 ft.
func TestVenueSurface(t *testing.T) {
	for _, c := range []struct {
		venue lesson.Venue
		want  court.Point
	}{
		{lesson.Venue{}, court.Pt(15, 30)},
		{lesson.Venue{BehindBaseline: 8, BesideSideline: 5}, court.Pt(15, 30)},
		{lesson.Venue{BehindBaseline: 10}, court.Pt(15, 32)},
		{lesson.Venue{BesideSideline: 2}, court.Pt(12, 30)},
	} {
		got := c.venue.Surface()
		if got.Max != c.want || got.Min != c.want.Mirror() {
			t.Errorf("%+v.Surface() = %v, want %v to %v", c.venue, got, c.want.Mirror(), c.want)
		}
	}
}

func TestTeamsAndServers(t *testing.T) {
	l := lessontest.Sample()
	if got := l.Player(game.Near2).Name; got != "Mara" {
		t.Errorf("Player(near2) = %q, want Mara", got)
	}
	for _, c := range []struct {
		end     court.End
		starter int
		want    game.Player
	}{{court.Near, 0, game.Near1}, {court.Near, 1, game.Near1}, {court.Near, 2, game.Near2}, {court.Far, 0, game.Far1}, {court.Far, 2, game.Far2}} {
		team := l.Team(c.end)
		team.Starter = c.starter
		if got := team.StarterOf(c.end); got != c.want {
			t.Errorf("StarterOf(%v) with starter %d = %v, want %v", c.end, c.starter, got, c.want)
		}
	}
	if got, ok := l.Plays[0].Server(); !ok || got != game.Far2 {
		t.Errorf("Server() = %v, %v, want far2", got, ok)
	}
	if got, ok := (lesson.Play{}).Server(); ok {
		t.Errorf("Play{}.Server() = %v, want none", got)
	}
}

func TestPlayerDefaults(t *testing.T) {
	for _, c := range []struct {
		player lesson.Player
		want   string
	}{{lesson.Player{Name: "Élan", Initials: "EL"}, "EL"}, {lesson.Player{Name: "Élan"}, "É"}, {lesson.Player{}, "?"}} {
		if got := c.player.Letters(); got != c.want {
			t.Errorf("%+v.Letters() = %q, want %q", c.player, got, c.want)
		}
	}
	if got := (lesson.Player{}).Legs(); got != movement.DefaultPace() {
		t.Errorf("Player{}.Legs() = %+v, want the default pace", got)
	}
	own := movement.Pace{TopSpeed: 3}
	if got := (lesson.Player{Pace: &own}).Legs(); got != own {
		t.Errorf("Legs() = %+v, want the player's own %+v", got, own)
	}
}

// One who looks up the page (0) has the right hand toward +x; who looks down
// the page (180) has it toward -x.
func TestForehand(t *testing.T) {
	for _, c := range []struct {
		hand   lesson.Hand
		facing units.Degrees
		want   court.Point
	}{
		{lesson.RightHanded, 0, court.Pt(1, 0)}, {lesson.LeftHanded, 0, court.Pt(-1, 0)},
		{lesson.RightHanded, 180, court.Pt(-1, 0)}, {lesson.LeftHanded, 90, court.Pt(0, 1)},
	} {
		if got := c.hand.Forehand(c.facing); got.Distance(c.want) > 1e-12 {
			t.Errorf("%v.Forehand(%v) = %v, want %v", c.hand, c.facing, got, c.want)
		}
	}
}
