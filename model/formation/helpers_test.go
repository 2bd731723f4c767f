package formation

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
)

// spot is one cell of the grid.
type spot struct {
	kind   Kind
	serves bool
	lead   game.Player
	side   court.Side
	hands  [2]lesson.Hand // of the lead and the partner
	pace   movement.Preset
	serve  ServeTo
	format game.Format
}

// people are four players of one pace; the pair of the lead has the hands.
func (s spot) people() lesson.Lesson {
	l := lesson.Lesson{Scoring: lesson.Scoring{Format: s.format}}
	for _, id := range game.Players {
		p := lesson.Player{Pace: &s.pace.Pace, Wheelchair: s.pace.Key == "wheelchair"}
		switch id {
		case s.lead:
			p.Hand = s.hands[0]
		case s.lead.Partner():
			p.Hand = s.hands[1]
		}
		l = l.WithPlayer(id, p)
	}
	return l
}

func (s spot) situation(t *testing.T) Situation {
	t.Helper()
	state, err := StateFor(s.format, s.lead, s.serves, s.side)
	if err != nil {
		t.Fatalf("StateFor(%v, %v, %v, %v): %v", s.format, s.lead, s.serves, s.side, err)
	}
	l := s.people()
	for _, e := range court.Ends {
		l.Teams[e].Starter = state.Starter(e).Number()
	}
	return Situation{Lesson: l, State: state, Team: s.lead.Team(), Serve: s.serve}
}

func (s spot) write(t *testing.T) Written {
	t.Helper()
	w, err := Write(s.situation(t), s.kind)
	if err != nil {
		t.Fatalf("Write(%+v): %v", s, err)
	}
	return w
}

// lessonOf is the lesson with the written play alone.
func lessonOf(w Written) lesson.Lesson {
	l := w.Situation.Lesson
	l.Plays = []lesson.Play{w.Play}
	return l
}

// plain is near1 with the even court in the usual game.
func plain(kind Kind, serves bool) spot {
	pace, _ := movement.PresetByKey(movement.DefaultPreset)
	return spot{kind: kind, serves: serves, lead: game.Near1, pace: pace}
}

var hands = [2]lesson.Hand{lesson.RightHanded, lesson.LeftHanded}

// other is a hand's mirror image.
func other(h lesson.Hand) lesson.Hand { return 1 - h }
