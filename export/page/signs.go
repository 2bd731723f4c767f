package page

import (
	"fmt"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/export/still"
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/lesson"
)

// signNames are the script's names of the signs, by drill.Sign.
var signNames = [...]string{drill.Fist: "fist", drill.OpenHand: "open", drill.TwoFingers: "two", drill.Unclear: "unclear"}

// means is what the near pair's signs mean or, where only the far one has agreed on
// any, the far one's; an unclear one means stay.
func means(l lesson.Lesson) map[string]string {
	agreed := l.Team(court.Near).Signs
	if agreed == (lesson.Signs{}) {
		agreed = l.Team(court.Far).Signs
	}
	all := map[string]string{}
	for sign, name := range signNames {
		all[name] = drill.MeaningsOf(agreed).Of(drill.Sign(sign)).String()
	}
	return all
}

// signSide is the side of a sign's picture in the drawing's units.
const signSide = 200

// signs are the pictures of all signs as SVG.
func signs(f *still.Fragments) map[string]string {
	all := map[string]string{}
	for sign, name := range signNames {
		hand := func(l *look.Look) *canvas.Scene { return compose.Hand(drill.Sign(sign), signSide, l) }
		body := f.Draw(hand(&look.Daylight), hand(&look.Night), func(canvas.Info) bool { return true })
		all[name] = fmt.Sprintf(`<svg viewBox="0 0 %d %[1]d" aria-hidden="true">%s</svg>`, signSide, body)
	}
	return all
}
