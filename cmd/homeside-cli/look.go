package main

import (
	"fmt"

	"github.com/spf13/pflag"

	"homeside/canvas/compose"
	"homeside/canvas/film"
	"homeside/canvas/look"
	"homeside/export"
)

// lookFlags are the flags of how pictures look.
type lookFlags struct {
	look  string
	large bool
}

func (f *lookFlags) add(fl *pflag.FlagSet) {
	fl.StringVar(&f.look, "look", "daylight", "daylight for print and phones, night for dark rooms")
	fl.BoolVar(&f.large, "large-text", false, "letters and the marks that hold them a quarter larger")
}

// dress gives pictures the look that is asked for. Large text is for plays: a
// reel's letters have sizes of their own.
func (f *lookFlags) dress(src export.Source) export.Source {
	lk := &look.Daylight
	if f.look == "night" {
		lk = &look.Night
	}
	switch s := src.(type) {
	case compose.Picture:
		s.Look, s.Sight.Large = lk, f.large
		return s
	case *film.Film:
		return s.In(lk)
	}
	return src
}

// check says what is wrong with the flags.
func (f *lookFlags) check() error {
	if f.look != "daylight" && f.look != "night" {
		return fmt.Errorf("--look %q: want daylight or night", f.look)
	}
	return nil
}
