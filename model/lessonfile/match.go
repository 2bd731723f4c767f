package lessonfile

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

type match struct {
	First   string       `json:"first,omitzero"`
	From    *opening     `json:"from,omitzero"`
	Rallies []matchRally `json:"rallies,omitempty"`
}

type opening struct {
	Call    string `json:"call,omitzero"`
	Serving string `json:"serving,omitzero"`
	Server  string `json:"server"`
}

type matchRally struct {
	Winner string `json:"winner"`
	Near   string `json:"near,omitzero"`
	Far    string `json:"far,omitzero"`
	Return string `json:"return,omitzero"`
	Play   int    `json:"play,omitzero"`
}

func (r *reader) match(m match) lesson.Match {
	var out lesson.Match
	if m.First != "" {
		out.First = new(needNamed(r, "first", m.First, parseEnd))
	}
	if m.From != nil {
		r.in("from", func() { out.From = new(r.opening(*m.From)) })
	}
	out.Rallies = each(r, "rallies", m.Rallies, r.matchRally)
	return out
}

func (r *reader) opening(o opening) lesson.Opening {
	return lesson.Opening{
		Call:    named(r, "call", o.Call, game.ParseCall),
		Serving: named(r, "serving", o.Serving, parseEnd),
		Server:  needNamed(r, "server", o.Server, game.ParsePlayer),
	}
}

func (r *reader) matchRally(m matchRally) lesson.MatchRally {
	return lesson.MatchRally{
		Winner:     needNamed(r, "winner", m.Winner, parseEnd),
		Formations: [2]lesson.Formation{named(r, "near", m.Near, lesson.ParseFormation), named(r, "far", m.Far, lesson.ParseFormation)},
		Return:     named(r, "return", m.Return, lesson.ParseReturnTo),
		Play:       m.Play,
	}
}

func toMatch(m lesson.Match) match {
	out := match{Rallies: mapped(m.Rallies, toMatchRally)}
	if m.First != nil {
		out.First = m.First.String()
	}
	if o := m.From; o != nil {
		out.From = &opening{Call: callUnlessZero(o.Call), Serving: unlessZero(o.Serving), Server: o.Server.String()}
	}
	return out
}

func toMatchRally(r lesson.MatchRally) matchRally {
	return matchRally{
		Winner: r.Winner.String(),
		Near:   unlessZero(r.Formations[court.Near]), Far: unlessZero(r.Formations[court.Far]),
		Return: unlessZero(r.Return), Play: r.Play,
	}
}

func callUnlessZero(c game.Call) string {
	if c == (game.Call{}) {
		return ""
	}
	return c.String()
}
