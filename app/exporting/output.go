package exporting

import (
	"context"
	"io"
	"strings"

	"homeside/export"
	"homeside/export/formats"
	"homeside/export/handout"
	"homeside/export/page"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// Subject is what is exported: a play, or a reel.
type Subject struct {
	Name   string
	Source export.Source
	Told   formats.Told
	Lesson lesson.Lesson
	Plays  []int         // of the lesson that it shows, from 0
	At     units.Seconds // the moment shown
}

// Kind is what an output is.
type Kind uint8

// The kinds: one picture, a clip, words or beeps in a clip's times, or the lesson's
// plays on paper or on a page for phones.
const (
	Still Kind = iota
	Clip
	Words
	Document
)

// Output is one kind of file that can be written. Only what it has counts of the
// options: size and background of pictures, rate and speed of clips.
type Output struct {
	Name   string // for people, in the language spoken
	Ext    string
	Kind   Kind
	MaxFPS int
	Clear  bool         // can be transparent
	Heard  bool         // can be heard, on a ground that is not clear
	Needs  func() error // what this machine lacks for it; nil needs nothing
	Key    string       // names it in the settings kept

	write func(ctx context.Context, w io.Writer, s Subject, o *export.Options) error // nil for a folder
	save  func(ctx context.Context, path string, s Subject, o *export.Options) error
}

// Save writes the file as a whole or not at all.
func (o Output) Save(ctx context.Context, path string, s Subject, opt *export.Options) error {
	if o.save != nil {
		return o.save(ctx, path, s, opt)
	}
	return export.Save(ctx, path, func(w io.Writer) error { return o.write(ctx, w, s, opt) })
}

// Outputs are all there are, in the order of menus: what the tables of
// export/formats and export/handout have, and the page for phones.
func Outputs() []Output {
	var all []Output
	for _, f := range formats.All {
		all = append(all, picture(f))
	}
	for _, t := range formats.Texts {
		all = append(all, Output{Name: words.Said(t.Name), Ext: t.Ext, Kind: Words, Key: t.Ext,
			write: func(_ context.Context, w io.Writer, s Subject, o *export.Options) error { return t.Write(w, s.Told, o) }})
	}
	all = append(all, Output{Name: words.T("page for phones"), Ext: ".html", Kind: Document, Key: ".html", write: writePage})
	for _, h := range handout.Sheets {
		all = append(all, sheet(h))
	}
	return all
}

func picture(f formats.Format) Output {
	kind := Still
	if f.Clip {
		kind = Clip
	}
	o := Output{Name: nameOf(f), Ext: f.Ext, Kind: kind, MaxFPS: f.MaxFPS, Clear: f.Clear, Heard: f.Heard, Needs: f.Needs, Key: f.Ext}
	o.save = func(ctx context.Context, path string, s Subject, opt *export.Options) error {
		return f.Save(ctx, path, s.Source, opt)
	}
	if f.Write != nil {
		o.write = func(ctx context.Context, w io.Writer, s Subject, opt *export.Options) error {
			return f.Write(ctx, w, s.Source, opt)
		}
	}
	return o
}

// nameOf is a format's name, without what it needs where that is here.
func nameOf(f formats.Format) string {
	name := words.Said(f.Name)
	if f.Needs != nil && f.Needs() == nil {
		name, _, _ = strings.Cut(name, " (")
	}
	return name
}

func writePage(_ context.Context, w io.Writer, s Subject, o *export.Options) error {
	p, err := page.Of(s.Lesson, s.Plays...)
	if err != nil {
		return err
	}
	lacks, err := p.Write(w)
	if err == nil && o.Lacks != nil && len(lacks) > 0 {
		o.Lacks(lacks)
	}
	return err
}

func sheet(h handout.Sheet) Output {
	return Output{Name: words.T("handout: %s", h.Title()), Ext: ".pdf", Kind: Document, Key: "handout " + h.Name,
		write: func(ctx context.Context, w io.Writer, s Subject, o *export.Options) error {
			plays := s.Plays
			if h.Cards {
				plays = nil // made of pairs
			}
			r, err := handout.Write(ctx, w, s.Lesson, h, &handout.Options{Plays: plays, Progress: o.Progress})
			for _, note := range r.Notes {
				if o.Note != nil {
					o.Note(note)
				}
			}
			return err
		}}
}
