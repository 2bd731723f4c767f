package courtview

import (
	"homeside/model/edit"
	"homeside/words"
)

func (v *View) say(s string) {
	if v.said = s; v.events.Status != nil {
		v.events.Status(s)
	}
}

// handLine says what the hand is doing where the court does not say it beside
// the place being dragged. A line of text is slow to set: a drag has none.
func (v *View) handLine() string {
	a, _, ok := v.hand.Moving()
	switch {
	case ok && a.Kind == edit.BendPart:
		return words.T("Let the handle go near the straight line to make the run straight.")
	case ok && a.Kind == edit.FacingPart:
		return words.Facing(v.session.Current().At(v.session.Now()).Players[a.Player].Drawn.Facing)
	}
	return ""
}

// shotLine says what the hand is making of the shot in play.
func (v *View) shotLine() string {
	r := v.session.Current()
	if r == nil {
		return ""
	}
	return words.TopLine(r, r.ShotAt(v.session.Now()))
}
