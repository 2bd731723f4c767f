package rules

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// firstOf is the first finding with an ID.
func firstOf(all []finding.Finding, id finding.ID) finding.Finding {
	for _, f := range all {
		if f.ID == id {
			return f
		}
	}
	return finding.Finding{}
}

// Every case that has a fix is mended by it, and nothing is spoilt: the finding
// is gone, no fault has come, the old play is as it was.
func TestFixesMendTheirCases(t *testing.T) {
	for _, c := range cases {
		l := with(c.has)
		f := firstOf(found(t, l), c.id)
		p, ok := Fix(f, l, 0)
		if _, known := fixes[c.id]; known != ok {
			t.Errorf("%s: Fix = %v, want %v", c.id, ok, known)
		}
		if !reflect.DeepEqual(l, with(c.has)) {
			t.Errorf("%s: Fix has changed the lesson it was given", c.id)
		}
		if !ok {
			continue
		}
		before, after := tally(found(t, l), c.id), tally(found(t, l.WithPlay(0, p)), c.id)
		if after.same != before.same-1 || after.faults > before.faults || f.Severity == finding.Fault && after.faults == before.faults {
			t.Errorf("%s: Fix leaves %+v of %+v, want one less and no new fault", c.id, after, before)
		}
	}
}

// What a fix must do to the play.
func TestFixes(t *testing.T) {
	serverAt := func(p lesson.Play) court.Point { return p.AtServe(p.Shots[0].By).Place }
	for _, c := range []struct {
		about string
		id    finding.ID
		of    change
		want  func(p lesson.Play) bool
	}{
		{"the partner serves from the same place", finding.WrongServer, serves(game.Near2, 3.5, 0, 1, 1), func(p lesson.Play) bool {
			return p.Shots[0].By == game.Near1 && serverAt(p) == pt(3.5, -23) && p.Shots[2].By == game.Near2
		}},
		{"the partner serves from the other court to the other receiver", finding.PlaceNotServer, serves(game.Near2, -3.5, 0, 1, 1), func(p lesson.Play) bool {
			return p.Shots[0].By == game.Near1 && serverAt(p) == pt(3.5, -23) && p.Shots[1].By == game.Far2
		}},
		{"the server serves from the mirrored place", finding.WrongCourt, serves(game.Near1, -3.5, 0, 1, 1), func(p lesson.Play) bool {
			return p.Shots[0].By == game.Near1 && serverAt(p) == pt(3.5, -23)
		}},
		{"the right receiver returns from the same place", finding.WrongReceiver, returns(game.Far2), func(p lesson.Play) bool {
			return p.Shots[1].By == game.Far1 && p.AtServe(game.Far1).Place == pt(5, 8.5)
		}},
		{"the server steps back", finding.FootOnCourt, at(game.Near1, 5, -21), func(p lesson.Play) bool { return serverAt(p) == pt(5, -22.75) }},
		{"the server steps in from the sideline", finding.FootOutside, at(game.Near1, 12, -23), func(p lesson.Play) bool {
			return serverAt(p).Distance(pt(9.15, -23)) < 1e-9
		}},
		{"the serve is aimed at the nearest good place", finding.ServeOut, aim(0, -12, 25), func(p lesson.Play) bool { return p.Shots[0].Aim == pt(-9, 21) }},
		{"the serve is aimed behind the kitchen line", finding.ServeInKitchen, aim(0, -5, 5), func(p lesson.Play) bool { return p.Shots[0].Aim == pt(-5, 8) }},
		{"the partner stays behind the baseline", finding.PartnerInside, at(game.Near2, -5, -15), func(p lesson.Play) bool {
			return p.AtServe(game.Near2).Place == pt(-5, -23)
		}},
		{"the partner stands on the own side", finding.WrongSide, at(game.Near2, -5, 3), func(p lesson.Play) bool { return p.AtServe(game.Near2).Place == pt(-5, -3) }},
		{"the volley is taken behind the line", finding.KitchenVolley, volleyFrom(180, 6), func(p lesson.Play) bool {
			return p.Tracks[game.Far2][1].Place == pt(6.5, 7.25) && p.Shots[2].Meet.How == lesson.OnVolley
		}},
		{"a place is added at the contact", finding.KitchenVolley, shortDrop, func(p lesson.Play) bool {
			track := p.Tracks[game.Far2]
			return len(track) == 2 && track[1].At == lesson.At(lesson.ContactOf(3)) && track[1].Place.Y == 7.25
		}},
		{"the jump is left out", finding.FeetOffGround, func(_ *lesson.Lesson, p *lesson.Play) { p.Shots[0].Airborne = true }, func(p lesson.Play) bool { return !p.Shots[0].Airborne }},
		{"the partner makes way", finding.ServeHitsOwn, onBall(game.Near2, 0, 0.1, 0.3), func(p lesson.Play) bool {
			return p.AtServe(game.Near2).Place.Distance(with(onBall(game.Near2, 0, 0.1, 0.3)).Plays[0].AtServe(game.Near2).Place) < 1
		}},
	} {
		l := with(c.of)
		p, ok := Fix(firstOf(found(t, l), c.id), l, 0)
		if !ok || !c.want(p) {
			t.Errorf("Fix(%s) = %+v, %v, want that %s", c.id, p, ok, c.about)
		}
	}
}

// shortDrop has the third volleyed over the kitchen, from a place nobody states.
func shortDrop(_ *lesson.Lesson, p *lesson.Play) {
	p.Shots[2].Aim, p.Shots[2].Meet.Height = pt(3, 7.5), 1
}

func TestNoFix(t *testing.T) {
	l := with(call(12, 3, 1))
	f := found(t, l)[0]
	if _, ok := Fix(f, l, 0); ok {
		t.Errorf("Fix(%s) knows a way, want none", f.ID)
	}
	f.ID = finding.FootOnCourt // of another play
	for _, i := range []int{-1, 0, 1} {
		if _, ok := Fix(f, l, i); ok {
			t.Errorf("Fix(a finding that is not there, play %d) knows a way, want none", i)
		}
	}
}

// Whatever is found in whatever lesson: a fix keeps the lesson sound and takes
// the finding away.
func TestFixAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lessontest.Lessons().Draw(t, "lesson")
		l.Plays = []lesson.Play{lessontest.Plays().Draw(t, "play")} // one is enough, and solved sooner
		all := solvedAndChecked(t, l, 0)
		if len(all) == 0 {
			return
		}
		f := rapid.SampledFrom(all).Draw(t, "finding")
		p, ok := Fix(f, l, 0)
		if !ok {
			return
		}
		fixed := l.WithPlay(0, p)
		if problems := lesson.Validate(fixed); problems != nil {
			t.Fatalf("after Fix(%s) the lesson has %v, want it sound", f.ID, problems)
		}
		if got, before := tally(solvedAndChecked(t, fixed, 0), f.ID), tally(all, f.ID); got.same >= before.same {
			t.Fatalf("Fix(%s) leaves %d of %d, want fewer", f.ID, got.same, before.same)
		}
	})
}
