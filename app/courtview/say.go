package courtview

import (
	"homeside/app/gesture"
	"homeside/model/edit"
	"homeside/words"
)

func (v *View) say(s string) {
	if v.events.Status != nil {
		v.events.Status(s)
	}
}

// handLine says what the hand is doing, and where.
func (v *View) handLine() string {
	a, at, ok := v.hand.Moving()
	if !ok {
		return ""
	}
	where := words.Place(v.hand.Measured(), at)
	switch a.Kind {
	case edit.BendPart:
		return words.T("Let the handle go near the straight line to make the run straight.")
	case edit.FacingPart:
		return words.Facing(v.session.Current().At(v.session.Now()).Players[a.Player].Drawn.Facing)
	case edit.AimPart:
		return words.AimLine(a.Index, where)
	}
	if who, ok := gesture.Player(a); ok {
		return v.session.Lesson().NameOf(who) + ": " + where
	}
	return where
}

// shotLine says what the hand is making of the shot in play.
func (v *View) shotLine() string {
	r := v.session.Current()
	if r == nil {
		return ""
	}
	return words.TopLine(r, r.ShotAt(v.session.Now()))
}
