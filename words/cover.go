package words

import "homeside/model/cover"

// CoverShot is a shot that a pair covers the court against: "drive of 15 m/s",
// "lob 20 ft high".
func CoverShot(s cover.Shot) string {
	if s.Lob != 0 {
		return T("lob %s high", Length(s.Lob))
	}
	return T("drive of %v m/s", float64(max(s.Drive, 0)))
}
