package words

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
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

// SlowFaults says in a line why the first of a take's stretches at another speed that
// does not count as it is said does not; empty if all do.
func SlowFaults(all []reel.SlowFault) string {
	for i, f := range all {
		switch f {
		case reel.SlowEmpty:
			return T("Speed %d ends before it begins: it does not count.", i+1)
		case reel.SlowOutside:
			return T("Speed %d lies outside this take: it does not count.", i+1)
		case reel.SlowCovered:
			return T("Speed %d: a later one counts where they overlap.", i+1)
		}
	}
	return ""
}

var cameraWords = [...]string{
	lesson.WholeCourt:     Text("the whole court"),
	lesson.HalfCourt:      Text("half the court"),
	lesson.Follow:         Text("follows a player"),
	lesson.PushIn:         Text("pushes in on a player"),
	lesson.BehindReceiver: Text("from behind the receiver"),
}

// Cameras are the kinds of camera in their order.
func Cameras() []string { return all(cameraWords[:]...) }

var cornerWords = [...]string{Text("no logo"), Text("top left"), Text("top right"), Text("bottom left"), Text("bottom right")}

// Corners are the corners of a picture in their order, none first.
func Corners() []string { return all(cornerWords[:]...) }

var recipeWords = [...]string{
	reel.Teach:    Text("teach: title, signal, slow with freezes, match speed"),
	reel.SlowFast: Text("slow, then at match speed"),
	reel.Loop:     Text("again and again at match speed"),
}

// Recipes are the ways to make a reel in their order.
func Recipes() []string { return all(recipeWords[:]...) }

// FitRefused says why no reel lasts as long as is wanted.
func FitRefused(err error) string {
	var length *reel.LengthError
	switch {
	case !errors.As(err, &length):
		return T("No reel was made: %s.", err)
	case length.Want < length.Least:
		return T("Too short: one pass at match speed takes %.1f s.", float64(length.Least))
	}
	return T("Too long: such a reel lasts at most %.0f s.", math.Floor(float64(length.Most)))
}

// ClipTime says a moment of a clip and how long it is: "0:03.5 of 0:20.0".
func ClipTime(at, of units.Seconds) string { return T("%s of %s", ClipClock(at), ClipClock(of)) }

// ClipClock is a time of a clip in minutes, seconds and tenths.
func ClipClock(t units.Seconds) string {
	tenths := int(math.Round(float64(max(t, 0)) * 10))
	return fmt.Sprintf("%d:%02d.%d", tenths/600, tenths/10%60, tenths%10)
}

// ReelName is a reel's number and name.
func ReelName(i int, name string) string {
	if name == "" {
		name = T("Reel %d", i+1)
	}
	return fmt.Sprintf("%d. %s", i+1, name)
}

// ExportEstimate says about how long a clip is, how large its file will be and how
// long writing it takes; seconds 0 for what is no clip.
func ExportEstimate(clip units.Seconds, bytes, takes float64) string {
	about := T("About %s, ready in about %s.", FileSize(bytes), roughTime(takes))
	if clip > 0 {
		about = T("A clip of %s.", ClipClock(clip)) + " " + about
	}
	return about
}

// FileSize is a file's size in round figures; 1 MB is a million bytes.
func FileSize(bytes float64) string {
	switch {
	case bytes < 1e3:
		return T("1 kB")
	case bytes < 1e6:
		return T("%.0f kB", bytes/1e3)
	case bytes < 1e7:
		return T("%.1f MB", bytes/1e6)
	case bytes < 1e9:
		return T("%.0f MB", bytes/1e6)
	}
	return T("%.1f GB", bytes/1e9)
}

// roughTime is a time to wait.
func roughTime(seconds float64) string {
	switch {
	case seconds < 1:
		return T("a second")
	case seconds < 90:
		return T("%.0f seconds", math.Ceil(seconds))
	}
	return T("%.0f minutes", math.Ceil(seconds/60))
}

// ExportProgress says how far an export is and how long it still takes.
func ExportProgress(done, total int, left float64) string {
	if done >= total {
		return T("%d of %d", done, total)
	}
	return T("%d of %d, %s left", done, total, roughTime(left))
}
