package session

import (
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// AddShot gives the play shown one more shot, as one step: the usual one that
// follows, hit by the opponent who is nearer to where the last ball bounces. It
// shows its contact and picks its aim; false where there is no play or no room.
func (s *Session) AddShot(name string) bool {
	p, ok := s.saved()
	r := s.Current()
	if !ok || r == nil || len(p.Shots) >= lesson.MaxShots {
		return false
	}
	last := r.Strokes[len(r.Strokes)-1]
	ground := last.Planned.End.Ground()
	by := nearer(r, last.By.Team().Other(), len(r.Strokes)-1)
	l := s.history.Lesson()
	s.Do(name, edit.ReplacePlay(l, s.play, edit.AddShot(p, edit.NextShot(l, p, by, ground.X))))
	s.Seek(s.Current().Strokes[len(p.Shots)].At)
	s.Pick(edit.Part{Kind: edit.AimPart, Index: len(p.Shots)})
	return true
}

// nearer is who of a team is nearer to the bounce of a shot when it bounces.
func nearer(r *rally.Rally, e court.End, shot int) game.Player {
	pair := [2]game.Player{game.PlayerOf(e, 1), game.PlayerOf(e, 2)}
	s := r.Strokes[shot]
	ground, t := s.Planned.End.Ground(), s.At+s.Planned.Duration
	if r.Tracks[pair[1]].At(t).Place.Distance(ground) < r.Tracks[pair[0]].At(t).Place.Distance(ground) {
		return pair[1]
	}
	return pair[0]
}

// CutShots leaves the play shown its first n shots, one at least, as one step;
// what hung on the others keeps its time.
func (s *Session) CutShots(name string, n int) {
	p, ok := s.saved()
	if r := s.Current(); ok && r != nil {
		s.ReplacePlay(name, edit.CutShots(p, n, r.TimeAt))
	}
}
