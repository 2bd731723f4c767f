package words

import (
	"errors"

	"homeside/model/court"
	"homeside/model/homography"
	"homeside/model/units"
)

// Landmark is a point of the court that is easy to find in a photo.
type Landmark struct {
	At   court.Point
	Name string
}

// Landmarks are such points, from the near end to the far one; left and right are
// those of one who looks from behind the near baseline.
func Landmarks() []Landmark {
	const w, b, k = court.HalfWidth, court.Baseline, court.Kitchen
	return []Landmark{
		{court.Pt(-w, -b), T("near baseline, left corner")},
		{court.Pt(0, -b), T("near baseline, middle")},
		{court.Pt(w, -b), T("near baseline, right corner")},
		{court.Pt(-w, -k), T("near kitchen line, left end")},
		{court.Pt(0, -k), T("near kitchen line, middle")},
		{court.Pt(w, -k), T("near kitchen line, right end")},
		{court.Pt(-w, 0), T("left sideline, under the net")},
		{court.Pt(w, 0), T("right sideline, under the net")},
		{court.Pt(-w, k), T("far kitchen line, left end")},
		{court.Pt(0, k), T("far kitchen line, middle")},
		{court.Pt(w, k), T("far kitchen line, right end")},
		{court.Pt(-w, b), T("far baseline, left corner")},
		{court.Pt(0, b), T("far baseline, middle")},
		{court.Pt(w, b), T("far baseline, right corner")},
	}
}

// PhotoReason says why a photo's points do not say where the court is, and what
// helps.
func PhotoReason(err error) string {
	var e homography.Error
	if !errors.As(err, &e) {
		return T("The points do not fit a court.")
	}
	switch e.Reason {
	case homography.TooFew:
		return T("Four points of the court are needed.")
	case homography.InLine:
		if len(e.Points) == 3 {
			return T("Points %d, %d and %d lie on one line: choose another point for one of them.", e.Points[0]+1, e.Points[1]+1, e.Points[2]+1)
		}
		return T("Too many of the points lie on one line: choose others.")
	case homography.Mirrored:
		return T("Left and right seem to be exchanged: look at the points' names.")
	case homography.NotOneCourt:
		return T("No court looks like this: two points seem to be exchanged.")
	}
	return T("The points do not fit a court.")
}

// Fits says how well a photo's points fit: by how much the worst is off.
func Fits(points int, worst units.Feet) string {
	if points <= homography.Least {
		return T("Four points always fit. A fifth shows how well.")
	}
	return T("The points fit within %s.", SmallLength(worst))
}

// smallLength is the longest length that is said in inches or centimetres alone.
const smallLength units.Feet = 3

// SmallLength is a length in inches and tenths or in centimetres, one of more than
// a few feet as any other.
func SmallLength(l units.Feet) string {
	if l >= smallLength {
		return Length(l)
	}
	if Measured() == Metric {
		return T("%.0f cm", float64(l.Metres())*100)
	}
	return T("%.1f in", l.Inches())
}
