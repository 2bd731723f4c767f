package drilling

import (
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/words"
)

// movement shows what a signal asks for.
type movement struct {
	rally *rally.Rally // nil for none
	own   bool         // it is the play shown in the window, else one written for the score
	why   string       // there is none
}

// movements are the movements of a pair by what is signalled.
type movements struct {
	session *session.Session
	team    court.End
	serves  bool // else the pair receives
	made    map[lesson.Meaning]movement
}

func newMovements(s *session.Session, team court.End, serves bool) *movements {
	return &movements{session: s, team: team, serves: serves, made: map[lesson.Meaning]movement{}}
}

// of is the movement for a meaning: the play shown, if it has such a signal of the
// pair's, or else one written for the score.
func (m *movements) of(what lesson.Meaning) movement {
	if made, ok := m.made[what]; ok {
		return made
	}
	made, ok := m.shown(what)
	if !ok {
		made = m.written(what)
	}
	m.made[what] = made
	return made
}

func (m *movements) shown(what lesson.Meaning) (movement, bool) {
	p, ok := m.session.Play()
	r := m.session.Current()
	server, served := p.Server()
	if !ok || !served || r == nil || m.session.Previewing() || (server.Team() == m.team) != m.serves {
		return movement{}, false
	}
	for _, c := range p.Cues {
		if c.Kind == lesson.Signal && c.Meaning == what && c.Giver.Team() == m.team {
			return movement{rally: r, own: true}, true
		}
	}
	return movement{}, false
}

// kinds are the formations that the meanings ask for: a fake looks like a stay in
// the end.
var kinds = [...]formation.Kind{lesson.Stay: lesson.Stayed, lesson.Switch: lesson.Switched, lesson.Fake: lesson.Stayed}

func (m *movements) written(what lesson.Meaning) movement {
	s, err := m.situation()
	if err != nil {
		return movement{why: words.Sentence(err)}
	}
	w, err := formation.Write(s, kinds[what])
	if err != nil {
		return movement{why: words.FormationRefused(err, s.Lesson)}
	}
	r := w.Rally
	if what == lesson.Fake {
		if r, err = feinted(s, w.Play); err != nil {
			return movement{why: words.Sentence(err)}
		}
	}
	return movement{rally: r}
}

// situation is the score of the play shown if the pair serves or receives there as
// it does here, or else the first of a game at which it does.
func (m *movements) situation() (formation.Situation, error) {
	s, err := m.session.Situation(session.Request{})
	if err == nil && (s.State.Serving() == m.team) == m.serves {
		s.Team = m.team
		return s, nil
	}
	l := m.session.Lesson()
	state, err := formation.StateFor(l.Scoring.Format, l.Team(m.team).StarterOf(m.team), m.serves, court.Right)
	return formation.Situation{Lesson: l, State: state, Team: m.team}, err
}

// lead is who reads the sign, the server or the receiver; the partner gives it.
func (m *movements) lead() game.Player {
	if s, err := m.situation(); err == nil {
		return s.Lead()
	}
	return m.session.Lesson().Team(m.team).StarterOf(m.team)
}
