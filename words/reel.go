package words

import (
	"math"
	"strconv"
	"strings"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/reel"
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

// TakeName names a take: its play's title, or its number, and the speed where that
// is not match speed.
func TakeName(title string, play int, speed float64) string {
	if title == "" {
		title = T("Play %d", play)
	}
	if tag := SpeedTag(speed); tag != "" {
		title += " (" + tag + ")"
	}
	return title
}

// FreezeAt is what a freeze explains at the contact of shot i: who strikes what.
func FreezeAt(l lesson.Lesson, r *rally.Rally, i int) string {
	return Struck(l, i, r.Strokes[i].By) + "."
}

// FitLeft says what a reel that has to last so long has no time for.
func FitLeft(left []reel.Part) string {
	names := make([]string, len(left))
	for i, p := range left {
		names[i] = fitPart(p)
	}
	return T("No time for: %s.", strings.Join(names, ", "))
}

func fitPart(p reel.Part) string {
	switch p {
	case reel.TitlePart:
		return T("the title")
	case reel.SignalPart:
		return T("the signal from near")
	case reel.SlowPart:
		return T("a slow pass")
	}
	return T("some freezes")
}

// TakesLeft says which takes of a reel cannot be shown.
func TakesLeft(left []reel.Left) string {
	all := make([]string, len(left))
	for i, l := range left {
		why := T("it ends before it begins")
		if l.Reason == reel.NoSuchPlay {
			why = T("its play is not there")
		}
		all[i] = T("take %d: %s", l.Index+1, why)
	}
	return T("Left out: %s.", strings.Join(all, "; "))
}
