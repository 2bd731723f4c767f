package session

import (
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/rally"
	"homeside/model/units"
)

// compare is the play that is shown beside the one shown, on one clock.
type compare struct {
	on   bool
	play int
	of   int // plays of the lesson when play was counted

	done  bool // solved and tell are of the present lesson
	other *rally.Rally
	tell  Tell
}

// Tell is which pair gives away first which of two plays it is.
type Tell struct {
	Team court.End
	formation.Tell
}

// Compare shows play i beside the one shown until StopComparing.
func (s *Session) Compare(i int) {
	if i < 0 || i >= len(s.Lesson().Plays) || i == s.play {
		return
	}
	s.compare = compare{on: true, play: i, of: len(s.Lesson().Plays)}
	s.forget()
	s.touch()
}

// StopComparing shows the play alone again.
func (s *Session) StopComparing() {
	if s.compare.on {
		s.compare = compare{}
		s.forget()
		s.touch()
	}
}

// Comparing is the number of the play that is shown beside the one shown, from
// 0; false if there is none.
func (s *Session) Comparing() (int, bool) {
	return s.compare.play, s.Compared() != nil
}

// Compared is that play, solved; nil if there is none.
func (s *Session) Compared() *rally.Rally {
	s.solveCompared()
	return s.compare.other
}

// Tell is who gives first away which of the two plays compared it is; false if
// none is compared. A Tell without a sign is of two plays that look alike.
func (s *Session) Tell() (Tell, bool) {
	s.solveCompared()
	return s.compare.tell, s.compare.other != nil
}

// OpponentsNeed says how long an opponent takes to react and to swing at another
// place; 0 is the usual. What shows later cannot be used.
func (s *Session) OpponentsNeed(t units.Seconds) {
	if t != s.needs {
		s.needs = t
		s.forget()
		s.touch()
	}
}

func (s *Session) solveCompared() {
	c := &s.compare
	if !c.on || c.done || c.play == s.play {
		return
	}
	c.done = true
	a := s.Current()
	b, err := rally.Solve(s.Lesson(), c.play)
	if a == nil || err != nil {
		return
	}
	c.other = b
	c.tell = firstTell(a, b, s.needs)
}

// firstTell is the tell of the pair that shows first: what the other pair does
// otherwise follows from it.
func firstTell(a, b *rally.Rally, needs units.Seconds) (first Tell) {
	for _, e := range court.Ends {
		t := Tell{e, formation.TellOf(a, b, e, formation.TellOptions{Needs: needs})}
		if e == court.Near || t.sooner(first) {
			first = t
		}
	}
	return first
}

// sooner says whether a pair shows before another does.
func (t Tell) sooner(than Tell) bool {
	a, shows := t.first()
	b, other := than.first()
	return shows && (!other || a.At < b.At)
}

// first is the first of the two signs.
func (t Tell) first() (formation.Sign, bool) {
	p, f := t.Place, t.Facing
	if f.Shows && (!p.Shows || f.At < p.At) {
		return f, true
	}
	return p, p.Shows
}

// forget drops what was worked out: something changed.
func (c *compare) forget() { c.done, c.other, c.tell = false, nil, Tell{} }

// inserted keeps the play compared when n plays come in before play at.
func (c *compare) inserted(at, n int) {
	if c.play >= at {
		c.play += n
	}
	c.of += n
}

// swap keeps the two plays compared when the other of them is opened.
func (c *compare) swap(opened, shown int) {
	if c.on && c.play == opened {
		c.play = shown
	}
}

// follow ends the comparing when plays have come or gone otherwise.
func (c *compare) follow(plays int) {
	if c.on && c.of != plays {
		*c = compare{}
	}
}
