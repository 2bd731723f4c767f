package drilling

import (
	"strconv"

	"fyne.io/fyne/v2"
)

// Keys of the preferences.
const (
	keptRole    = "drill.role"
	keptSwitch  = "drill.switch"
	keptFake    = "drill.fake"
	keptUnclear = "drill.unclear"
	keptSeed    = "drill.seed." // and the topic
)

// The shares at first: seldom enough fakes and hidden signs that the usual signs
// are what is drilled (our choice).
const (
	usualSwitch  = "40"
	usualFake    = "12"
	usualUnclear = "8"
)

// keepNextSeed has the next drill ask other questions than this one.
func keepNextSeed(p fyne.Preferences, topic string, seed uint64) {
	p.SetString(keptSeed+topic, strconv.FormatUint(seed+1, 10))
}

// firstSeed is the seed of the first drill: its first signs are clear.
const firstSeed = "3"

// seedOf is the seed of the next drill.
func seedOf(p fyne.Preferences, topic string) string {
	return p.StringWithFallback(keptSeed+topic, firstSeed)
}
