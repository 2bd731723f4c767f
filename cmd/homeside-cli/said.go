package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"homeside/words"
)

// saidFlags are the flags of every command that choose how things are said: the
// language, and the measures of lengths. The names in JSON are the same in all.
type saidFlags struct{ lang, measures string }

// add gives a command and all below it the flags.
func (f *saidFlags) add(root *cobra.Command) {
	fl := root.PersistentFlags()
	fl.StringVar(&f.lang, "lang", words.English.Tag(), "language of what is said: en or es")
	fl.StringVar(&f.measures, "measures", words.FeetAndInches.Tag(), "lengths in feet and inches or in metres: ft or m")
	root.PersistentPreRunE = func(*cobra.Command, []string) error { return f.speak() }
}

// speak makes the choice that of the program.
func (f *saidFlags) speak() error {
	l, ok := words.LanguageOf(f.lang)
	if !ok {
		return fmt.Errorf("--lang %q: want en or es", f.lang)
	}
	m, ok := words.MeasuresOf(f.measures)
	if !ok {
		return fmt.Errorf("--measures %q: want ft or m", f.measures)
	}
	words.Speak(l)
	words.MeasureBy(m)
	return nil
}
