package game

import "homeside/model/court"

// State is a game at one serve: the score, who serves from where, who must
// receive, and each player's correct side. It is a value that can be compared;
// the zero value is the start of a side-out game to 11.
//
// Near and far name teams: when the teams change ends they keep their names.
type State struct {
	format      Format
	to          int     // 0 means 11
	second      [2]bool // the team's starting server is its second-named player
	score       [2]int  // by court.End
	serving     court.End
	server      Player
	firstServer bool    // side-out: the turn's first server serves; the start counts as second (5.B)
	swapped     [2]bool // the starting server belongs on the left
}

// stateOf is a state at nil-nil with nobody's serve decided.
func stateOf(f Format, to int, starters [2]Player) State {
	s := State{format: f, to: to}
	for _, e := range court.Ends {
		s.second[e] = starters[e].Number() == 2
	}
	return s
}

// Format is the format the game is played in.
func (s State) Format() Format { return s.format }

// Points is the number of points that win the game.
func (s State) Points() int { return Settings{To: s.to}.Points() }

// Starter is the team's starting server of this game.
func (s State) Starter(e court.End) Player {
	if s.second[e&1] {
		return PlayerOf(e&1, 2)
	}
	return PlayerOf(e&1, 1)
}

// Score is each team's points, by court.End.
func (s State) Score() [2]int { return s.score }

// Serving is the team that serves.
func (s State) Serving() court.End { return s.serving }

// Call is the score as the server calls it (USA Pickleball Official Rulebook
// 2026, 4.A; two numbers in rally scoring, 14.A).
func (s State) Call() Call {
	c := Call{Serving: s.score[s.serving], Receiving: s.score[s.serving.Other()]}
	switch {
	case s.format.Rally():
	case s.firstServer:
		c.Server = 1
	default:
		c.Server = 2
	}
	return c
}

// Server is the correct server.
func (s State) Server() Player { return s.server }

// From is the court the server must serve from.
func (s State) From() court.Side { return s.SideOf(s.server) }

// Receiver is the correct receiver: the player who belongs diagonally across
// from the server by the receiving team's own positions (5.B.4).
func (s State) Receiver() Player { return s.On(s.serving.Other(), s.From()) }

// SideOf is the side a player belongs on. Only the server and the receiver have
// to stand there; their partners may stand anywhere on their own side of the
// net (5.B.4).
func (s State) SideOf(p Player) court.Side {
	starter := p == s.Starter(p.Team())
	if starter != s.swapped[p.Team()] {
		return court.Right
	}
	return court.Left
}

// On is the player of a team who belongs on a side.
func (s State) On(e court.End, side court.Side) Player {
	p := s.Starter(e)
	if s.SideOf(p) == side {
		return p
	}
	return p.Partner()
}

// Winner is the team that has won; false while the game goes on.
func (s State) Winner() (court.End, bool) {
	if !over(s.score[court.Near], s.score[court.Far], s.Points()) {
		return court.Near, false
	}
	if s.score[court.Far] > s.score[court.Near] {
		return court.Far, true
	}
	return court.Near, true
}

// Over says whether the game has been won.
func (s State) Over() bool {
	_, won := s.Winner()
	return won
}

// over is the end of a game: enough points and two ahead (4.A).
func over(a, b, to int) bool { return max(a, b) >= to && max(a-b, b-a) >= 2 }

// PastEndChange says whether a team has reached the score at which the teams
// change ends: 6, 8 or 11 in a game to 11, 15 or 21 (21.B), half the points
// rounded up in any other.
func (s State) PastEndChange() bool {
	return max(s.score[court.Near], s.score[court.Far]) >= (s.Points()+1)/2
}
