package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/lang"

	"homeside/app/looks"
	"homeside/app/settings"
	"homeside/words"
)

// Keys of the settings in the toolkit's preferences, a file in the person's
// configuration folder. Values are words, so that their order may change.
const (
	keptLanguage  = "language" // a tag; empty for the desktop's
	keptLook      = "look"
	keptLarge     = "large text"
	keptReduced   = "reduced motion"
	keptMeasures  = "measures"
	usualMeasures = "ft"
)

// lookNames are the looks as preferences.
var lookNames = [len(settings.Looks)]string{settings.AsSystem: "system", settings.Light: "light", settings.Dark: "dark"}

// SystemLanguage is the desktop's language (LC_ALL, LC_MESSAGES, LANG and their
// like elsewhere), English if Homeside does not speak it.
func SystemLanguage() words.Language {
	l, _ := words.LanguageOf(lang.SystemLocale().LanguageString()) // English otherwise
	return l
}

// OpenSettings reads the settings kept and makes them those of the program:
// its language, measures and theme. Call it before anything is made or said.
// asked is a language for this run only; nil for the one kept.
func OpenSettings(a fyne.App, asked *words.Language) *settings.Held {
	s := keptSettings(a.Preferences(), SystemLanguage())
	spoken := s.Language
	if asked != nil {
		spoken = *asked
	}
	words.Speak(spoken)
	words.MeasureBy(s.Measures)
	a.Settings().SetTheme(looks.Of(s))
	return settings.Hold(s)
}

// keptSettings are the settings as preferences have them; what they do not have
// or have in words unknown is as usual.
func keptSettings(p fyne.Preferences, system words.Language) settings.Settings {
	s := settings.Settings{Language: system, LargeText: p.Bool(keptLarge), ReducedMotion: p.Bool(keptReduced)}
	if l, ok := words.LanguageOf(p.String(keptLanguage)); ok {
		s.Language = l
	}
	for look, name := range lookNames {
		if name == p.String(keptLook) {
			s.Look = settings.Look(look)
		}
	}
	s.Measures, _ = words.MeasuresOf(p.StringWithFallback(keptMeasures, usualMeasures)) // feet otherwise
	return s
}

func keepSettings(p fyne.Preferences, s settings.Settings) {
	p.SetString(keptLanguage, s.Language.Tag())
	p.SetString(keptLook, lookNames[s.Look])
	p.SetBool(keptLarge, s.LargeText)
	p.SetBool(keptReduced, s.ReducedMotion)
	p.SetString(keptMeasures, s.Measures.Tag())
}

// follow keeps the settings when they change and shows everything by them. The
// language waits for the next start.
func (e *Editor) follow(s settings.Settings) {
	keepSettings(e.app.Preferences(), s)
	words.MeasureBy(s.Measures)
	e.session.SetCuts(s.ReducedMotion)
	e.app.Settings().SetTheme(looks.Of(s))
	e.session.Anew()
	e.trace.say("settings %s %s large=%v reduced=%v %s", s.Language.Tag(), lookNames[s.Look], s.LargeText, s.ReducedMotion, s.Measures.Tag())
}
