package main

import (
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// output is one file of a batch.
type output struct {
	path   string
	item   int // from 0
	format kind
}

// outputsOf are the files of a batch, play by play or reel by reel, named by a
// pattern with {play} or {reel}, {title} and {ext}. No two have the same name, not even where capitals
// do not count.
func outputsOf(pattern string, all []item, wanted []int, fs []kind) ([]output, error) {
	var outs []output
	taken := map[string]output{}
	for _, i := range wanted {
		for _, f := range fs {
			o := output{nameOf(pattern, i, all[i].title, f), i, f}
			if err := o.check(); err != nil {
				return nil, err
			}
			key := strings.ToLower(o.path)
			if other, is := taken[key]; is {
				return nil, fmt.Errorf("--out %s: %s of %s %d and %s of %[3]s %[6]d have the same name: %[7]s", pattern,
					other.format.Ext, all[i].what, other.item+1, f.Ext, i+1, o.path)
			}
			taken[key] = o
			outs = append(outs, o)
		}
	}
	return outs, nil
}

// check says why the format cannot be written to a file of that name.
func (o output) check() error {
	f, err := kindByPath(o.path)
	if err == nil && f.Ext != o.format.Ext {
		err = fmt.Errorf("%s: a name for %s must end in %s: end --out in .{ext}", o.path, o.format.Ext, o.format.Ext)
	}
	return err
}

var placeholder = regexp.MustCompile(`\{[^{}]*\}`)

// checkPattern says which placeholder nobody knows.
func checkPattern(pattern string) error {
	for _, p := range placeholder.FindAllString(pattern, -1) {
		if !slices.Contains([]string{"{play}", "{reel}", "{title}", "{ext}"}, p) {
			return fmt.Errorf("--out %s: there is no %s; there are {play} or {reel}, {title}, {ext}", pattern, p)
		}
	}
	return nil
}

// nameOf fills in a pattern for a play or reel counted from 0.
func nameOf(pattern string, i int, title string, f kind) string {
	return filepath.Clean(strings.NewReplacer(
		"{play}", strconv.Itoa(i+1),
		"{reel}", strconv.Itoa(i+1),
		"{title}", safeName(title),
		"{ext}", strings.TrimPrefix(f.Ext, "."),
	).Replace(pattern))
}

// maxName is the length of a title in a file name, in bytes; file systems take
// 255 for the whole name.
const maxName = 100

// reserved are names that Windows keeps for devices, whatever their ending.
var reserved = regexp.MustCompile(`(?i)^(con|prn|aux|nul|com[0-9]|lpt[0-9])$`)

// safeName is a title as part of a file name on any system: letters, marks and
// digits of any script and underscores stay, all between them becomes one
// hyphen. It is never empty.
func safeName(title string) string {
	words := strings.FieldsFunc(title, func(r rune) bool {
		return r == utf8.RuneError || r != '_' && !unicode.In(r, unicode.L, unicode.M, unicode.N)
	})
	name := strings.Join(words, "-")
	for len(name) > maxName {
		_, size := utf8.DecodeLastRuneInString(name)
		name = name[:len(name)-size]
	}
	name = strings.TrimRight(name, "-")
	switch {
	case name == "":
		return "untitled"
	case reserved.MatchString(name):
		return name + "_"
	}
	return name
}

// shard is one of several equal parts of a batch, counted from 1; the zero
// value is the whole.
type shard struct{ part, parts int }

// parseShard reads "2/8".
func parseShard(s string) (shard, error) {
	if s == "" {
		return shard{}, nil
	}
	part, parts, _ := strings.Cut(s, "/")
	i, err := strconv.Atoi(part)
	n, err2 := strconv.Atoi(parts)
	if err != nil || err2 != nil || i < 1 || i > n {
		return shard{}, fmt.Errorf("--shard %q: want part/parts such as 2/8, from 1/8 to 8/8", s)
	}
	return shard{i, n}, nil
}

// of is the shard's part of all outputs: over all shards each output once. The
// outputs of every format are dealt out in turn, so that no shard gets all the
// slow ones.
func (s shard) of(outs []output) []output {
	if s.parts == 0 {
		return outs
	}
	var mine []output
	for at, i := range dealt(outs) {
		if at%s.parts == s.part-1 {
			mine = append(mine, outs[i])
		}
	}
	return mine
}

// dealt are the indices of outputs, format by format.
func dealt(outs []output) []int {
	order := make([]int, len(outs))
	for i := range order {
		order[i] = i
	}
	rank := map[string]int{}
	for _, o := range outs {
		if _, is := rank[o.format.Ext]; !is {
			rank[o.format.Ext] = len(rank)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return rank[outs[a].format.Ext] - rank[outs[b].format.Ext] })
	return order
}
