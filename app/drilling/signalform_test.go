package drilling

import (
	"strings"
	"testing"

	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/roster"
)

// What cannot be drilled is said in a line, and the drill does not start.
func TestSignalFormRefuses(t *testing.T) {
	s := NewSignals(builtIn(t))
	f := s.form
	for _, c := range []struct{ often, fakes, unclear, seed, says string }{
		{"40", "60", "50", "1", "Fakes and hidden signs make 110 % together: at most 100."},
		{"140", "0", "0", "1", "Switches: want a number from 0 to 100."},
		{"40", "x", "0", "1", "Fakes: want a number from 0 to 100."},
		{"40", "0", "-1", "1", "Hidden signs: want a number from 0 to 100."},
		{"40", "0", "NaN", "1", "Hidden signs: want a number from 0 to 100."},
		{"40", "0", "0", "-3", "Seed: want a whole number, 0 or more."},
		{"40", "100", "0", "99999999999999999999999", "Seed: want a whole number, 0 or more."},
	} {
		f.often.SetText(c.often)
		f.fakes.SetText(c.fakes)
		f.unclear.SetText(c.unclear)
		f.seed.SetText(c.seed)
		s.run()
		if s.course != nil || s.wrong.Text != c.says || !s.wrong.Visible() {
			t.Errorf("%+v: started %v, says %q", c, s.course != nil, s.wrong.Text)
		}
	}
	f.fakes.SetText("10,5 %")
	f.seed.SetText("4")
	f.unclear.SetText("0")
	if s.run(); s.course == nil || s.wrong.Visible() {
		t.Errorf("mended it says %q", s.wrong.Text)
	}
}

// Choosing a meaning that another sign has swaps the two, in the lesson, as a step
// that can be undone; each pair has its own, whoever opens the lesson.
func TestMeaningsAreSwappedInTheLesson(t *testing.T) {
	o := builtIn(t)
	page := NewSignals(o)
	f := page.form
	f.means[drill.Fist].SetSelectedIndex(int(lesson.Switch))
	want := drill.Meanings{lesson.Switch, lesson.Stay, lesson.Fake}
	if got := o.Session.Lesson().Team(court.Near).Signs; got != lesson.Signs(want) || f.means[drill.OpenHand].SelectedIndex() != int(lesson.Stay) {
		t.Errorf("the lesson's signs mean %v, want %v", got, want)
	}
	o.Session.PutPair(roster.Pair{Name: "Quay Street"}, court.Far) // the window tells of every change
	page.Refresh()
	if f.meanings() != want || !strings.HasPrefix(f.pair.Options[court.Far], "Quay Street") {
		t.Errorf("after a change of the lesson the signs mean %v, want %v, and the pairs are %q", f.meanings(), want, f.pair.Options)
	}
	read, err := f.read()
	if err != nil || read.Meanings != want {
		t.Fatalf("read %v, %v", read.Meanings, err)
	}
	f.keep(read)
	if again := NewSignals(o).form; again.meanings() != want || again.seed.Text != "4" {
		t.Errorf("the next time the signs mean %v with seed %s, want %v and 4", again.meanings(), again.seed.Text, want)
	}
	f.pair.SetSelectedIndex(int(court.Far))
	if f.meanings() != drill.Usual() || f.means[drill.Fist].SelectedIndex() != int(lesson.Stay) {
		t.Errorf("the other pair means %v, want common practice", f.meanings())
	}
	f.pair.SetSelectedIndex(int(court.Near))
	o.Session.Undo()
	o.Session.Undo()
	page.Refresh()
	if f.meanings() != drill.Usual() || f.means[drill.Fist].SelectedIndex() != int(lesson.Stay) {
		t.Errorf("undone the signs mean %v, want common practice", f.meanings())
	}
}

// How often to switch is taken from a tally that tells it, by the court served
// from, and otherwise stays as typed.
func TestMixFromTheTally(t *testing.T) {
	o := builtIn(t)
	f := NewSignals(o).form
	f.often.SetText("33")
	f.fromTally()
	if !strings.Contains(f.mix.Text, "own serve only") || f.often.Text != "33" {
		t.Errorf("receiving: %q, %s", f.mix.Text, f.often.Text)
	}
	f.when.SetSelectedIndex(1)
	f.fromTally()
	if !strings.Contains(f.mix.Text, "too few rallies") || f.often.Text != "33" {
		t.Errorf("nothing counted: %q, %s", f.mix.Text, f.often.Text)
	}
	l := o.Session.Lesson()
	l.Plays, l.Match = nil, counted()
	o, _ = opened(t, l)
	f = NewSignals(o).form
	f.when.SetSelectedIndex(1)
	f.fromTally()
	if f.often.Text != "50" || !strings.Contains(f.mix.Text, "50 %") {
		t.Errorf("counted: %q, %s, want 50", f.mix.Text, f.often.Text)
	}
}

// counted is a match in which the near pair switched and stayed while the return
// went to either half from the right, each won and lost so that by hand (von
// Neumann's mixture of a matrix 0, 1, 1, 0) half and half is best.
func counted() (m lesson.Match) {
	add := func(winner court.End, did lesson.Formation, to lesson.ReturnTo) {
		m.Rallies = append(m.Rallies, lesson.MatchRally{Winner: winner, Formations: [2]lesson.Formation{court.Near: did}, Return: to})
	}
	back := func() { // the far pair serves until the near one has the serve on the right again
		add(court.Near, lesson.FormationUnsaid, lesson.ReturnUnsaid)
		add(court.Near, lesson.FormationUnsaid, lesson.ReturnUnsaid)
	}
	add(court.Far, lesson.Switched, lesson.ToMover) // second server of the game's first turn: lost
	back()
	add(court.Far, lesson.Stayed, lesson.DownLine) // lost
	add(court.Far, lesson.FormationUnsaid, lesson.ReturnUnsaid)
	back()
	add(court.Near, lesson.Switched, lesson.DownLine) // won, now from the left
	add(court.Near, lesson.FormationUnsaid, lesson.ReturnUnsaid)
	add(court.Near, lesson.Stayed, lesson.ToMover) // from the right again: won
	return m
}

// A lesson with everything in it can be set up, in either look a hand is drawn.
func TestIcons(t *testing.T) {
	o, _ := opened(t, lessontest.Sample())
	NewSignals(o)
	for sign := drill.Fist; sign < drill.Unclear; sign++ {
		got := icon(sign)
		if got == nil || len(got.Content()) < 100 || !strings.HasSuffix(got.Name(), ".day.png") {
			t.Errorf("%v has no picture in the look %v", sign, look.Daylight.Paper)
		}
	}
}
