package look

import (
	"slices"
	"unicode"

	"github.com/go-text/typesetting/di"
	"github.com/go-text/typesetting/harfbuzz"
	"golang.org/x/text/unicode/bidi"
)

// run is a part of a text that runs in one direction, in runes.
type run struct {
	from, to int
	level    int // odd runs from right to left; numbers and words in it are one deeper
}

func (r run) direction() di.Direction {
	if r.level%2 == 1 {
		return di.DirectionRTL
	}
	return di.DirectionLTR
}

// runsOf are the runs of a text in the order of reading (Unicode Standard Annex
// 9; the text's first strong letter says where it begins).
func runsOf(text []rune) []run {
	if !slices.ContainsFunc(text, backward) {
		return []run{{0, len(text), 0}}
	}
	var p bidi.Paragraph
	if _, err := p.SetString(inOneLine(text)); err != nil {
		return []run{{0, len(text), 0}}
	}
	order, err := p.Order()
	if err != nil {
		return []run{{0, len(text), 0}}
	}
	base := baseOf(text)
	var runs []run
	for i := range order.NumRuns() {
		part := order.Run(i)
		first, last := part.Pos()
		r := run{first, last + 1, 1}
		if part.Direction() == bidi.LeftToRight {
			r.level = 2 * base
			if n := number(text[r.from:r.to]); n > 0 && i > 0 && base == 0 {
				runs = append(runs, run{r.from, r.from + n, 2})
				r.from += n
			}
		}
		if r.from < r.to {
			runs = append(runs, r)
		}
	}
	return runs
}

// inOneLine is a text with spaces for the ends of lines, at which it would be cut.
func inOneLine(text []rune) string {
	line := slices.Clone(text)
	for i, r := range line {
		if p, _ := bidi.LookupRune(r); p.Class() == bidi.B {
			line[i] = ' '
		}
	}
	return string(line)
}

// backward says whether a letter is of a script that runs from right to left.
func backward(r rune) bool {
	p, _ := bidi.LookupRune(r)
	c := p.Class()
	return c == bidi.R || c == bidi.AL || c == bidi.AN || c == bidi.RLO || c == bidi.RLE || c == bidi.RLI
}

// baseOf is the level of a text: 1 if its first strong letter runs from right to
// left (rules P2 and P3).
func baseOf(text []rune) int {
	for _, r := range text {
		p, _ := bidi.LookupRune(r)
		switch p.Class() {
		case bidi.L:
			return 0
		case bidi.R, bidi.AL:
			return 1
		}
	}
	return 0
}

// number is how many runes at the head of a run are a number after letters that
// run from right to left, which belongs to them.
func number(text []rune) int {
	n := 0
	for i, r := range text {
		p, _ := bidi.LookupRune(r)
		switch p.Class() {
		case bidi.L:
			return n
		case bidi.EN, bidi.AN:
			n = i + 1
		}
	}
	return n
}

// inSight puts pieces from the order of reading into that on the page: rule L2.
func inSight(pieces []piece) []piece {
	deepest := 0
	for _, p := range pieces {
		deepest = max(deepest, p.level)
	}
	for level := deepest; level > 0; level-- {
		for from := 0; from < len(pieces); from++ {
			to := from
			for to < len(pieces) && pieces[to].level >= level {
				to++
			}
			slices.Reverse(pieces[from:to])
			from = max(from, to-1)
		}
	}
	return pieces
}

// unseen says whether a letter only tells others how to stand or join, or is a
// kind of space: it need not be in a font.
func unseen(r rune) bool { return unicode.Is(unicode.Zs, r) || harfbuzz.IsDefaultIgnorable(r) }
