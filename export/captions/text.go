package captions

import (
	"strings"
	"unicode"
)

// clean is a text as one line: without control characters, which no format has a
// sign for, and with single spaces. Marks that set the direction of writing stay.
func clean(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r) || r == '\u2028' || r == '\u2029':
			return ' '
		case unicode.IsControl(r) || r == unicode.ReplacementChar || r == '\ufeff':
			return -1
		}
		return r
	}, s)
	return strings.Join(strings.Fields(s), " ")
}

// cleanLines is a text of several lines, each of them clean and none of them empty: an
// empty one would end a cue.
func cleanLines(s string) string {
	var all []string
	for _, line := range strings.FieldsFunc(s, func(r rune) bool { return r == '\n' || r == '\r' || r == '\u2028' || r == '\u2029' }) {
		if line = clean(line); line != "" {
			all = append(all, line)
		}
	}
	return strings.Join(all, "\n")
}

// oneLine is a text that cleanLines has made as one line.
func oneLine(s string) string { return strings.ReplaceAll(s, "\n", " ") }

// vttEscape is a text as WebVTT writes it; a --> is gone with its >.
var vttEscape = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;").Replace

// arrow stands for the signs between two times where they cannot be escaped.
const arrow = "→"

// plain is a text for a format without escapes: no --> is left.
func plain(s string) string { return strings.ReplaceAll(s, "-->", arrow) }

// joiner is nothing to the eye. After a bracket it keeps players from reading a tag.
const joiner = "\u2060"

// srtEscape is a text as SRT writes it. SRT has no escapes, but players take
// <b> and {\an8} for tags.
func srtEscape(s string) string {
	return strings.NewReplacer("<", "<"+joiner, "{", "{"+joiner).Replace(plain(s))
}
