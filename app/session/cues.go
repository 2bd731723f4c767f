package session

import (
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// How long a new cue is shown: our choice, a line read aloud, a look at a hand.
const (
	captionTime units.Seconds = 2.5
	signalTime  units.Seconds = 1
)

// NewCue is a cue of a kind that begins at the moment shown, not yet in the play;
// false without a play. A signal is given by the receiver's partner, who stands
// at the kitchen line, until something else is said.
func (s *Session) NewCue(k lesson.CueKind) (lesson.Cue, bool) {
	r := s.Current()
	if r == nil {
		return lesson.Cue{}, false
	}
	long := captionTime
	c := lesson.Cue{Kind: k}
	if k == lesson.Signal {
		long = signalTime
		c.Giver = giver(r)
		c.Reader, c.Meaning = c.Giver.Partner(), lesson.Switch
	}
	from := max(min(s.now, r.To-leastCue), r.From)
	c.Span = lesson.Span{From: s.anchorAt(r, from), To: s.anchorAt(r, min(from+long, r.To))}
	return c, true
}

// giver is who gives signals most often: the partner of who returns.
func giver(r *rally.Rally) game.Player {
	if len(r.Strokes) > 1 {
		return r.Strokes[1].By.Partner()
	}
	return game.PlayerOf(r.Strokes[0].By.Team().Other(), 1)
}

// anchorAt is what a time hangs on: the event that is then, or the last contact.
func (s *Session) anchorAt(r *rally.Rally, t units.Seconds) lesson.Anchor {
	a, _, _ := Retime{rally: r}.anchor(t, sameMoment)
	return a
}

// AnchorAt is what a time of the play shown hangs on; the zero Anchor without a play.
func (s *Session) AnchorAt(t units.Seconds) lesson.Anchor {
	if r := s.Current(); r != nil {
		return s.anchorAt(r, t)
	}
	return lesson.Anchor{}
}

// AddCue adds a cue to the play shown as one named step and chooses it.
func (s *Session) AddCue(name string, c lesson.Cue) {
	p, ok := s.saved()
	if !ok {
		return
	}
	s.Do(name, edit.ReplacePlay(s.history.Lesson(), s.play, edit.AddCue(p, c)))
	s.Choose(rally.Timed{Kind: rally.Saying, Index: len(p.Cues)})
}

// ChangeCue replaces a cue as one named step; nothing happens if it is as it was.
func (s *Session) ChangeCue(name string, i int, c lesson.Cue) {
	p, ok := s.saved()
	if !ok || i >= len(p.Cues) || p.Cues[i] == c {
		return
	}
	s.Do(name, edit.ReplacePlay(s.history.Lesson(), s.play, edit.ReplaceCue(p, i, c)))
}

// DeleteCue takes a cue out of the play as one named step.
func (s *Session) DeleteCue(name string, i int) {
	if p, ok := s.saved(); ok && i < len(p.Cues) {
		s.Unchoose()
		s.Do(name, edit.ReplacePlay(s.history.Lesson(), s.play, edit.RemoveCue(p, i)))
	}
}

// CueLasts is how long a cue is shown.
func (s *Session) CueLasts(c lesson.Cue) units.Seconds {
	if r := s.Current(); r != nil {
		return r.TimeAt(c.Span.To) - r.TimeAt(c.Span.From)
	}
	return 0
}

// Lasting is the cue shown for another time from its beginning, at most to the
// end of the rally.
func (s *Session) Lasting(c lesson.Cue, t units.Seconds) lesson.Cue {
	r := s.Current()
	if r == nil || !(t >= leastCue) {
		return c
	}
	c.Span.To = s.anchorAt(r, min(r.TimeAt(c.Span.From)+t, r.To))
	return c
}
