package compose

import (
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

// Shorten cuts a text to a width in points and marks the cut.
func Shorten(text string, width float64, size canvas.Points, bold bool) string {
	if look.Width(text, bold)*float64(size) <= width {
		return text
	}
	runes := []rune(text)
	for n := len(runes) - 1; n > 0; n-- {
		if s := strings.TrimRight(string(runes[:n]), " ") + "…"; look.Width(s, bold)*float64(size) <= width {
			return s
		}
	}
	return ""
}
