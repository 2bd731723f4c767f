package app

import (
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/app/settings"
	"homeside/words"
)

// What is kept is read again, every setting of it.
func TestSettingsAreKept(t *testing.T) {
	for _, want := range []settings.Settings{
		{},
		{Language: words.Spanish, Look: settings.Dark, LargeText: true, ReducedMotion: true, Measures: words.Metric},
		{Language: words.Spanish, Look: settings.Light},
		{LargeText: true, Measures: words.Metric},
	} {
		p := test.NewApp().Preferences()
		keepSettings(p, want)
		if got := keptSettings(p, words.Spanish); got != want {
			t.Errorf("kept %+v, read %+v", want, got)
		}
	}
}

// Nothing kept yet: the desktop's language, and the rest as usual. Words that
// another version may have written count as nothing.
func TestNothingIsKept(t *testing.T) {
	p := test.NewApp().Preferences()
	for _, kept := range []string{"", "klingon"} {
		p.SetString(keptLanguage, kept)
		p.SetString(keptLook, kept)
		p.SetString(keptMeasures, kept)
		want := settings.Settings{Language: words.Spanish}
		if got := keptSettings(p, words.Spanish); got != want {
			t.Errorf("with %q kept: %+v, want %+v", kept, got, want)
		}
	}
}

// A language for this run is spoken, and not kept.
func TestLanguageOfARun(t *testing.T) {
	a := test.NewApp()
	defer func() { words.Speak(words.English); words.MeasureBy(words.FeetAndInches) }()
	keepSettings(a.Preferences(), settings.Settings{Measures: words.Metric})
	asked := words.Spanish
	held := OpenSettings(a, &asked)
	if words.Spoken() != words.Spanish || held.Now().Language != words.English || words.Measured() != words.Metric {
		t.Errorf("asked for Spanish: speaks %s, keeps %s, measures by %s", words.Spoken().Tag(), held.Now().Language.Tag(), words.Measured().Tag())
	}
	OpenSettings(a, nil)
	if words.Spoken() != words.English {
		t.Errorf("asked for nothing: speaks %s, want what is kept", words.Spoken().Tag())
	}
}
