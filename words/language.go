package words

import (
	"strings"
	"sync/atomic"
)

// Language is a language that Homeside speaks.
type Language uint8

// The languages.
const (
	English Language = iota
	Spanish
)

// spoken is the language of everything that is said. A process speaks one: it
// is chosen before the first sentence and not changed after.
var spoken atomic.Uint32

// Speak chooses the language of all that is said from here on. Call it once,
// before anything is drawn or said.
func Speak(l Language) { spoken.Store(uint32(l)) }

// Spoken is the language that is spoken, English unless Speak said otherwise.
func Spoken() Language { return Language(spoken.Load()) }

// Languages are all languages there are.
func Languages() []Language { return []Language{English, Spanish} }

// Tag is a language's tag (BCP 47), "en" or "es".
func (l Language) Tag() string { return [...]string{"en", "es"}[l%2] }

// Name is a language in its own words.
func (l Language) Name() string { return [...]string{"English", "Español"}[l%2] }

// LanguageOf is the language of a tag such as "es", "es-MX" or a locale such as
// "es_MX.UTF-8"; false if Homeside does not speak it.
func LanguageOf(tag string) (Language, bool) {
	primary, _, _ := strings.Cut(strings.ReplaceAll(strings.ToLower(tag), "_", "-"), "-")
	for _, l := range Languages() {
		if l.Tag() == primary {
			return l, true
		}
	}
	return English, false
}
