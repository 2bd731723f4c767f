package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/plan"
	"homeside/model/signal"
)

// planned is an open page that follows its session, as in the window.
func planned(t *testing.T, l lesson.Lesson, events MatchPlanEvents) (*MatchPlan, *session.Session) {
	t.Helper()
	test.NewTempApp(t)
	var p *MatchPlan
	s := session.New(l, "", func() {
		if p != nil {
			p.Refresh()
		}
	})
	p = NewMatchPlan(s, events)
	p.Open()
	return p, s
}

// lefty is the start with Mara playing left-handed.
func lefty() lesson.Lesson {
	l := start()
	mara := l.Player(game.Near2)
	mara.Hand = lesson.LeftHanded
	return l.WithPlayer(game.Near2, mara)
}

// row is a line of the table as it is read.
func (t *planTable) row(i int) string {
	var cells []string
	for col := range planColumns {
		cells = append(cells, t.text(widget.TableCellID{Row: i, Col: col}))
	}
	return strings.Join(cells, "; ")
}

// A goal chosen from the list is one step, and the table follows.
func TestAGoalSetsSides(t *testing.T) {
	p, s := planned(t, lefty(), MatchPlanEvents{})
	if got, want := p.table.row(0), "either; ordinary places"; !strings.Contains(got, want) {
		t.Errorf("without wishes the first row is %q, want %q in it", got, want)
	}
	p.goal.SetSelected("Forehands in the middle")
	if name, _ := s.CanUndo(); name != "sides for forehands in the middle" || s.Lesson().Player(game.Near2).Serving != lesson.WantRight {
		t.Errorf("the goal made the step %q and Mara wants %v, want the right", name, s.Lesson().Player(game.Near2).Serving)
	}
	if got, want := p.table.row(0), "Serving, even; Ivo serves, right; Mara | Ivo; Ivo | Mara; stacked;"; !strings.HasPrefix(got, want) {
		t.Errorf("the first row is %q, want it to begin with %q", got, want)
	}
	if p.goal.Selected != "" {
		t.Errorf("the goal stays chosen as %q, want none: it is done", p.goal.Selected)
	}
}

// Only goals that lead to sides are offered: of two right-handers somebody has
// to be named.
func TestGoalsOffered(t *testing.T) {
	p, _ := planned(t, start(), MatchPlanEvents{})
	want := "Ivo's forehand in the middle; Mara's forehand in the middle; Ivo on the left; Mara on the left; Less running: nobody changes sides; " +
		"Hide Ivo: the partner takes the middle; Hide Mara: the partner takes the middle"
	if got := strings.Join(p.goal.Options, "; "); got != want {
		t.Errorf("the goals are %q, want %q", got, want)
	}
	l, _ := planned(t, lefty(), MatchPlanEvents{})
	if got, want := l.goal.Options[0], "Forehands in the middle"; got != want {
		t.Errorf("the first goal with a left-hander is %q, want %q", got, want)
	}
}

func TestPolicyAndTeam(t *testing.T) {
	l := plan.Pair{Lesson: start(), Team: court.Far}.With([2]lesson.Want{lesson.WantLeft, lesson.WantRight}).Lesson
	p, _ := planned(t, l, MatchPlanEvents{})
	p.team.SetSelected("Fernmoor")
	stacks := func() float64 { return p.table.plan.Stacks }
	full := stacks()
	p.policy.SetSelectedIndex(1)
	if got, want := p.policy.Selected, "Three-quarter: on every serve, and on the returns of Oskar"; got != want {
		t.Errorf("the second policy is %q, want %q", got, want)
	}
	part := stacks()
	p.policy.SetSelectedIndex(len(session.Policies) - 1)
	if none := stacks(); !(full > part && part > none && none == 0) {
		t.Errorf("stacks: full %v, three-quarter %v, none %v, want falling to 0", full, part, none)
	}
	if got := p.table.importance(widget.TableCellID{Row: 0, Col: formationColumn}); got != widget.WarningImportance {
		t.Errorf("a row that is not as wanted has importance %v, want %v", got, widget.WarningImportance)
	}
}

// A chance that is none is refused in a plain line, the table is empty, and
// nothing can be written.
func TestBadChance(t *testing.T) {
	p, s := planned(t, lefty(), MatchPlanEvents{})
	for text, want := range map[string]string{
		"150": `"150": want a number from 0 to 100, in percent.`, "": `"": want a number from 0 to 100, in percent.`,
	} {
		p.chances[court.Near].SetText(text)
		p.chances[court.Near].commit()
		if p.line.Text != want || !p.write.Disabled() || len(p.table.plan.Rows) != 0 {
			t.Errorf("%q: the page says %q, can write %v, %d rows; want %q and nothing", text, p.line.Text, !p.write.Disabled(), len(p.table.plan.Rows), want)
		}
	}
	p.chances[court.Near].SetText("60 %")
	p.chances[court.Near].commit()
	if p.line.Text != "" || p.write.Disabled() || p.table.plan.Win <= 0.5 {
		t.Errorf("60 %%: the page says %q with %v to win, want nothing and more than a half", p.line.Text, p.table.plan.Win)
	}
	if _, ok := s.CanUndo(); ok {
		t.Error("typing a chance made a step")
	}
}

func TestBothWantOneSide(t *testing.T) {
	l := plan.Pair{Lesson: start()}.With([2]lesson.Want{lesson.WantRight, lesson.WantRight}).Lesson
	p, _ := planned(t, l, MatchPlanEvents{})
	if !strings.Contains(p.line.Text, "wanted sides clash") || !p.write.Disabled() {
		t.Errorf("both want the right: the page says %q and can write %v, want the clash and no", p.line.Text, !p.write.Disabled())
	}
}

// The whole match is written, and a click on a row opens its play on the court.
func TestARowOpensItsPlay(t *testing.T) {
	closed := 0
	p, s := planned(t, lefty(), MatchPlanEvents{Close: func() { closed++ }})
	p.goal.SetSelected("Forehands in the middle")
	p.table.selected(widget.TableCellID{Row: 6})
	if closed != 0 || !strings.HasPrefix(p.line.Text, "The lesson has no play of this yet") {
		t.Errorf("a row without a play: closed %d times, the page says %q, want open with the reason", closed, p.line.Text)
	}
	test.Tap(p.write)
	if got, want := p.line.Text, "8 plays added to the lesson."; got != want {
		t.Errorf("after writing the page says %q, want %q", got, want)
	}
	p.table.selected(widget.TableCellID{Row: 6})
	play, _ := s.Play()
	if closed != 1 || p.Shown() || !strings.Contains(play.Title, "Ivo receives from the left") {
		t.Errorf("row 6 opens %q, closed %d times; want Ivo receiving from the left, once", play.Title, closed)
	}
	test.Tap(p.write) // hidden, but nothing is written twice
	if got := len(s.Lesson().Plays); got != 9 {
		t.Errorf("written twice: %d plays, want 9", got)
	}
}

func TestNobodySwaps(t *testing.T) {
	l := lefty()
	l.Scoring.Format = game.RallyFixed
	p, _ := planned(t, l, MatchPlanEvents{})
	if !strings.Contains(p.table.say.Text, "choose your sides before 0-0") || p.table.plan.Stacks != 0 {
		t.Errorf("rally-fixed: %v stacks and %q, want none and to choose sides", p.table.plan.Stacks, p.table.say.Text)
	}
}

// A page that is not shown does nothing.
func TestHiddenPageRests(t *testing.T) {
	p, s := planned(t, lefty(), MatchPlanEvents{})
	p.Close()
	made := p.made
	if err := s.RallyWon(court.Near); err != nil {
		t.Fatal(err)
	}
	if p.made != made {
		t.Errorf("the hidden page was made for revision %d, want still %d", p.made, made)
	}
}

func TestViews(t *testing.T) {
	p, _ := planned(t, lefty(), MatchPlanEvents{})
	for i, b := range p.views.buttons {
		test.Tap(b)
		for j, o := range p.views.stack.Objects {
			if o.Visible() != (i == j) {
				t.Errorf("view %d chosen: view %d is visible %v", i, j, o.Visible())
			}
		}
	}
	one := p.start.compare.bars.Sections
	if len(one) != 4 || one[1].Bars[0].Value != p.table.plan.Starters[0].Stacks {
		t.Errorf("the starters' chart is %+v, want four sections with the plan's stacks", one)
	}
	margins := p.start.margins.bars.Sections
	if got := len(margins[0].Bars) + len(margins[1].Bars); got != len(p.table.plan.Rows) {
		t.Errorf("the margins' chart has %d bars, want one for each of %d rows", got, len(p.table.plan.Rows))
	}
}

// typed types into the field of a chance.
func typed(e *commitEntry, text string) {
	e.SetText(text)
	e.commit()
}

func TestSignalMix(t *testing.T) {
	var name, saved string
	p, _ := planned(t, start(), MatchPlanEvents{Save: func(n, text string) { name, saved = n, text }})
	s := p.signals
	if !strings.Contains(s.say.Text, "invented") {
		t.Errorf("before anything is typed the mix says %q, want that its chances are invented", s.say.Text)
	}
	// Matching pennies: half and half, worth half (von Neumann 1928).
	for _, do := range signal.Actions {
		for _, aim := range signal.Aims {
			typed(s.chances[do][aim], map[bool]string{true: "100", false: "0"}[int(do) == int(aim)])
		}
	}
	if got, want := s.say.Text, "Switch 50.0 % of the time, in no order: you win 50.0 % of the rallies wherever they aim."; !strings.HasPrefix(got, want) {
		t.Errorf("matching pennies: %q, want %q", got, want)
	}
	typed(s.length, "12")
	tap(t, boxed(s.keep), "Save the signals…")
	if lines := strings.Split(strings.TrimSpace(saved), "\n"); name != "signals.txt" || len(strings.Fields(lines[len(lines)-1])) != 3 {
		t.Errorf("twelve signals are kept in %q as\n%s\nwant two in the last line", name, saved)
	}
	for field, text := range map[*commitEntry]string{s.length: "0", s.seed: "-1", s.chances[0][0]: "x"} {
		before := field.Text
		typed(field, text)
		if s.wrong.Text == "" || !s.keep.Disabled() {
			t.Errorf("%q typed: the mix says %q and can save %v, want a reason and no", text, s.wrong.Text, !s.keep.Disabled())
		}
		typed(field, before)
	}
}

func boxed(o fyne.CanvasObject) *fyne.Container {
	return &fyne.Container{Objects: []fyne.CanvasObject{o}}
}

// The tally's counts fill the chances and stand beside them.
func TestSignalsFromTheTally(t *testing.T) {
	p, s := planned(t, start(), MatchPlanEvents{})
	tap(t, boxed(p.signals.take), "Take them from the tally")
	if !strings.HasPrefix(p.signals.wrong.Text, "The match has no rally serving from the right") {
		t.Errorf("without a match: %q, want that there is no such rally", p.signals.wrong.Text)
	}
	s.NoteFormation(court.Near, lesson.Switched)
	s.NoteReturn(lesson.ToMover)
	if err := s.RallyWon(court.Near); err != nil {
		t.Fatal(err)
	}
	tap(t, boxed(p.signals.take), "Take them from the tally")
	count, err := signal.TallyOf(s.Lesson(), court.Near, court.Right)
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, do := range signal.Actions {
		for _, aim := range signal.Aims {
			if count[do][aim].Rallies == 0 {
				continue
			}
			found++
			if got := p.signals.counted[do][aim].Text; p.signals.chances[do][aim].Text != "100" || !strings.HasPrefix(got, "1 of 1: ") {
				t.Errorf("one rally won of one: %s %%, %q, want 100 and 1 of 1", p.signals.chances[do][aim].Text, got)
			}
		}
	}
	if found != 1 {
		t.Errorf("the tally counts %d chances, want the one noted", found)
	}
}

// Score by score: a call that is typed finds its serves, and a click opens the
// play at that very score or else that of its situation.
func TestScoreByScore(t *testing.T) {
	p, s := planned(t, lefty(), MatchPlanEvents{})
	p.goal.SetSelected("Forehands in the middle")
	test.Tap(p.write)
	all := len(p.scores.states)
	if all != len(p.table.plan.States) || all < 500 {
		t.Fatalf("without a call %d serves are shown, want all %d", all, len(p.table.plan.States))
	}
	p.scores.find.SetText("0-0-2")
	var row []string
	for col := range scoreWidths {
		row = append(row, p.scores.text(widget.TableCellID{Col: col}))
	}
	if got, want := strings.Join(row[:4], "; "), "0-0-2; Ivo, right, to Oskar; stacked; Ivo | Mara"; got != want || row[6] != "1" {
		t.Errorf("the first serve is %q with play %s, want %q with play 1, which was there before", got, row[6], want)
	}
	// At 7-5-1 Ivo, who started, is on the left if he serves: 7 is odd.
	p.scores.find.SetText("7-5-1")
	found := false
	for i, st := range p.scores.states {
		if st.State.Server() == game.Near1 {
			found = true
			if got, want := p.scores.text(widget.TableCellID{Row: i, Col: 1}), "Ivo, left, to "; !strings.HasPrefix(got, want) {
				t.Errorf("7-5-1 is served as %q, want %q", got, want)
			}
			p.scores.selected(widget.TableCellID{Row: i})
			if play, _ := s.Play(); !strings.Contains(play.Title, "Ivo serves from the left") || p.Shown() {
				t.Errorf("a click at 7-5-1 opens %q, want Ivo serving from the left", play.Title)
			}
		}
	}
	if !found {
		t.Errorf("no serve of Ivo's at 7-5-1 among %d", len(p.scores.states))
	}
	p.scores.find.SetText("12-3")
	if got, want := p.scores.found.Text, "No game comes to this score."; got != want || len(p.scores.states) != 0 {
		t.Errorf("12-3: %q with %d serves, want %q", got, len(p.scores.states), want)
	}
}

// The longest names that a lesson allows do not make the page wider than the window.
func TestLongNames(t *testing.T) {
	l := start()
	for _, e := range court.Ends {
		l.Teams[e].Name = strings.Repeat("W", lesson.MaxName)
		for i := range l.Teams[e].Players {
			l.Teams[e].Players[i].Name = strings.Repeat("M", lesson.MaxName)
		}
	}
	p, _ := planned(t, l, MatchPlanEvents{})
	for i := range p.views.buttons {
		p.views.choose(i)
		if got := p.Box.MinSize(); got.Width > 1270 || got.Height > 740 {
			t.Errorf("with long names view %d needs %v, want at most 1270 x 740", i, got)
		}
	}
}

// A lesson without names, plays or wishes can be planned and written.
func TestEmptyLesson(t *testing.T) {
	p, s := planned(t, lesson.Lesson{}, MatchPlanEvents{})
	test.Tap(p.write)
	if got, want := p.line.Text, "8 plays added to the lesson."; got != want || len(s.Lesson().Plays) != 8 || s.PlayIndex() != 0 {
		t.Errorf("the empty lesson: %q with %d plays, shown %d; want %q", got, len(s.Lesson().Plays), s.PlayIndex(), want)
	}
	if got, want := p.table.row(0), "Serving, even; near1 serves, right; near2 | near1; either; ordinary places;"; !strings.HasPrefix(got, want) {
		t.Errorf("the first row is %q, want %q", got, want)
	}
}

// Legs that cannot change sides in time are told so.
func TestTooSlowToStack(t *testing.T) {
	l := plan.Pair{Lesson: lefty()}.With([2]lesson.Want{lesson.WantLeft, lesson.WantRight}).Lesson
	slow, ok := movement.PresetByKey("wheelchair")
	for _, id := range game.Players {
		who := l.Player(id)
		who.Pace = &slow.Pace
		l = l.WithPlayer(id, who)
	}
	p, _ := planned(t, l, MatchPlanEvents{})
	if !ok || !strings.Contains(p.table.say.Text, "do not change sides there with these legs") {
		t.Errorf("slow legs: %q, want the advice not to change sides", p.table.say.Text)
	}
	for i, r := range p.table.plan.Rows {
		late := *r.Margin < 0
		if got := p.table.importance(widget.TableCellID{Row: i, Col: marginColumn}) == widget.DangerImportance; got != late {
			t.Errorf("row %d with %v s is marked %v, want %v", i, *r.Margin, got, late)
		}
	}
}
