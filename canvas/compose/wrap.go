package compose

import (
	"sort"
	"strings"

	"homeside/canvas"
	"homeside/canvas/look"
)

// Wrap breaks a text into lines no wider than width points. A word longer than
// a line stands alone, shortened.
func Wrap(text string, width float64, size canvas.Points, bold bool) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		word = Shorten(word, width, size, bold)
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && look.Width(longer, bold)*float64(size) > width {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// Balanced breaks a text into as few lines as Wrap does, and these as even as they
// are in the narrowest width that needs no more of them: no word is left over alone
// in the last.
func Balanced(text string, width float64, size canvas.Points, bold bool) []string {
	lines := Wrap(text, width, size, bold)
	if len(lines) < 2 {
		return lines
	}
	said := strings.Join(lines, " ")
	const near = 0.25                                       // of a letter's height: narrower by less is not seen
	for low := width / 2; width-low > near*float64(size); { // two lines and more are longer together than one
		middle := (low + width) / 2
		narrower := Wrap(text, middle, size, bold)
		if len(narrower) > len(lines) || strings.Join(narrower, " ") != said { // a long word would be cut
			low = middle
		} else {
			width, lines = middle, narrower
		}
	}
	return lines
}

// Shorten cuts a text to a width in points and marks the cut; "" if not even one
// letter fits. A letter more never makes a line narrower by more than a kern, so
// that the cut is searched by halves: a line is costly to set.
func Shorten(text string, width float64, size canvas.Points, bold bool) string {
	fits := func(s string) bool { return look.Width(s, bold)*float64(size) <= width }
	if fits(text) {
		return text
	}
	runes := []rune(text)
	cut := func(n int) string { return strings.TrimRight(string(runes[:n]), " ") + "…" }
	n := sort.Search(len(runes), func(n int) bool { return !fits(cut(n + 1)) }) // the letters that fit
	if n == 0 {
		return ""
	}
	return cut(n)
}
