package drilling

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"homeside/model/drill"
	"homeside/model/lesson"
)

// Keys of the preferences.
const (
	keptRole     = "drill.role"
	keptSwitch   = "drill.switch"
	keptFake     = "drill.fake"
	keptUnclear  = "drill.unclear"
	keptSeed     = "drill.seed."     // and the topic
	keptMeanings = "drill.meanings." // and the pair: each has its own
)

// The shares at first: seldom enough fakes and hidden signs that the usual signs
// are what is drilled (our choice).
const (
	usualSwitch  = "40"
	usualFake    = "12"
	usualUnclear = "8"
)

// keepMeanings keeps what a pair means by its signs.
func keepMeanings(p fyne.Preferences, pair string, m drill.Meanings) {
	said := make([]string, len(m))
	for i, what := range m {
		said[i] = what.String()
	}
	p.SetString(keptMeanings+pair, strings.Join(said, ","))
}

// meaningsOf is what a pair means by its signs, common practice where it has not
// said so or what is kept cannot be meant.
func meaningsOf(p fyne.Preferences, pair string) drill.Meanings {
	var m drill.Meanings
	said := strings.Split(p.String(keptMeanings+pair), ",")
	if len(said) != len(m) {
		return drill.Usual()
	}
	for i, text := range said {
		what, err := lesson.ParseMeaning(text)
		if err != nil {
			return drill.Usual()
		}
		m[i] = what
	}
	if m.Check() != nil {
		return drill.Usual()
	}
	return m
}

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
