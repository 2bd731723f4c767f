package drilling

import (
	"bytes"
	"image"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/heard"
	"homeside/app/rehearsal"
	"homeside/canvas/look"
	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/game"
	"homeside/model/lesson"
)

// texts are the answers on the buttons shown.
func (a *answers) texts() []string {
	var all []string
	for n := 1; a.button(n) != nil; n++ {
		all = append(all, a.button(n).Text)
	}
	return all
}

// A reader goes through questions by keys alone: answered by a digit, by a
// clicker, looked at again.
func TestReaderByKeys(t *testing.T) {
	o, said := opened(t, exporttest.BuiltIn(t))
	s := NewSignals(o)
	if s.Key(&fyne.KeyEvent{Name: fyne.Key1}) {
		t.Error("a digit answers before there is a question")
	}
	press(t, s.sheet, fyne.KeyReturn)
	if s.course == nil || s.form.box.Visible() && s.sheet.form.Visible() || !s.drill.Visible() {
		t.Fatal("Enter does not start the drill")
	}
	c := s.course.(*signalCourse)
	if got := s.answers.texts(); !slices.Equal(got, []string{"1  Stay", "2  Switch", "3  Fake"}) {
		t.Errorf("the answers are %q", got)
	}
	if b := s.stage.board; b.sign == nil || *b.sign != c.now().ask.Sign || b.film != nil || !strings.Contains(b.text(), "Just before the serve") {
		t.Errorf("asked, the board shows %v and %q", b.sign, b.text())
	}
	press(t, s.sheet, digit(int(c.now().ask.Meaning)+1))
	if b := s.stage.board; c.now().outcome != right || b.film == nil || !strings.Contains(b.text(), "Right.") || !strings.Contains(b.text(), "In a row: 1") || len(s.answers.texts()) != 0 {
		t.Errorf("answered: %v, %q, answers %q", c.now().outcome, b.text(), s.answers.texts())
	}
	press(t, s.sheet, fyne.KeyPageDown, fyne.KeyPageDown)
	if got := s.answers.texts(); c.now().outcome != shown || !slices.Equal(got, []string{"1  It was right", "2  It was wrong"}) {
		t.Errorf("after two clicks: %v, answers %q", c.now().outcome, got)
	}
	press(t, s.sheet, fyne.Key2)
	if b := s.stage.board.text(); c.now().outcome != wrong || !strings.Contains(b, "Wrong.") || strings.Contains(b, "The answer was") {
		t.Errorf("said to be wrong: %v, %q", c.now().outcome, b)
	}
	press(t, s.sheet, fyne.KeyPageUp)
	if s.next.Text != "Question after" || !strings.Contains(s.stage.board.text(), "Right.") {
		t.Errorf("back: the next button says %q, the board %q", s.next.Text, s.stage.board.text())
	}
	press(t, s.sheet, fyne.KeySpace, fyne.KeySpace, fyne.KeyS)
	if s.course != nil || s.drill.Visible() || !s.sheet.form.Visible() || s.form.seed.Text != "4" {
		t.Errorf("S does not go back to what is set up, with the next seed: %s", s.form.seed.Text)
	}
	if all := strings.Join(*said, "\n"); !strings.Contains(all, "drill signals 2 ") || !strings.Contains(all, "wrong run=0 best=1 right=1 of 2") {
		t.Errorf("said %s", all)
	}
	s.Close()
}

func digit(n int) fyne.KeyName { return fyne.KeyName(rune('0' + n)) }

// What was answered instead is said; an own meaning counts.
func TestWrongAnswerIsSaid(t *testing.T) {
	s := NewSignals(builtIn(t))
	s.form.fakes.SetText("0")
	s.form.unclear.SetText("0")
	s.form.often.SetText("100")
	s.form.means[drill.Fist].SetSelectedIndex(int(lesson.Switch))
	s.run()
	if got := s.answers.texts(); len(got) != 2 {
		t.Errorf("without fakes the answers are %q", got)
	}
	press(t, s.sheet, fyne.Key1)
	got := s.stage.board.text()
	for _, want := range []string{"Wrong.", "Switch", "Closed fist means: Switch.", "The answer was: Stay."} {
		if !strings.Contains(got, want) {
			t.Errorf("the board says %q, want %q", got, want)
		}
	}
}

// A giver picks a hand by a button or a digit, or makes the sign for real.
func TestGiver(t *testing.T) {
	s := NewSignals(builtIn(t))
	s.form.role.SetSelectedIndex(int(drill.Giver))
	s.run()
	c := s.course.(*signalCourse)
	if got := s.answers.texts(); !slices.Equal(got, []string{"1  Closed fist", "2  Open hand", "3  Two fingers", "4  Made it for real"}) || s.answers.button(1).Icon == nil {
		t.Errorf("the answers are %q", got)
	}
	if b := s.stage.board; b.sign != nil || !strings.Contains(b.text(), "behind your back") {
		t.Errorf("the board shows the sign %v and %q", b.sign, b.text())
	}
	test.Tap(s.answers.button(int(c.now().ask.Sign) + 1))
	if b := s.stage.board; c.now().outcome != right || b.sign == nil || b.film != nil {
		t.Errorf("picked the right hand: %v, sign %v", c.now().outcome, b.sign)
	}
	test.Tap(s.next)
	press(t, s.sheet, fyne.Key4)
	if c.now().outcome != shown || s.stage.board.sign == nil {
		t.Errorf("made for real: %v", c.now().outcome)
	}
	press(t, s.sheet, fyne.Key1)
	if got := c.drill.Streak(); got != (drill.Streak{Asked: 2, Right: 2, Run: 2, Best: 2}) {
		t.Errorf("the count is %+v", got)
	}
	test.Tap(s.before)
	test.Tap(s.edit)
	if s.course != nil {
		t.Error("the drill goes on under what is set up")
	}
}

// The score drill by keys: half an answer is marked, a whole one is judged and
// explained.
func TestScoresByKeys(t *testing.T) {
	o := builtIn(t)
	s := NewScores(o)
	s.form.pair.SetSelectedIndex(int(court.Far))
	press(t, s.sheet, fyne.KeyPageDown)
	c := s.course.(*scoreCourse)
	a := c.now().ask
	board := s.stage.board.text()
	for _, want := range []string{a.State.Call().String(), "calls the score", "Started: ", c.lesson.NameOfTeam(court.Near), c.lesson.NameOfTeam(court.Far)} {
		if !strings.Contains(board, want) {
			t.Errorf("the board says %q, want %q", board, want)
		}
	}
	serves, stands := digit(a.Answer().Server.Number()), digit(2+a.Answer().Right.Number())
	press(t, s.sheet, serves)
	if b := s.answers.button(a.Answer().Server.Number()); b.Importance == 0 || s.stage.board.film != nil {
		t.Error("half an answer is not marked")
	}
	press(t, s.sheet, stands)
	if b := s.stage.board; c.now().outcome != right || b.film == nil || !b.film.still || !strings.Contains(b.text(), "score: ") {
		t.Errorf("answered: %v, %q", c.now().outcome, b.text())
	}
	press(t, s.sheet, fyne.KeySpace)
	a = c.now().ask
	press(t, s.sheet, digit(3-a.Answer().Server.Number()), digit(2+a.Answer().Right.Number()))
	want := c.lesson.NameOf(a.Answer().Server) + " serves, not " + c.lesson.NameOf(a.Answer().Server.Partner())
	if got := s.stage.board.text(); !strings.Contains(got, want) || !strings.Contains(got, "In a row: 0 · Best: 1 · Right: 1 of 2") {
		t.Errorf("the board says %q, want %q", got, want)
	}
	for _, k := range []fyne.KeyName{fyne.KeyLeft, fyne.KeyP, fyne.KeyV, fyne.KeyEscape, fyne.Key7} {
		if s.Key(&fyne.KeyEvent{Name: k}) {
			t.Errorf("%s does something on a still court", k)
		}
	}
}

// Partners whose names begin alike are told apart on the buttons.
func TestNamesThatBeginAlike(t *testing.T) {
	l := exporttest.BuiltIn(t)
	for i, initials := range []string{"Ma", "Mb"} {
		l = l.WithPlayer(game.PlayerOf(court.Near, i+1), lesson.Player{Name: "Maximiliana of the " + initials, Initials: initials})
	}
	o, _ := opened(t, l)
	s := NewScores(o)
	s.run()
	if got := s.answers.texts(); got[2] != "3  Ma" || got[3] != "4  Mb" {
		t.Errorf("the answers are %q, want the initials for the last two", got)
	}
}

// Without names, in every scoring, the drills ask and explain.
func TestAnyLesson(t *testing.T) {
	for _, f := range game.Formats {
		o, _ := opened(t, lesson.Lesson{Scoring: lesson.Scoring{Format: f, To: 15}})
		scores, signals := NewScores(o), NewSignals(o)
		if got := scores.form.about.Text; !strings.Contains(got, "to 15") || !strings.Contains(got, "without a name") {
			t.Errorf("%v: %q", f, got)
		}
		press(t, scores.sheet, fyne.KeyReturn)
		press(t, signals.sheet, fyne.KeyReturn)
		for range 12 {
			press(t, scores.sheet, fyne.KeyPageDown)
			press(t, signals.sheet, fyne.KeyPageDown)
			for _, s := range []*sheet{scores.sheet, signals.sheet} {
				if b := s.stage.board; strings.Contains(b.text(), "%!") || b.text() == "" {
					t.Errorf("%v: %q", f, b.text())
				}
				inRoom(t, f.String(), s.stage.board.scene(1280, 560, &look.Daylight))
			}
		}
	}
}

// A button hands on the keys it has no use for, and gives the keys away when it
// goes.
func TestButtonsHandOnKeys(t *testing.T) {
	var unused []string
	s := NewSignals(builtIn(t))
	w := test.NewTempWindow(t, nil)
	w.SetContent(heard.NewWindow(s.Content(), func(k *fyne.KeyEvent) bool {
		if !s.Key(k) {
			unused = append(unused, string(k.Name))
		}
		return true
	}))
	w.Resize(fyne.NewSize(1280, 800))
	w.Canvas().Focus(s.start)
	s.start.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if w.Canvas().Focused() != fyne.Focusable(s.next) {
		t.Errorf("started by its button, the keys are on %T, want the next button", w.Canvas().Focused())
	}
	b := s.answers.button(1)
	w.Canvas().Focus(b)
	b.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	b.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	c := s.course.(*signalCourse)
	if !slices.Equal(unused, []string{"Escape"}) || !c.now().judged() || w.Canvas().Focused() != fyne.Focusable(s.next) {
		t.Errorf("unused %q, judged %v, the keys are on %T", unused, c.now().judged(), w.Canvas().Focused())
	}
	s.next.TypedKey(&fyne.KeyEvent{Name: fyne.KeyPageDown})
	s.next.TypedKey(&fyne.KeyEvent{Name: fyne.Key1})
	if c.at != 1 || !c.now().judged() {
		t.Errorf("from the next button: question %d, judged %v, want 1 and judged", c.at, c.now().judged())
	}
	for name, o := range s.Named() {
		if o == nil || !o.Visible() {
			t.Errorf("the control %s is not there", name)
		}
	}
}

// With reduced motion the film stands and is stepped; else it runs, and pauses.
func TestFilmMotion(t *testing.T) {
	for _, reduced := range []bool{false, true} {
		o := builtIn(t)
		o.Reduced = func() bool { return reduced }
		s := NewSignals(o)
		press(t, s.sheet, fyne.KeyReturn, fyne.KeyPageDown)
		f := s.stage.board.film
		if f.passing() == reduced || strings.Contains(s.keys.Text, "P: pause") == reduced {
			t.Errorf("reduced %v: passing %v, keys %q", reduced, f.passing(), s.keys.Text)
		}
		was := f.moment()
		press(t, s.sheet, fyne.KeyRight)
		if f.moment() <= was || f.passing() || f.run.Phase() != rehearsal.Running {
			t.Errorf("reduced %v: stepped from %v to %v, passing %v", reduced, was, f.moment(), f.passing())
		}
		if paused := s.Key(&fyne.KeyEvent{Name: fyne.KeyP}); paused == reduced || f.passing() == reduced {
			t.Errorf("reduced %v: P does something: %v, passing %v", reduced, paused, f.passing())
		}
		s.Close()
		if s.stage.board.film != nil {
			t.Error("closed, there is a film left to run")
		}
	}
}

// Every state is painted in every size, another one otherwise.
func TestPaint(t *testing.T) {
	o, said := opened(t, exporttest.BuiltIn(t))
	s := NewSignals(o)
	press(t, s.sheet, fyne.KeyReturn)
	var before []byte
	for _, k := range []fyne.KeyName{fyne.KeyPageUp, fyne.KeyPageDown, fyne.Key1, fyne.KeyV} {
		press(t, s.sheet, k)
		for _, size := range boardSizes {
			img := s.stage.paint(size[0], size[1]).(*image.RGBA)
			if size == boardSizes[0] && k != fyne.KeyPageUp && bytes.Equal(before, img.Pix) {
				t.Errorf("after %s the picture is as before", k)
			}
			if size == boardSizes[0] {
				before = bytes.Clone(img.Pix)
			}
		}
	}
	if !slices.ContainsFunc(*said, func(l string) bool { return strings.HasPrefix(l, "painted drill signals 1 ") }) {
		t.Errorf("said %q", *said)
	}
}

// Letters grow on a larger page, within bounds, and a field from which the drill
// is started does not keep the keys.
func TestPageGrows(t *testing.T) {
	s := NewScores(builtIn(t))
	w := test.NewTempWindow(t, s.Content())
	w.SetPadded(false)
	for _, c := range []struct {
		w, h, grown float32
	}{{1280, 760, 1}, {640, 480, 1}, {1920, 1040, 1.3}, {3840, 2160, mostGrown}, {3840, 780, 1}, {1280, 760, 1}} {
		w.Resize(fyne.NewSize(c.w, c.h))
		if s.grown != c.grown {
			t.Errorf("on %v x %v letters grow by %v, want %v", c.w, c.h, s.grown, c.grown)
		}
	}
	w.Canvas().Focus(s.form.seed)
	s.form.seed.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if s.course == nil || w.Canvas().Focused() != fyne.Focusable(s.next) {
		t.Errorf("started from a field: %v, the keys are on %T", s.course != nil, w.Canvas().Focused())
	}
	press(t, s.sheet, fyne.KeyS)
	if w.Canvas().Focused() != fyne.Focusable(s.start) {
		t.Errorf("set up again the keys are on %T", w.Canvas().Focused())
	}
}
