package edit

import (
	"homeside/model/court"
	"homeside/model/lesson"
)

// Places are the places of the parts that can be moved.
func Places(p lesson.Play, parts []Part) []court.Point {
	var out []court.Point
	s := shift{play: p, keyframes: keyframesOf(p, parts)}
	s.each(parts, func(at court.Point, share float64) court.Point {
		if share == 1 {
			out = append(out, at)
		}
		return at
	})
	return out
}
