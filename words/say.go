package words

import (
	"fmt"
	"strings"
	"sync"
)

// catalogue has for English texts what is said in another language. A text with
// verbs (see fmt) has a translation with the same ones; where their order
// differs they are numbered: "%[2]s".
type catalogue map[string]string

// note begins what a text has for those who translate it and for nobody else: one
// English text may be two in another language, "Play‖noun" and "Play".
const note = "‖"

// T is an English text in the language spoken, its verbs filled in as by
// fmt.Sprintf if there are arguments. Give the text as a constant: a test reads
// the sources and looks for the translation of every one.
func T(english string, args ...any) string { return Said(english, args...) }

// Text marks an English text that is said later, by Said: for tables. The test
// looks for its translation as for one given to T.
func Text(english string) string { return english }

// Again is a text that was said and kept, in whatever language was spoken then, in the
// one spoken now. What the catalogue does not have as a whole stays as it is.
func Again(kept string) string {
	if _, english := spanish()[kept]; english {
		return Said(kept)
	}
	same := ""
	for english, t := range spanish() {
		if t == kept && (same == "" || english < same) {
			same = english
		}
	}
	if same == "" || Spoken() == Spanish {
		return kept
	}
	return Said(same)
}

// Name is a member of a closed set, such as a side or a reason, in the language
// spoken; its String is the English. A test walks all members of the sets.
func Name(v fmt.Stringer) string { return Said(v.String()) }

// Said is T for a text that stands in a variable: one marked by Text, or a name.
// A text that has no translation is said in English.
func Said(english string, args ...any) string {
	text, _, _ := strings.Cut(english, note)
	if Spoken() == Spanish {
		if t, ok := spanish()[english]; ok {
			text = t
		}
	}
	if len(args) == 0 {
		return text
	}
	return fmt.Sprintf(text, args...)
}

// all are texts of a table in the language spoken.
func all(texts ...string) []string {
	out := make([]string, len(texts))
	for i, t := range texts {
		out[i] = Said(t)
	}
	return out
}

// spanish is everything that there is in Spanish.
var spanish = sync.OnceValue(func() catalogue {
	all := catalogue{}
	for _, c := range spanishCatalogues {
		for english, t := range c {
			all[english] = t
		}
	}
	return all
})

// spanishCatalogues is a table for each part of the program, in a file of its own.
var spanishCatalogues = []catalogue{
	spanishCommon,
	spanishStrip,
	spanishViews,
	spanishPhoto,
	spanishCourt,
	spanishKeys,
	spanishLessons,
	spanishSettings,
	spanishFindings,
	spanishNames,
	spanishSaid,
	spanishPlans,
	spanishWindow,
	spanishSteps,
	spanishDrawn,
	spanishCommands,
	spanishPage,
	spanishRehearse,
	spanishDrills,
	spanishHandout,
	spanishExport,
	spanishSearch,
	spanishReel,
}
