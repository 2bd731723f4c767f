package captions

import (
	"io"
	"strconv"
	"strings"

	"homeside/export"
)

// WriteWebVTT writes the captions and signals as WebVTT (W3C, WebVTT: The Web
// Video Text Tracks Format). Without any the file is the header alone.
func WriteWebVTT(w io.Writer, p Play, o *export.Options) error {
	return writeVTT(w, p, o, p.Cues)
}

// WriteChapters writes the chapters as WebVTT, for a track of the kind chapters.
func WriteChapters(w io.Writer, p Play, o *export.Options) error {
	return writeVTT(w, p, o, p.Chapters)
}

func writeVTT(w io.Writer, p Play, o *export.Options, lines []Line) error {
	return writeCues(w, p, o, lines, cueFormat{header: "WEBVTT\n\n", sign: ".", escape: vttEscape})
}

// WriteSRT writes the captions and signals as SRT in UTF-8. It has no header:
// without any the file is empty.
func WriteSRT(w io.Writer, p Play, o *export.Options) error {
	return writeCues(w, p, o, p.Cues, cueFormat{sign: ",", escape: srtEscape})
}

// cueFormat is in what the two formats differ.
type cueFormat struct {
	header, sign string
	escape       func(string) string
}

func writeCues(w io.Writer, p Play, o *export.Options, lines []Line, f cueFormat) error {
	c, err := clockOf(p, o)
	if err != nil {
		return err
	}
	var b strings.Builder
	b.WriteString(f.header)
	for i, t := range c.cut(lines) {
		if i > 0 {
			b.WriteString("\n")
		}
		b.WriteString(strconv.Itoa(i+1) + "\n" + t.from.stamp(f.sign) + " --> " + t.to.stamp(f.sign) + "\n" + f.escape(t.Text) + "\n")
	}
	_, err = io.WriteString(w, b.String())
	return err
}
