package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

	"github.com/spf13/cobra"

	"homeside/export"
	"homeside/export/formats"
	"homeside/model/lessonfile"
	"homeside/words"
)

// errSomeFailed is returned by a batch that has told of its failures.
var errSomeFailed = errors.New("some files could not be written")

// batch is what all files of one call have in common.
type batch struct {
	lesson  string    // file
	changed time.Time // the lesson file, before it was read
	options *export.Options
	resume  bool
	set     string // all else that the files depend on: the program, the lesson, the flags
	hear    func(*export.Options, formats.Told)
	items   []item // from 0
}

func exportBatch(c *cobra.Command, path string, f exportFlags) error {
	fs, o, err := f.checkBatch(c)
	if err != nil {
		return err
	}
	sight, err := f.view.sight(c)
	if err != nil {
		return err
	}
	if _, err := f.reels.asked(c); err != nil {
		return err
	}
	b := batch{lesson: path, changed: changeOf(path), options: o, resume: f.batch.resume, set: settings(c, path), hear: f.hear}
	l, err := lessonfile.Open(path)
	if err != nil {
		return err
	}
	if c.Flags().Changed("fit") {
		if _, err := f.reels.options(l); err != nil {
			return err
		}
	}
	b.items = f.items(c, l, sight)
	outs, err := f.outputs(c, path, l, b.items, fs)
	if err != nil {
		return err
	}
	if err := makeFolders(outs); err != nil {
		return err
	}
	return b.run(c.Context(), outs, f.batch.jobs, c.ErrOrStderr())
}

// makeFolders makes the folders of all outputs, or says which cannot be made.
func makeFolders(outs []output) error {
	for _, o := range outs {
		folder := filepath.Dir(o.path)
		if err := os.MkdirAll(folder, 0o777); err != nil {
			return fmt.Errorf("make folder %s: %w", folder, err)
		}
	}
	return nil
}

// changeOf is when a file was changed last, the zero time if that is unknown.
func changeOf(path string) time.Time {
	info, err := os.Stat(path)
	if err != nil {
		return time.Time{}
	}
	return info.ModTime()
}

// result is what became of an output.
type result struct {
	output
	skipped bool
	lacks   []rune // letters that no font has
	note    string // what was left out
	err     error
}

// run writes the outputs, some at the same time, and tells of each when it is
// done. It returns when nothing is being written any more.
func (b batch) run(ctx context.Context, outs []output, jobs int, tell io.Writer) error {
	todo := make(chan output, len(outs))
	for _, o := range outs {
		todo <- o
	}
	close(todo)
	results := make(chan result)
	for range min(jobs, len(outs)) {
		go func() {
			for o := range todo {
				results <- b.result(ctx, o)
			}
		}()
	}
	t := tally{of: len(outs), tell: tell}
	for range outs {
		t.add(<-results)
	}
	return t.end()
}

func (b batch) result(ctx context.Context, o output) result {
	if ctx.Err() == nil && b.resume && b.current(o) {
		return result{output: o, skipped: true}
	}
	r := result{output: o}
	options := *b.options
	options.Made = b.made(o)
	options.Lacks = func(letters []rune) { r.lacks = letters }
	if r.err = b.write(ctx, o, &options); r.err == nil {
		s, _ := b.items[o.item].stage() // it was written from
		r.note = s.note
	}
	return r
}

// current is whether an output need not be written again: the file or folder that is
// there says that it was made as it would be now. Save puts only whole ones in place.
func (b batch) current(o output) bool { return formats.MadeOf(o.path) == b.made(o) }

// write makes one file, and says so if the lesson was changed since it was read.
func (b batch) write(ctx context.Context, o output, options *export.Options) error {
	s, err := b.items[o.item].stage()
	if err != nil {
		return fmt.Errorf("save %s: %w", o.path, err)
	}
	b.hear(options, s.told)
	if err := o.format.save(ctx, o.path, s, options); err != nil {
		return err
	}
	if changeOf(b.lesson).Equal(b.changed) {
		return nil
	}
	return fmt.Errorf("save %s: the lesson was changed meanwhile, this is how it was before", o.path)
}

// tally counts results and tells of them, a line each.
type tally struct {
	of                                  int
	written, skipped, failed, cancelled int
	tell                                io.Writer
}

func (t *tally) add(r result) {
	said := words.T("wrote %s", r.path)
	switch {
	case errors.Is(r.err, context.Canceled), errors.Is(r.err, context.DeadlineExceeded):
		t.cancelled++ // told of once, at the end
		return
	case r.err != nil:
		t.failed++
		said = words.T("failed: %s", oneLine(r.err))
	case r.skipped:
		t.skipped++
		said = words.T("current, skipped %s", r.path)
	default:
		t.written++
		if len(r.lacks) > 0 {
			said += " - " + words.Lacks(r.lacks)
		}
		if r.note != "" {
			said += " - " + r.note
		}
	}
	fmt.Fprintf(t.tell, "%d/%d %s\n", t.written+t.skipped+t.failed, t.of, said)
}

// end tells of the whole batch.
func (t *tally) end() error {
	sum := words.T("%d written, %d current, %d failed", t.written, t.skipped, t.failed)
	if t.cancelled > 0 {
		return fmt.Errorf("cancelled: %s, %d left out", sum, t.cancelled)
	}
	fmt.Fprintln(t.tell, sum)
	if t.failed > 0 {
		return errSomeFailed
	}
	return nil
}
