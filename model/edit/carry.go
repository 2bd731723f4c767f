package edit

import (
	"fmt"
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Carry is a play for a state of the game, carried over from the lesson's
// nearest play: the correct server serves and the correct receiver returns,
// their partners take the partners' places, and where the serve changes courts
// everything is mirrored from left to right. Marks and captions, which speak of
// another score, are left behind; signals stay. Nearest is the play that brings
// most players to the sides they want, then shown, then the one that has to be
// changed least. With no play that does as well, it is an ordinary serve. A state that
// is over has no serve: the play then has none either.
func Carry(l lesson.Lesson, shown int, s game.State) lesson.Play {
	if s.Over() {
		return lesson.Play{}
	}
	best, most := lesson.Play{}, -1
	for _, from := range candidates(l.Plays, shown) {
		p := carry(from, s)
		p.Title = fmt.Sprintf("%v: %s serves from the %v", s.Call(), l.NameOf(s.Server()), s.From())
		if n := 2*wanted(l, p) + closeness(from, s); n > most {
			best, most = p, n
		}
	}
	return best
}

// candidates lists the plays to carry from: the one shown first, an ordinary
// serve last.
func candidates(plays []lesson.Play, shown int) []lesson.Play {
	var all []lesson.Play
	if shown >= 0 && shown < len(plays) {
		all = append(all, plays[shown])
	}
	for i, p := range plays {
		if i != shown && len(p.Shots) > 0 {
			all = append(all, p)
		}
	}
	return append(all, OrdinaryPlay())
}

// closeness is 1 for a play that the same team serves.
func closeness(p lesson.Play, s game.State) int {
	if by, ok := p.Server(); ok && by.Team() == s.Serving() {
		return 1
	}
	return 0
}

// wanted counts the players who end on the side they want.
func wanted(l lesson.Lesson, p lesson.Play) (n int) {
	server, _ := p.Server()
	for _, id := range game.Players {
		want := l.Player(id).Receiving
		if id.Team() == server.Team() {
			want = l.Player(id).Serving
		}
		last := p.Tracks[id][len(p.Tracks[id])-1].Place
		side := court.SideOf(id.Team(), last)
		if want == lesson.WantRight && side == court.Right || want == lesson.WantLeft && side == court.Left {
			n++
		}
	}
	return n
}

// carry is one play carried over to a state.
func carry(p lesson.Play, s game.State) lesson.Play {
	by, _ := p.Server()
	if by.Team() != s.Serving() {
		p = Turned(p)
		by, _ = p.Server()
	}
	p = keepOnSide(assign(p, by, s), s)
	p.Notes, p.Marks, p.Photo = "", nil, nil
	p.Cues = slices.DeleteFunc(slices.Clone(p.Cues), func(c lesson.Cue) bool { return c.Kind == lesson.Caption })
	return p
}

// assign is a play that the right team serves, given to those whose score it is:
// the correct server and receiver take their parts, and where the serve is from
// the other court everything is mirrored.
func assign(p lesson.Play, server game.Player, s game.State) lesson.Play {
	p = Renamed(p, roles(p, server, s))
	if court.SideOf(s.Serving(), p.AtServe(s.Server()).Place) != s.From() {
		p = Mirrored(p)
	}
	p.Situation = lesson.Situation{Call: s.Call(), Serving: s.Serving()}
	return p
}

// roles says who takes whose part: the correct server the server's, the correct
// receiver that of the one who returns.
func roles(p lesson.Play, server game.Player, s game.State) (part [4]game.Player) {
	receiver := returner(p, server)
	part[server], part[server.Partner()] = s.Server(), s.Server().Partner()
	part[receiver], part[receiver.Partner()] = s.Receiver(), s.Receiver().Partner()
	return part
}

// returner is who returns the serve in a play or, where it has no return, stands
// farther from the net.
func returner(p lesson.Play, server game.Player) game.Player {
	if len(p.Shots) > 1 {
		return p.Shots[1].By
	}
	a := game.PlayerOf(server.Team().Other(), 1)
	behind := func(id game.Player) units.Feet { return p.AtServe(id).Place.Y * id.Team().Sign() }
	if behind(a.Partner()) > behind(a) {
		return a.Partner()
	}
	return a
}

// OffCentre is how far beside the centreline those who must stand in one court
// are put when they stood on or beyond it: clear of the line with both feet.
const OffCentre units.Feet = 1

// keepOnSide moves the server and the receiver into their courts where a play
// whose own places are wrong has left them outside.
func keepOnSide(p lesson.Play, s game.State) lesson.Play {
	for _, id := range []game.Player{s.Server(), s.Receiver()} {
		right := court.SideX(id.Team(), s.From())
		if p.AtServe(id).Place.X*right > 0 {
			continue
		}
		p = MoveKeyframe(p, id, p.ServeIndex(id), court.Pt(OffCentre*right, p.AtServe(id).Place.Y))
	}
	return p
}
