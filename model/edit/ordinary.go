package edit

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// OrdinaryPlay is a serve, a return and a third shot from ordinary places:
// near1 serves from the right to far1. The servers stay behind the baseline
// until the return has bounced, the receiver's partner stands at the kitchen
// line (common practice of the trade).
func OrdinaryPlay() lesson.Play {
	return lesson.Play{
		Title: "An ordinary serve",
		Lead:  lesson.DefaultLead,
		Shots: []lesson.Shot{
			{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(7.5)},
			{By: game.Far1, Aim: court.Pt(4, -18), Intent: lesson.Apex(8)},
			{By: game.Near1, Aim: court.Pt(3, 5), Intent: lesson.Apex(8)},
		},
		Tracks: [4][]lesson.Keyframe{
			{stands(3.5, -22.9), arrives(4.5, -14, lesson.TheEnd, third(lesson.Contact))},
			{stands(-5, -23), arrives(-4.5, -14, lesson.TheEnd, third(lesson.Contact))},
			{stands(-5, 24.5), arrives(-4.5, 7.8, third(lesson.Bounce), lesson.ContactOf(1))},
			{stands(5, 7.8)},
		},
	}
}

func third(m lesson.Moment) lesson.Event { return lesson.Event{Shot: 2, Moment: m} }

// stands is a place at the serve, facing the net.
func stands(x, y units.Feet) lesson.Keyframe { return facingNet(court.Pt(x, y)) }

// afterStroke is how long after a contact the walk-in starts: recovery from the stroke.
const afterStroke units.Seconds = 0.25

func arrives(x, y units.Feet, at, leave lesson.Event) lesson.Keyframe {
	k := facingNet(court.Pt(x, y))
	k.At, k.Leave = lesson.At(at), &lesson.Anchor{Event: leave, Offset: afterStroke}
	return k
}

func facingNet(p court.Point) lesson.Keyframe {
	e := court.Near
	if p.Y > 0 {
		e = court.Far
	}
	return lesson.Keyframe{Place: p, Facing: e.Facing()}
}
