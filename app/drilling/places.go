package drilling

import (
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// placesAt is everybody at the places that a score gives, at the serve and with
// the serve's way alone: nobody runs.
func placesAt(l lesson.Lesson, s game.State) (*rally.Rally, error) {
	w, err := formation.Write(formation.Situation{Lesson: l, State: s, Team: s.Serving()}, lesson.Ordinary)
	if err != nil {
		return nil, err
	}
	p := w.Play
	p.Shots = p.Shots[:1]
	for id, track := range p.Tracks {
		p.Tracks[id] = track[:1]
	}
	l.Plays = []lesson.Play{p}
	return rally.Solve(l, 0)
}
