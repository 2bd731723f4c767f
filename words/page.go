package words

import (
	"homeside/model/lesson"
	"homeside/model/rally"
)

// EventLine says what happens at an event: "Serve by Nell", "The serve bounces.".
func EventLine(l lesson.Lesson, r *rally.Rally, e rally.Event) string {
	switch {
	case e.Name == lesson.TheEnd:
		return T("The end")
	case e.Name.Moment == lesson.Net:
		return T("The ball passes the net.")
	case e.Name.Moment == lesson.Bounce:
		return Bounces(e.Name.Shot)
	default:
		return Struck(l, e.Name.Shot, r.Strokes[e.Name.Shot].By)
	}
}
