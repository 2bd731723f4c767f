package main

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"homeside/export/formats"
	_ "homeside/internal/fixedseed"
)

func TestSafeName(t *testing.T) {
	for title, want := range map[string]string{
		"from the odd court":      "from-the-odd-court",
		"  Wide serve -- stacked": "Wide-serve-stacked",
		"3.5 s: drive/lob?":       "3-5-s-drive-lob",
		`a\b|c*d"e<f>g` + "\x00h": "a-b-c-d-e-f-g-h",
		"../../etc/passwd":        "etc-passwd",
		"..":                      "untitled",
		"":                        "untitled",
		"{play}":                  "play",
		"over_the_top":            "over_the_top",
		"Über die Mitte, né à":    "Über-die-Mitte-né-à",
		"e\u0301cart":             "e\u0301cart",
		"左から右へ":                   "左から右へ",
		"bad \xff bytes":          "bad-bytes",
		"Con":                     "Con_", // a device on Windows, with any ending
		"lpt1":                    "lpt1_",
		"contact":                 "contact",
		strings.Repeat("x", 200):  strings.Repeat("x", 100),
		strings.Repeat("右", 200):  strings.Repeat("右", 33), // 3 bytes each
	} {
		if got := safeName(title); got != want {
			t.Errorf("safeName(%q) = %q, want %q", title, got, want)
		}
	}
}

// Whatever a title is, its name is one plain part of a path, and safe as it is.
func TestSafeNameOfAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		title := rapid.OneOf(rapid.String(), rapid.StringMatching(`[-./\\{}a-z :]{0,12}`)).Draw(t, "title")
		got := safeName(title)
		if got == "" || len(got) > maxName+1 || !utf8.ValidString(got) || filepath.Base(got) != got || strings.ContainsAny(got, `./\:*?"<>|{} `) || got[0] == '-' {
			t.Errorf("safeName(%q) = %q", title, got)
		}
		if again := safeName(got); again != got && !strings.HasSuffix(again, "_") {
			t.Errorf("safeName(%q) = %q, want it unchanged", got, again)
		}
	})
}

// three are plays with titles, two of them the same but for capitals.
var three = []item{{what: "play", title: "Serve wide"}, {what: "play", title: "serve WIDE"}, {what: "play", title: "Lob"}}

// table are formats by their endings.
func table(t *testing.T, exts ...string) []kind {
	t.Helper()
	var fs []kind
	for _, ext := range exts {
		f, err := kindByPath("x" + ext)
		if err != nil {
			t.Fatal(err)
		}
		fs = append(fs, f)
	}
	return fs
}

func paths(outs []output) []string {
	var all []string
	for _, o := range outs {
		all = append(all, filepath.ToSlash(o.path))
	}
	return all
}

func TestOutputs(t *testing.T) {
	for _, c := range []struct {
		pattern string
		wanted  []int
		exts    []string
		want    string // paths, or an error
	}{
		{"out/{play}-{title}.{ext}", []int{0, 1, 2}, []string{".gif", ".png"},
			"out/1-Serve-wide.gif out/1-Serve-wide.png out/2-serve-WIDE.gif out/2-serve-WIDE.png out/3-Lob.gif out/3-Lob.png"},
		{"{ext}/./{title}/{play}.{ext}", []int{0, 2}, []string{".gif"}, "gif/Serve-wide/1.gif gif/Lob/3.gif"},
		{"{play}.{ext}", []int{0}, []string{".chapters.vtt", ".vtt", ".wav", ".mp4"}, "1.chapters.vtt 1.vtt 1.wav 1.mp4"},
		{"x.chapters.{ext}", []int{0}, []string{".vtt"}, "x.chapters.vtt: a name for .vtt must end in .vtt"},
		{"{title}.PNG", []int{2}, []string{".png"}, "Lob.PNG"},
		{"{play}{play}.{ext}", []int{1}, []string{".svg"}, "22.svg"},
		{"x.{ext}", []int{0, 2}, []string{".gif"}, "--out x.{ext}: .gif of play 1 and .gif of play 3 have the same name: x.gif"},
		{"{title}.{ext}", []int{0, 1}, []string{".gif"}, ".gif of play 1 and .gif of play 2 have the same name: serve-WIDE.gif"},
		{"{play}.gif", []int{0}, []string{".gif", ".png"}, "1.gif: a name for .png must end in .png: end --out in .{ext}"},
		{"{play}", []int{0}, []string{".gif"}, "1: the name must end in one of"},
		{"{play}.{ext}.bak", []int{0}, []string{".gif"}, "1.gif.bak: no format is called .bak"},
	} {
		outs, err := outputsOf(c.pattern, three, c.wanted, table(t, c.exts...))
		got := strings.Join(paths(outs), " ")
		if err != nil {
			got = err.Error()
		}
		if err == nil && got != c.want || !strings.Contains(got, c.want) {
			t.Errorf("outputsOf(%q, %v, %v) = %s, want %s", c.pattern, c.wanted, c.exts, got, c.want)
		}
	}
}

func TestParseShard(t *testing.T) {
	for s, want := range map[string]shard{"": {}, "1/1": {1, 1}, "2/8": {2, 8}, "8/8": {8, 8}} {
		if got, err := parseShard(s); err != nil || got != want {
			t.Errorf("parseShard(%q) = %v, %v, want %v", s, got, err, want)
		}
	}
	for _, s := range []string{"0/2", "3/2", "-1/2", "1", "1/", "/2", "1/0", "1/2/3", "a/b", "1.0/2", " 1/2"} {
		if got, err := parseShard(s); err == nil {
			t.Errorf("parseShard(%q) = %v, want an error", s, got)
		}
	}
}

// Over all shards each output comes exactly once; no shard has more than one
// file more than another, neither in all nor of any format.
func TestShardsCoverEachOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var fs []kind
		for _, f := range formats.All[:rapid.IntRange(1, len(formats.All)).Draw(t, "formats")] {
			fs = append(fs, kind{f, nil})
		}
		plays := make([]item, rapid.IntRange(1, 20).Draw(t, "plays"))
		wanted := make([]int, len(plays))
		for i := range wanted {
			wanted[i] = i
		}
		outs, err := outputsOf("{play}.{ext}", plays, wanted, fs)
		if err != nil || len(outs) != len(plays)*len(fs) {
			t.Fatalf("outputsOf: %d outputs, %v, want %d", len(outs), err, len(plays)*len(fs))
		}
		parts := rapid.IntRange(1, 30).Draw(t, "parts")
		var all []string
		for i := range parts {
			mine := paths(shard{i + 1, parts}.of(outs))
			checkFair(t, fmt.Sprintf("%d/%d", i+1, parts), mine, len(outs), parts)
			for _, f := range fs {
				ofFormat := slices.DeleteFunc(slices.Clone(mine), func(p string) bool { return filepath.Ext(p) != f.Ext })
				checkFair(t, fmt.Sprintf("%d/%d of %s", i+1, parts, f.Ext), ofFormat, len(plays), parts)
			}
			all = append(all, mine...)
		}
		want := paths(outs)
		slices.Sort(all)
		slices.Sort(want)
		if !slices.Equal(all, want) {
			t.Errorf("%d shards of %v are %v", parts, want, all)
		}
	})
}

// checkFair wants a part of total to be the even share, rounded either way.
func checkFair(t *rapid.T, what string, mine []string, total, parts int) {
	if low, high := total/parts, (total+parts-1)/parts; len(mine) < low || len(mine) > high {
		t.Errorf("shard %s has %d files, want %d to %d", what, len(mine), low, high)
	}
}
