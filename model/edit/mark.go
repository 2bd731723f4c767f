package edit

import (
	"slices"

	"homeside/model/court"
	"homeside/model/lesson"
)

// AddMark is the play with one more mark, drawn over the others. A play that is
// full (see lesson.MaxMarks) stays as it is.
func AddMark(p lesson.Play, m lesson.Mark) lesson.Play {
	if len(p.Marks) < lesson.MaxMarks {
		p.Marks = append(slices.Clip(p.Marks), inBounds(m))
	}
	return p
}

// ReplaceMark is the play with mark i replaced.
func ReplaceMark(p lesson.Play, i int, m lesson.Mark) lesson.Play {
	p.Marks = slices.Clone(p.Marks)
	p.Marks[i] = inBounds(m)
	return p
}

// MoveTip is the play with the tip of mark i at another place; nothing changes
// if it has none.
func MoveTip(p lesson.Play, i int, tip court.Point) lesson.Play {
	m := p.Marks[i]
	if !m.Kind.HasTip() {
		return p
	}
	m.Tip = tip
	return ReplaceMark(p, i, m)
}

// inBounds is a mark with its places inside a lesson's bounds, without a tip
// where its kind has none.
func inBounds(m lesson.Mark) lesson.Mark {
	m.Place, m.Tip = within(m.Place, bounds), within(m.Tip, bounds)
	if !m.Kind.HasTip() {
		m.Tip = court.Point{}
	}
	return m
}
