package rules

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Margins of what a fix puts right: our choice, clear of the line by eye.
const (
	FootMargin  units.Feet = 0.25 // from a foot to the line
	ServeMargin units.Feet = 0.75 // from a server's foot to the baseline, as far as servers usually stand
	AimMargin   units.Feet = 1    // from a ball's landing to the line
)

// otherTeam says that the server's team has the serve or, where that is wrong by
// the score, turns the play round.
func (m *mend) otherTeam() []lesson.Play {
	said, turned := m.play, m.play.Turned()
	said.Situation.Serving = m.server.Team()
	turned.Situation.Serving = m.play.Situation.Serving
	return []lesson.Play{said, turned}
}

// rightServe gives the serve to the correct server, from the correct court, to
// the correct receiver: partners take each other's part, and the play is
// mirrored where the court is the wrong one. Where the score leaves more than
// one serve open there is a way for each.
func (m *mend) rightServe() []lesson.Play {
	var ways []lesson.Play
	for _, state := range m.judged.states {
		p := m.play
		if m.server != state.Server() {
			p = exchanged(p, m.server.Team())
		}
		if m.from != state.From() {
			p = p.Mirrored()
		}
		if len(p.Shots) > 1 && p.Shots[1].By != state.Receiver() {
			p = exchanged(p, m.server.Team().Other())
		}
		ways = append(ways, p)
	}
	return ways
}

// otherReceiver has the receivers take each other's part.
func (m *mend) otherReceiver() []lesson.Play {
	return []lesson.Play{exchanged(m.play, m.server.Team().Other())}
}

// exchanged is the play with the partners of a team in each other's part.
func exchanged(p lesson.Play, e court.End) lesson.Play {
	part := game.Players
	a := game.PlayerOf(e, 1)
	part[a], part[a.Partner()] = a.Partner(), a
	return p.Renamed(part)
}

// intoServingArea moves the server's place until both feet are good.
func (m *mend) intoServingArea() []lesson.Play {
	e := m.server.Team()
	k := m.play.AtServe(m.server)
	aside, along := footprint(k.Facing)
	right, behind := k.Place.X*court.SideX(e, m.from), k.Place.Y*e.Sign()
	right = min(max(right, aside+FootMargin-court.LineWidth/2), court.HalfWidth-aside-FootMargin)
	behind = max(behind, court.Baseline+along+ServeMargin)
	k.Place = court.Pt(right*court.SideX(e, m.from), behind*e.Sign())
	return []lesson.Play{withKeyframe(m.play, m.server, m.play.ServeIndex(m.server), k)}
}

// footprint is how far the feet of one who looks that way are beside the place,
// across and along the court.
func footprint(facing units.Degrees) (across, along units.Feet) {
	foot := court.RightOf(facing).Times(float64(rally.FootAside))
	return max(foot.X, -foot.X), max(foot.Y, -foot.Y)
}

func (m *mend) grounded() []lesson.Play {
	s := m.play.Shots[0]
	s.Airborne = false
	return []lesson.Play{m.play.WithShot(0, s)}
}

// intoServiceCourt aims the serve at the nearest good place.
func (m *mend) intoServiceCourt() []lesson.Play {
	return m.aimed(0, court.ServiceCourt(m.server.Team().Other(), m.from))
}

// intoCourt aims a shot at the nearest place within the court.
func (m *mend) intoCourt() []lesson.Play {
	i := m.shot()
	return m.aimed(i, court.Half(m.play.Shots[i].By.Team().Other()))
}

// aimed aims shot i at the place of a rectangle nearest to its aim, hit as it is
// or else in an ordinary way.
func (m *mend) aimed(i int, r court.Rect) []lesson.Play {
	s := m.play.Shots[i]
	s.Aim = nearest(r.Grow(-AimMargin), s.Aim)
	return append([]lesson.Play{m.play.WithShot(i, s)}, m.hit(i, s)...)
}

// higher hits a shot over the net in an ordinary way.
func (m *mend) higher() []lesson.Play {
	i := m.shot()
	return m.hit(i, m.play.Shots[i])
}

// ordinary are heights over the net and apexes that most shots can be hit with,
// the flattest first.
var ordinary = []lesson.Intent{lesson.NetClear(1), lesson.NetClear(2.5), lesson.Apex(8), lesson.Apex(14)}

func (m *mend) hit(i int, s lesson.Shot) []lesson.Play {
	var ways []lesson.Play
	for _, in := range ordinary {
		s.Intent, s.Kind = in, lesson.OwnShot
		ways = append(ways, m.play.WithShot(i, s))
	}
	return ways
}
