package rehearse

import (
	"homeside/app/rehearsal"
	"homeside/canvas/compose"
	"homeside/model/court"
	"homeside/model/rally"
	"homeside/words"
)

// view is a way of seeing the court.
type view uint8

// The views.
const (
	behindPair view = iota
	behindReceiver
	wholeCourt
	halfCourt
	viewCount
)

var viewTags = [viewCount]string{"behind-pair", "behind-receiver", "whole", "half"}

func viewNames() []string {
	return []string{words.T("From behind the pair"), words.T("From behind the receiver"), words.T("The whole court from above"), words.T("The pair's half from above")}
}

// sight is a view of a pair's end.
func (v view) sight(r *rally.Rally, pair court.End) compose.Sight {
	switch v {
	case behindPair:
		if r.Strokes[0].By.Team() == pair {
			return compose.Sight{Behind: compose.TheServers}
		}
		return compose.Sight{Behind: compose.TheReceiver}
	case behindReceiver:
		return compose.Sight{Behind: compose.TheReceiver}
	case halfCourt:
		if pair == court.Far {
			return compose.Sight{End: pair, Half: compose.FarHalf}
		}
		return compose.Sight{End: pair, Half: compose.NearHalf}
	}
	return compose.Sight{End: pair}
}

// drilled is the pair that a play is likely walked for: the one whose paths cross,
// or else the near one, which the start page and the built-in lessons take for
// one's own.
func drilled(h *rehearsal.Rehearsal) court.End {
	if c := h.Crossings(); len(c) > 0 {
		return c[0].Front.Team()
	}
	return court.Near
}
