package words

import (
	"fmt"
	"sync"
)

// catalogue has for English texts what is said in another language. A text with
// verbs (see fmt) has a translation with the same ones; where their order
// differs they are numbered: "%[2]s".
type catalogue map[string]string

// T is an English text in the language spoken, its verbs filled in as by
// fmt.Sprintf if there are arguments. Give the text as a constant: a test reads
// the sources and looks for the translation of every one.
func T(english string, args ...any) string {
	text := english
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
	spanishCourt,
	spanishLessons,
	spanishSettings,
	spanishPage,
	spanishHandout,
}
