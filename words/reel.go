package words

import (
	"math"
	"strconv"
)

// SpeedTag says in a clip that a play runs slower or faster than in a match;
// empty at match speed and while it
// holds. It has no words: viewers know it from players of clips.
func SpeedTag(speed float64) string {
	if speed == 0 || math.Abs(speed-1) < 0.005 {
		return ""
	}
	return strconv.FormatFloat(math.Round(speed*100)/100, 'f', -1, 64) + "×"
}
