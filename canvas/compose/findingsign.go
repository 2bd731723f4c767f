package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/finding"
)

// Sizes of a finding's sign in points.
const (
	signReach  canvas.Points = 7 // from its middle to its edge
	signLetter canvas.Points = 8
)

// signOutlines is the outline of each severity's sign about its middle: they are
// told apart without colour, in a greyscale print and by whoever sees no red.
var signOutlines = [len(finding.Severities)]func(at canvas.Pos) canvas.Path{
	finding.Fault: func(at canvas.Pos) canvas.Path { // a triangle that points up, as on warning boards
		return canvas.Path{}.Move(at.Shift(0, -signReach-2)).Line(at.Shift(signReach+1.5, signReach-1)).Line(at.Shift(-signReach-1.5, signReach-1)).Close()
	},
	finding.Late: func(at canvas.Pos) canvas.Path { // a clock's round
		return canvas.Circle(at, canvas.Pts(signReach))
	},
	finding.Caution: func(at canvas.Pos) canvas.Path { // a square on its corner
		const r = signReach + 1.5
		return canvas.Path{}.Move(at.Shift(0, -r)).Line(at.Shift(r, 0)).Line(at.Shift(0, r)).Line(at.Shift(-r, 0)).Close()
	},
	finding.Advice: func(at canvas.Pos) canvas.Path {
		const r = signReach - 0.5
		return boxAbout(at, -r, -r, r, r)
	},
}

func signLook(lk *look.Look, s finding.Severity) look.SignLook {
	return [len(finding.Severities)]look.SignLook{
		finding.Fault: lk.Fault, finding.Late: lk.Late, finding.Caution: lk.Caution, finding.Advice: lk.Advice,
	}[s]
}

// findingSign is a severity's sign with a number on it, its outline first.
func findingSign(lk *look.Look, id, number string, at canvas.Pos, s finding.Severity) []canvas.Shape {
	colours := signLook(lk, s)
	return []canvas.Shape{{
		ID: id, Layer: canvas.Labels, Path: signOutlines[s](at),
		Style: canvas.Style{Fill: colours.Fill, Stroke: lk.Rim, Width: canvas.Pts(look.Outline), Round: true},
	}, {
		ID: id + ".number", Layer: canvas.Labels,
		Text: &canvas.Text{At: at.Shift(0, signLetter*0.36), Text: number, Size: signLetter, Bold: true, Colour: colours.Letter},
	}}
}

// FindingSign is a small picture of the sign that a finding of a severity has on
// the court, for a list of findings; lk nil means look.Daylight.
func FindingSign(lk *look.Look, s finding.Severity, number string, width, height int, pxPerPoint float64) *canvas.Scene {
	lk = Picture{Look: lk}.look()
	g := canvas.Panel{Name: "sign", View: paper(canvas.Px{})}
	middle := onPaper(canvas.Points(float64(width)/pxPerPoint/2), canvas.Points(float64(height)/pxPerPoint/2))
	g.Add(findingSign(lk, "sign", number, middle, s)...)
	return &canvas.Scene{Width: width, Height: height, PxPerPoint: pxPerPoint, Panels: []canvas.Panel{g}}
}
