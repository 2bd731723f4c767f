package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"homeside/export"
	"homeside/model/lesson"
	"homeside/words"
)

const exportHelp = `Draw a play as a still or a clip; the file's ending says the format.

.mp4 (H.264), .webm (VP9) and .mov (ProRes 4444, for an edit) need the program
ffmpeg (Debian and Ubuntu: apt install ffmpeg; others: ffmpeg.org), which packs
them; the same ffmpeg gives the same bytes, as all other formats do everywhere.
Their sides must be even. .frames is a folder of numbered PNG pictures, which
replaces one of its kind. --background clear makes .png, .svg, .pdf, .apng,
.webm, .mov and .frames transparent, to be laid over a picture or footage.

With --play all or --format it writes several files. --out is then a pattern:
{play} is the play's number, {title} its title as part of a file name, {ext}
the format. Folders that are missing are made. Two files of the same name are
refused before anything is written. A line on standard error tells of each
file; one that cannot be written does not stop the others.

--resume skips a file that is current: each says, in a remark that players and
viewers do not show, from which lesson, with which flags and by which program
it was made. Files are put in place as a whole, so one that is there is
complete. Words and beeps, which take no time, are always written.

--shard 2/8 writes the second of eight parts; all eight together write every
file once. Exit codes: 0 all is written or current, 1 some files could not be
written, 2 nothing was begun, or cancelled.`

// batchFlags are the flags of export for several files, as they are typed.
type batchFlags struct {
	formats, shard string
	jobs           int
	resume         bool
}

// batchOnly are the flags that ask for nothing by themselves.
var batchOnly = []string{"jobs", "shard", "resume"}

func (b *batchFlags) add(fl *pflag.FlagSet) {
	fl.StringVar(&b.formats, "format", "", "formats of several files, such as gif,mp4,png,vtt (the ending of --out if not given)")
	fl.IntVar(&b.jobs, "jobs", 1, "files written at the same time")
	fl.StringVar(&b.shard, "shard", "", "part of the files, such as 2/8 for the second of eight")
	fl.BoolVar(&b.resume, "resume", false, "skip files that were made of this lesson, with these flags, by this program")
}

// playChoice is a play counted from 1, or all of them.
type playChoice struct {
	number int
	all    bool
}

// Set reads "3" or "all".
func (p *playChoice) Set(s string) error {
	if s == "all" {
		*p = playChoice{all: true}
		return nil
	}
	v, err := strconv.ParseInt(s, 0, 64)
	*p = playChoice{number: int(v)}
	return err
}

// String is what Set reads.
func (p *playChoice) String() string {
	if p.all {
		return "all"
	}
	return strconv.Itoa(p.number)
}

// Type is the kind of value in the help text.
func (p *playChoice) Type() string { return "number" }

func (f exportFlags) isBatch(c *cobra.Command) bool {
	return f.play.all || f.reels.reel == "all" || c.Flags().Changed("format")
}

// outputs are the files of this shard.
func (f exportFlags) outputs(c *cobra.Command, path string, l lesson.Lesson, items []item, fs []kind) ([]output, error) {
	part, err := parseShard(f.batch.shard)
	if err != nil {
		return nil, err
	}
	wanted, err := f.wanted(c, path, l)
	if err != nil {
		return nil, err
	}
	outs, err := outputsOf(f.out, items, wanted, fs)
	return part.of(outs), err
}

// checkBatch is what can be said before the lesson is read.
func (f exportFlags) checkBatch(c *cobra.Command) ([]kind, *export.Options, error) {
	if err := checkPattern(f.out); err != nil {
		return nil, nil, err
	}
	if f.batch.jobs < 1 {
		return nil, nil, fmt.Errorf("--jobs %d: want at least 1", f.batch.jobs)
	}
	fs, err := f.formats(c)
	if err != nil {
		return nil, nil, err
	}
	o, err := f.options(c)
	if err != nil {
		return nil, nil, err
	}
	if _, err := o.Checked(); err != nil {
		return nil, nil, err
	}
	return fs, o, f.fitAny(c, fs)
}

// formats are those of --format, or the one of the pattern's ending.
func (f exportFlags) formats(c *cobra.Command) ([]kind, error) {
	if !c.Flags().Changed("format") {
		if strings.Contains(f.out, "{ext}") {
			return nil, fmt.Errorf("--out %s: say with --format what {ext} is", f.out)
		}
		one, err := kindByPath(f.out)
		return []kind{one}, err
	}
	var fs []kind
	for name := range strings.SplitSeq(f.batch.formats, ",") {
		ext := "." + strings.TrimPrefix(strings.TrimSpace(name), ".")
		one, err := kindByPath("x" + ext)
		if err != nil || one.Ext != strings.ToLower(ext) {
			return nil, fmt.Errorf("--format %q: no format is called %q; there are %s", f.batch.formats, name, allEndings())
		}
		if slices.ContainsFunc(fs, func(g kind) bool { return g.Ext == one.Ext }) {
			return nil, fmt.Errorf("--format %q: %s is there twice", f.batch.formats, one.Ext)
		}
		fs = append(fs, one)
	}
	return fs, nil
}

// fitAny says which flag means nothing for any of the kinds. With several kinds
// in one batch each flag is for those it means something for.
func (f exportFlags) fitAny(c *cobra.Command, fs []kind) error {
	for _, k := range []struct {
		has   func(kind) bool
		name  string
		flags []string
	}{
		{kind.isStill, "stills", stillFlags}, {kind.hasTimes, "clips and words", timeFlags}, {kind.isClip, "clips", []string{"fps"}},
		{kind.isPicture, "pictures and clips", placeFlags}, {kind.hasFull, "AVI clips", []string{"full-colour"}}, {kind.isHeard, "MP4 and WebM clips", []string{"sound"}},
	} {
		for _, name := range k.flags {
			if c.Flags().Changed(name) && !slices.ContainsFunc(fs, k.has) {
				return fmt.Errorf("--%s is for %s, and there are none among the files", name, k.name)
			}
		}
	}
	for _, g := range fs {
		if g.isClip() && f.fps > g.MaxFPS {
			return fmt.Errorf("--fps %d: %s has at most %d", f.fps, g.Ext, g.MaxFPS)
		}
		if strings.EqualFold(f.ground, "clear") && g.isPicture() && !g.Clear {
			return fmt.Errorf("--background clear: %w", &export.ClearError{Of: g.Ext})
		}
	}
	return nil
}

// of are the chosen plays of a lesson, from 0.
func (p playChoice) of(path string, l lesson.Lesson) ([]int, error) {
	n := len(l.Plays)
	if !p.all && (p.number < 1 || p.number > n) {
		return nil, fmt.Errorf("%s: --play %d: the lesson has %s", path, p.number, words.Plays(n))
	}
	if n == 0 {
		return nil, fmt.Errorf("%s: --play all: the lesson has no plays", path)
	}
	if !p.all {
		return []int{p.number - 1}, nil
	}
	all := make([]int, n)
	for i := range all {
		all[i] = i
	}
	return all, nil
}
