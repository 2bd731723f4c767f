package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
)

// checksOf is the list of checks that follows its session, and what it has said.
func checksOf(t *testing.T, l lesson.Lesson) (*Checks, *session.Session, *string) {
	t.Helper()
	test.NewTempApp(t)
	var p *Checks
	var status string
	s := session.New(l, "", func() {
		if p != nil {
			p.Refresh()
		}
	})
	p = NewChecks(s, func(text string) { status = text })
	p.Refresh()
	return p, s, &status
}

// faulty is a lesson whose server stands on the court.
func faulty() lesson.Lesson {
	l := start()
	l.Plays[0].Tracks[game.Near1][0].Place = court.Pt(3.5, -21)
	return l
}

func TestChecksOfALegalServe(t *testing.T) {
	p, _, _ := checksOf(t, start())
	if got, want := p.Title(), "Checks: 1 word of advice"; got != want || p.none.Visible() {
		t.Errorf("an ordinary serve: %q, nothing shown %v, want %q", got, p.none.Visible(), want)
	}
	p, _, _ = checksOf(t, lesson.Lesson{})
	if got, want := p.Title(), "Checks: nothing found"; got != want || !p.none.Visible() {
		t.Errorf("no play: %q, nothing shown %v, want %q", got, p.none.Visible(), want)
	}
}

// The worst comes first with its number, its words and its rule.
func TestChecksListTheWorstFirst(t *testing.T) {
	p, s, _ := checksOf(t, faulty())
	if got := s.Findings()[0].ID; got != finding.FootOnCourt {
		t.Fatalf("the worst finding is %s, want %s", got, finding.FootOnCourt)
	}
	row := p.rows[0]
	if got := row.text.Text; row.number != "1" || !strings.HasPrefix(got, "Fault: ") || !strings.HasSuffix(got, "(USAP 2026 7.A.2)") {
		t.Errorf("row %s says %q, want 1, Fault: ... (USAP 2026 7.A.2)", row.number, got)
	}
	if !strings.HasPrefix(p.Title(), "Checks: 1 fault") || p.none.Visible() {
		t.Errorf("the title is %q, want Checks: 1 fault ...", p.Title())
	}
}

// A click shows the finding's moment and says whom it concerns.
func TestChecksJump(t *testing.T) {
	p, s, status := checksOf(t, faulty())
	s.Seek(2)
	test.Tap(p.rows[0].text)
	if got := s.Now(); got != 0 {
		t.Errorf("after a click the moment is %v, want the serve's", got)
	}
	if !strings.HasPrefix(*status, "0.00 s: Ivo touches the court") {
		t.Errorf("the status line says %q, want the time and that Ivo touches the court", *status)
	}
}

// A fix mends the play, and the status line no longer says what was wrong.
func TestChecksFix(t *testing.T) {
	p, s, status := checksOf(t, faulty())
	test.Tap(p.rows[0].text)
	test.Tap(p.rows[0].fix)
	if finding.Faults(s.Findings()) || *status != "" || !strings.HasPrefix(p.rows[0].text.Text, "Advice: ") {
		t.Errorf("fixed: %+v, status %q, first row %q, want no fault and nothing said", s.Findings(), *status, p.rows[0].text.Text)
	}
}

// The list follows the hand while it drags, and shrinks again.
func TestChecksFollowADrag(t *testing.T) {
	p, s, _ := checksOf(t, start())
	l, _ := s.PlaceAt(game.Near1, court.Pt(3.5, -21))
	s.Preview(l)
	if got := p.rows[0].text.Text; !strings.HasPrefix(got, "Fault: ") || p.rows[0].fix.Visible() {
		t.Errorf("a server dragged over the baseline: %q, fix offered %v, want a fault and no fix under the hand", got, p.rows[0].fix.Visible())
	}
	s.Cancel()
	if got := p.rows[0].text.Text; !strings.HasPrefix(got, "Advice: ") || shown(p) != 1 {
		t.Errorf("after Escape the list shows %q first in %d rows, want one advice", got, shown(p))
	}
}

// shown counts the rows that can be seen.
func shown(p *Checks) (n int) {
	for _, row := range p.rows {
		if row.box.Visible() {
			n++
		}
	}
	return n
}
