package handout

import (
	"context"
	"errors"
	"fmt"
	"io"

	"homeside/export"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/roster"
	"homeside/words"
)

// Sheet is one kind of handout.
type Sheet struct {
	Name  string        // in options
	Title func() string // for people
	About func() string // what it is for, in a sentence
	Cards bool          // it is made of pairs: the Options' or the lesson's two; else of plays
	fill  func(ctx context.Context, b *book, j job) error
}

// Sheets are all sheets in the order of menus.
var Sheets = []Sheet{
	{"storyboard", storyboardTitle, storyboardAbout, false, storyboard},
	{"cones", conesTitle, conesAbout, false, coneSheet},
	{"match", matchTitle, matchAbout, true, matchCards},
	{"advisor", advisorTitle, advisorAbout, false, advisorSheet},
	{"plan", planTitle, planAbout, false, planSheet},
}

// SheetByName is the sheet of a name; the error lists those there are.
func SheetByName(name string) (Sheet, error) {
	known := ""
	for i, s := range Sheets {
		if s.Name == name {
			return s, nil
		}
		if i > 0 {
			known += ", "
		}
		known += s.Name
	}
	return Sheet{}, fmt.Errorf("sheet %q: there are %s", name, known)
}

// Options say what to print. The zero value is every play on A4.
type Options struct {
	Paper    Paper                 // the zero Paper means A4
	Plays    []int                 // of the lesson's plays, from 0; nil means all
	Pairs    []roster.Pair         // for cards; nil means the lesson's two teams
	Progress func(done, total int) // called after every play or pair; nil means nobody asks
}

// Result is what came of a sheet.
type Result struct {
	Pages int
	Notes []string // what was shortened, or has no letters in the fonts: a sentence each
}

// ErrNoPlays marks a sheet of plays asked of a lesson that has none.
var ErrNoPlays = errors.New("the lesson has no plays: this sheet is made from them")

// job is what a sheet is made of.
type job struct {
	plays    []solved
	pairs    []roster.Pair
	progress func(done, total int)
}

// solved is a play of the lesson with its rally.
type solved struct {
	number int // from 1
	rally  *rally.Rally
}

// Write writes a sheet of a sound lesson. o may be nil.
func Write(ctx context.Context, w io.Writer, l lesson.Lesson, s Sheet, o *Options) (Result, error) {
	if o == nil {
		o = &Options{}
	}
	b := &book{paper: o.Paper, lesson: l, sheet: s.Title()}
	if b.paper == (Paper{}) {
		b.paper = A4
	}
	j, err := o.job(ctx, l, s)
	if err == nil {
		err = s.fill(ctx, b, j)
	}
	if err != nil {
		return Result{}, fmt.Errorf("%s: %w", s.Name, err)
	}
	title := b.sheet
	if l.Title != "" {
		title = l.Title + " - " + b.sheet
	}
	d := b.print(title)
	if lacks := d.Lacking(); len(lacks) > 0 {
		b.note(words.Lacks(lacks))
	}
	if err := d.Write(export.Writer(ctx, w)); err != nil {
		return Result{}, fmt.Errorf("%s: write the PDF: %w", s.Name, err)
	}
	return Result{Pages: len(b.leaves), Notes: b.notes}, nil
}

func (o *Options) job(ctx context.Context, l lesson.Lesson, s Sheet) (job, error) {
	j := job{pairs: o.Pairs, progress: o.Progress}
	if j.progress == nil {
		j.progress = func(int, int) {}
	}
	if s.Cards {
		return j, nil
	}
	which := o.Plays
	if which == nil {
		for i := range l.Plays {
			which = append(which, i)
		}
	}
	if len(which) == 0 {
		return j, ErrNoPlays
	}
	for _, i := range which {
		if err := ctx.Err(); err != nil {
			return j, err
		}
		r, err := rally.Solve(l, i)
		if err != nil {
			return j, err
		}
		j.plays = append(j.plays, solved{i + 1, r})
	}
	return j, nil
}
