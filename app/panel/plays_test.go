package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"homeside/app/looks"
	"homeside/app/session"
	"homeside/app/settings"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// lettered is a lesson whose plays are called by letters.
func lettered(letters string) lesson.Lesson {
	l := lessontest.Long(len(letters))
	for i, c := range letters {
		l.Plays[i].Title, l.Plays[i].Tags = string(c), []string{"tag-" + string(c)}
	}
	return l
}

func newTestPlays(t *testing.T, letters string) (*Plays, *session.Session, *[]string) {
	t.Helper()
	test.NewTempApp(t)
	s := session.New(lettered(letters), "", nil)
	var said []string
	p := NewPlays(s, func(*fyne.KeyEvent) {}, func(text string) { said = append(said, text) })
	w := test.NewTempWindow(t, p.Box)
	w.Resize(fyne.NewSize(240, 600))
	p.Refresh()
	return p, s, &said
}

func order(s *session.Session) string {
	out := ""
	for _, p := range s.Lesson().Plays {
		out += p.Title
	}
	return out
}

// A row that is dragged comes in where it is let go, beyond the ends at the
// ends; Escape lets it go where it was.
func TestDraggingAPlay(t *testing.T) {
	for _, c := range []struct {
		row    int
		places float32
		cancel bool
		want   string
	}{{0, 2, false, "bcad"}, {3, -2, false, "adbc"}, {1, 9, false, "acdb"}, {2, -9, false, "cabd"}, {0, 0, false, "abcd"}, {0, 2, true, "abcd"}} {
		p, s, said := newTestPlays(t, "abcd")
		list := fyne.CurrentApp().Driver().AbsolutePositionForObject(p.List)
		from := list.Y + (float32(c.row)+0.5)*p.rowHeight()
		for step := range 3 {
			p.dragged(c.row, fyne.NewPos(50, from+c.places*p.rowHeight()*float32(step)/2))
		}
		if c.cancel {
			if !p.CancelDrag() {
				t.Error("CancelDrag found no drag")
			}
		}
		p.dropped()
		if got := order(s); got != c.want {
			t.Errorf("row %d dragged by %v places: %s, want %s", c.row, c.places, got, c.want)
		}
		if last := (*said)[len(*said)-1]; last != "" {
			t.Errorf("after the drag the line says %q, want nothing", last)
		}
	}
}

// The list shows what is searched for, and the order is changed among that.
func TestSearchingPlays(t *testing.T) {
	p, s, _ := newTestPlays(t, "abcdefgh")
	if !p.search.Visible() {
		t.Error("with many plays there is no field to search in")
	}
	for i, l := 0, s.Lesson(); i < 8; i += 3 { // a, d, g
		l.Plays[i].Notes = "third"
	}
	p.search.SetText("THIRD")
	if len(p.shown) != 3 || p.found.Text != "3 of 8 plays" {
		t.Errorf("found %v, said %q, want three plays", p.shown, p.found.Text)
	}
	s.SelectPlay(6)
	p.Move(-1)
	if got := order(s); got != "abcgdefh" {
		t.Errorf("moved up among what was found: %s, want abcgdefh", got)
	}
	p.leaveSearch(true)
	if len(p.shown) != 8 || p.found.Visible() {
		t.Errorf("after Escape %d plays are listed, want all", len(p.shown))
	}
	p.Move(-1)
	if got := order(s); got != "abgcdefh" {
		t.Errorf("moved up: %s, want abgcdefh", got)
	}
}

func TestFewPlaysNeedNoSearch(t *testing.T) {
	p, _, _ := newTestPlays(t, "ab")
	if p.search.Visible() {
		t.Error("with two plays the field to search in takes room")
	}
	p.FocusSearch()
	if !p.search.Visible() {
		t.Error("asked for, the field to search in is not shown")
	}
}

// Small courts are drawn again only where a play looks otherwise.
func TestSmallCourtsAreKept(t *testing.T) {
	p, s, _ := newTestPlays(t, "abc")
	first := p.thumb(0)
	s.MovePlay(1, 2)
	if p.thumb(0) != first {
		t.Error("a play that did not change was drawn again")
	}
	l := s.Lesson().WithPlay(0, s.Lesson().Plays[1])
	s.Do("change", l)
	if p.thumb(0) == first {
		t.Error("a play that changed keeps its old picture")
	}
}

// What is ticked is imported in its lesson's order, whatever is searched for.
func TestTickingPlays(t *testing.T) {
	test.NewTempApp(t)
	var p *PlayImport
	told := ""
	p = NewPlayImport([]Source{{"one", lettered("abc")}, {"two", lettered("de")}}, func() {
		if p != nil {
			told = p.Hindered()
		}
	}, nil, nil, nil)
	titles := func() string {
		var all []string
		for _, play := range p.Plays() {
			all = append(all, play.Title)
		}
		return strings.Join(all, "")
	}
	p.tick(2)
	p.search.SetText("tag-a")
	p.tick(0)
	if titles() != "ac" || told != "" {
		t.Errorf("ticked %s, told %q, want a and c and nothing", titles(), told)
	}
	p.tick(0)
	if titles() != "c" {
		t.Errorf("ticked again: %s, want c", titles())
	}
	p.search.SetText("")
	p.from.SetSelectedIndex(1)
	if titles() != "" || told != "Tick the plays to import first." || p.note.Text != told {
		t.Errorf("another lesson: %s ticked, told %q, want nothing and that it is so", titles(), told)
	}
	p.tickAll(true)
	if titles() != "de" {
		t.Errorf("all of the other: %s, want de", titles())
	}
	p.Add(Source{"three", lettered("f")})
	p.tickAll(true)
	if titles() != "f" {
		t.Errorf("all of the one that came: %s, want f", titles())
	}
}

// The keys show one play after another, a page of them at a time, and stop at the
// ends; a play that is not listed is left for the nearest end.
func TestSteppingThroughThePlays(t *testing.T) {
	p, s, _ := newTestPlays(t, "abcdefghijklmnopqrst")
	page := max(int(p.List.Size().Height/p.rowHeight())-1, 1)
	for _, c := range []struct {
		name       string
		from, want int
		step       func()
	}{
		{"down", 0, 1, func() { p.Step(1) }},
		{"up", 1, 0, func() { p.Step(-1) }},
		{"up at the top", 0, 0, func() { p.Step(-1) }},
		{"down at the foot", 19, 19, func() { p.Step(1) }},
		{"a page down", 0, page, func() { p.Page(1) }},
		{"a page up", 19, 19 - page, func() { p.Page(-1) }},
		{"a page up near the top", 1, 0, func() { p.Page(-1) }},
	} {
		s.SelectPlay(c.from)
		p.Refresh()
		if c.step(); s.PlayIndex() != c.want {
			t.Errorf("%s: play %d, want %d", c.name, s.PlayIndex(), c.want)
		}
	}
	s.SelectPlay(0)
	p.search.SetText("tag-d")
	if p.Step(1); s.PlayIndex() != 3 {
		t.Errorf("down among what is found: play %d, want 3", s.PlayIndex())
	}
}

// A ring shows that the list has the keys.
func TestTheListOfPlaysHasTheKeys(t *testing.T) {
	p, _, _ := newTestPlays(t, "abc")
	c := fyne.CurrentApp().Driver().CanvasForObject(p.List)
	if c.Focus(p.List); !p.List.ring.Shown() {
		t.Error("the list has the keys and shows no ring")
	}
	if c.Unfocus(); p.List.ring.Shown() {
		t.Error("the list has lost the keys and shows the ring")
	}
}

// A row is as high as a long title and its tags need in the list's width, lower again
// where there is more room, and a drag knows of it.
func TestARowIsAsHighAsItsWords(t *testing.T) {
	p, s, _ := newTestPlays(t, "ab")
	s.DescribePlay(session.Described{Title: "The returner's partner stacks while the return is in the air and both move up together to the line", Tags: []string{"stack"}})
	p.Refresh()
	r := p.rows[0]
	if got, below := r.title.MinSize().Height, r.tags.Position().Y; got > below+8 {
		t.Errorf("the title is %v high, the tags begin at %v", got, below)
	}
	if low := p.rowHeight(); p.height(0) <= low || p.rowAt(low+10) != 0 || p.rowAt(p.height(0)+10) != 1 {
		t.Errorf("rows are %v and %v high; %v down is row %d", p.height(0), p.height(1), low+10, p.rowAt(low+10))
	}
	p.Box.Resize(fyne.NewSize(900, 600))
	if least := newDraggedRow().MinSize().Height; p.height(0) != least || p.List.high[0] != least {
		t.Errorf("with room for the title its row is %v high, set %v, want %v", p.height(0), p.List.high[0], least)
	}
}

// The height told from the number of a title's lines is the one that is measured,
// whatever its words, in letters of both sizes.
func TestLinesOfATitleAreToldAsTheyAreBroken(t *testing.T) {
	words := []string{"a", "of", "stack", "the", "returner's", "partner", "4-7-2:", "counterclockwise"}
	told := 0
	for _, large := range []bool{false, true} {
		p, _, _ := newTestPlays(t, "ab")
		fyne.CurrentApp().Settings().SetTheme(looks.Of(settings.Settings{LargeText: large}))
		for seed := range 300 {
			var title []string
			for k := range 1 + seed%16 {
				title = append(title, words[(seed*7+k*k*3+k*seed)%len(words)])
			}
			const width = 210
			name, play := strings.Join(title, " "), lesson.Play{Tags: []string{"tag"}}
			r := p.rowsOf(width)
			if r.lines(name) == 0 {
				continue
			}
			told++
			got := p.fit(name, play, width)
			p.row.set(name, play, nil)
			p.row.Resize(fyne.NewSize(width, r.least))
			if want := max(r.least, p.row.MinSize().Height-theme.InnerPadding()); got != want {
				t.Errorf("large %v: %q is told to have %d lines and to be %v high, measured it is %v", large, name, r.lines(name), got, want)
			}
		}
	}
	if told < 200 {
		t.Errorf("the lines of %d titles of 600 were told: the test says little", told)
	}
}
