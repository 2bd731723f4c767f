package captions

import (
	"fmt"
	"html"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"
)

// vttCue is one cue block as the grammar reads it.
type vttCue struct {
	from, to int // ms
	text     string
}

// The grammar of W3C, WebVTT: The Web Video Text Tracks Format, section 4, as
// far as files may use it here: the magic (4.1), cue blocks with identifiers,
// timings and text without tags (4.2.2), in the order of their starts.
var (
	vttTimings = regexp.MustCompile(`^(\d{2,}):([0-5]\d):([0-5]\d)\.(\d{3})[ \t]+-->[ \t]+(\d{2,}):([0-5]\d):([0-5]\d)\.(\d{3})$`)
	vttText    = regexp.MustCompile(`^([^\n\r&<]|&(amp|lt|gt|nbsp|lrm|rlm);)+$`)
)

// parseVTT holds a file against the grammar.
func parseVTT(file string) ([]vttCue, error) {
	body, ok := strings.CutPrefix(file, "WEBVTT\n\n")
	if !ok || !utf8.ValidString(file) || strings.ContainsAny(file, "\x00\r") {
		return nil, fmt.Errorf("no WebVTT file: %.20q", file)
	}
	var cues []vttCue
	ids := map[string]bool{}
	for block := range strings.SplitSeq(strings.Trim(body, "\n"), "\n\n") {
		if block == "" {
			continue
		}
		c, id, err := parseBlock(block)
		if err != nil {
			return nil, err
		}
		if ids[id] || len(cues) > 0 && c.from < cues[len(cues)-1].from {
			return nil, fmt.Errorf("cue %s is there twice or starts before the one before it", id)
		}
		ids[id] = true
		cues = append(cues, c)
	}
	return cues, nil
}

func parseBlock(block string) (c vttCue, id string, err error) {
	lines := strings.Split(block, "\n")
	if len(lines) < 3 || strings.Contains(lines[0], "-->") {
		return c, "", fmt.Errorf("block %q is not an identifier, timings and text", block)
	}
	m := vttTimings.FindStringSubmatch(lines[1])
	if m == nil {
		return c, "", fmt.Errorf("%q are no timings", lines[1])
	}
	c.from, c.to = milliseconds(m[1:5]), milliseconds(m[5:])
	if c.from >= c.to {
		return c, "", fmt.Errorf("%q ends before it starts", lines[1])
	}
	for _, line := range lines[2:] {
		if !vttText.MatchString(line) || strings.Contains(line, "-->") {
			return c, "", fmt.Errorf("%q is no cue text", line)
		}
	}
	c.text = html.UnescapeString(strings.Join(lines[2:], "\n"))
	return c, lines[0], nil
}

// milliseconds adds up hours, minutes, seconds and milliseconds.
func milliseconds(digits []string) int {
	n := [4]int{}
	for i, d := range digits {
		n[i], _ = strconv.Atoi(d) // the grammar lets digits through only
	}
	return ((n[0]*60+n[1])*60+n[2])*1000 + n[3]
}

func TestGrammarCanFail(t *testing.T) {
	const good = "WEBVTT\n\n1\n00:00:00.000 --> 00:00:01.000\na &amp; b\n"
	if got, err := parseVTT(good); err != nil || len(got) != 1 || got[0] != (vttCue{0, 1000, "a & b"}) {
		t.Errorf("parseVTT(%q) = %v, %v, want one cue", good, got, err)
	}
	for _, bad := range []string{
		"", "WEBVTT", "WEBVTT\n1\n", "webvtt\n\n",
		strings.Replace(good, ".000", ",000", 1),
		strings.Replace(good, "00:01.000", "00:00.000", 1),
		strings.Replace(good, "00:01.000", "00:61.000", 1),
		strings.Replace(good, "&amp;", "&", 1),
		strings.Replace(good, "a", "<a", 1),
		strings.Replace(good, "a", "-->", 1),
		strings.Replace(good, "a &amp; b\n", "", 1),
		good + good[len("WEBVTT\n"):],
		good + "\n2\n00:00:02.000 --> 00:00:03.000\nx\n\n3\n00:00:01.000 --> 00:00:03.000\ny\n",
	} {
		if got, err := parseVTT(bad); err == nil {
			t.Errorf("parseVTT(%q) = %v, want an error", bad, got)
		}
	}
}
