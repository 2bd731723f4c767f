package rules

import (
	"slices"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
)

// callSaid: the score is called before the serve (6.C).
func callSaid(s *sheet) []finding.Finding {
	if !s.judged.missing {
		return nil
	}
	return one(s.ofServer(finding.CallMissing))
}

// callPossible: a score that ends the game, or that no game comes to, is never called.
func callPossible(s *sheet) []finding.Finding {
	if s.judged.err == nil {
		return nil
	}
	return one(s.ofServer(finding.CallImpossible, finding.Is("call", s.Play.Situation.Call),
		finding.Is("format", s.lesson.Scoring.Format), finding.Is("to", s.lesson.Scoring.Points())))
}

// verdicts are the findings for what the score says of the server.
var verdicts = [...]finding.ID{
	game.WrongCourt:            finding.WrongCourt,
	game.RightPlaceWrongServer: finding.PlaceNotServer,
	game.WrongServer:           finding.WrongServer,
}

// serverRight: the server and the court follow from the score and from who
// started (5.B). A call alone may leave both partners open; then either is right.
func serverRight(s *sheet) []finding.Finding {
	j := s.judged
	switch {
	case s.server.Team() != s.Play.Situation.Serving:
		return one(s.ofServer(finding.WrongTeam, finding.Is("team", s.Play.Situation.Serving)))
	case !j.decided() || j.verdict == game.Correct:
		return nil
	}
	return one(s.ofServer(verdicts[j.verdict], finding.Is("call", s.Play.Situation.Call), finding.Is("from", s.from),
		finding.Is("server", j.states[0].Server()), finding.Is("court", j.states[0].From())))
}

// receiverRight: only the player who belongs diagonally across from the court
// served from may return (5.B.4, 5.C.1.c).
func receiverRight(s *sheet) []finding.Finding {
	if !s.judged.decided() || len(s.Strokes) < 2 || !s.live(1) {
		return nil
	}
	by := s.Strokes[1].By
	from := s.courtMeant()
	receives := func(state game.State) bool { return state.On(by.Team(), from) == by }
	if slices.ContainsFunc(s.judged.states, receives) {
		return nil
	}
	at := s.Strokes[1].At
	return one(finding.New(finding.WrongReceiver, at, s.At(at).Players[by].Run.Place, finding.Is("receiver", by.Partner()),
		finding.Is("court", from), finding.Is("call", s.Play.Situation.Call)).About(by))
}

// courtMeant is the court the serve is played from: where the server stands or,
// if that is the wrong court for this server, the right one. One mistake is then
// told once, and not again as a wrong receiver and a serve to the wrong court.
func (s *sheet) courtMeant() court.Side {
	if j := s.judged; j.decided() && j.verdict == game.WrongCourt {
		return j.states[0].From()
	}
	return s.from
}

// ofServer is a finding about the server at the serve.
func (s *sheet) ofServer(id finding.ID, args ...finding.Arg) finding.Finding {
	return finding.New(id, 0, s.serverPlace(), args...).About(s.server)
}

func (s *sheet) serverPlace() court.Point { return s.serve.Players[s.server].Run.Place }
