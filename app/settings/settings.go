package settings

import "homeside/words"

// Look is a choice of light or dark.
type Look uint8

// The looks to choose from.
const (
	AsSystem Look = iota // as the desktop says
	Light
	Dark
)

// Looks are all looks.
var Looks = [...]Look{AsSystem, Light, Dark}

// Dark tells whether a look is the dark one where the desktop is dark or not.
func (l Look) Dark(system bool) bool { return l == Dark || l == AsSystem && system }

// Settings are all choices. The zero value is English, as the desktop looks,
// ordinary letters, everything moving, feet and inches.
type Settings struct {
	Language      words.Language // that the next start speaks
	Look          Look
	LargeText     bool
	ReducedMotion bool // nothing moves by itself: a play goes from event to event, nothing flashes
	Measures      words.Measures
}

// Held is the settings of now and who wants to hear of changes.
type Held struct {
	now  Settings
	told []func(Settings)
}

// Hold holds settings.
func Hold(s Settings) *Held { return &Held{now: s} }

// Now is the settings of now; those of a nil Held are the zero value.
func (h *Held) Now() Settings {
	if h == nil {
		return Settings{}
	}
	return h.now
}

// Set changes the settings and tells of it, once and only if something changes.
func (h *Held) Set(s Settings) {
	if s == h.now {
		return
	}
	h.now = s
	for _, tell := range h.told {
		tell(s)
	}
}

// OnChange has tell called after every change, in the order of asking.
func (h *Held) OnChange(tell func(Settings)) { h.told = append(h.told, tell) }
