package captions

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"homeside/model/lesson"
	"homeside/model/units"
)

// hostile are texts that break careless writers.
var hostile = []string{
	"4", "00:00:09,000 --> 00:00:10,000", "line\n\n7\n00:00:01,000 --> 00:00:02,000\nanother", "-->", "--->>", "a --> b",
	"<b>bold</b> <script>alert(1)</script> <00:00:01.000>", `{\an8}top {y:i}`, "&amp; &lt; & < >", "NOTE this", "WEBVTT", "STYLE",
	"זוז מיד אחרי החבטה", "تحرك \u202eالآن\u202c", "go 🏓👩🏽‍🦽 now", "tab\tnul\x00bell\a", "\ufeffmark", "ab\u2028cd", "«ß» 中文",
	strings.Repeat("Ü", lesson.MaxText), strings.Repeat("wide word ", lesson.MaxText/10),
}

func hostileCues() []lesson.Cue {
	var cues []lesson.Cue
	for i, text := range hostile {
		cues = append(cues, said(-1.5+0.1*units.Seconds(i), -1+0.1*units.Seconds(i), text))
	}
	return cues
}

// ffmpeg, a program from outside, finds the cues, times and texts that were
// written; overlapping ones too, as each of these overlaps its neighbours.
func TestReadBackByFFmpeg(t *testing.T) {
	p := playOf(t, drill(hostileCues()...))
	for _, c := range []struct {
		ext   string
		write writer
		shown func(string) string // a text as ffmpeg writes it again in the format ASS
	}{{".srt", WriteSRT, srtEscape}, {".vtt", WriteWebVTT, strings.NewReplacer("{", `\{`, "}", `\}`).Replace}} {
		path := filepath.Join(t.TempDir(), "x"+c.ext)
		if err := os.WriteFile(path, []byte(written(t, c.write, p, nil)), 0o600); err != nil {
			t.Fatal(err)
		}
		var times []string
		for i := range hostile {
			times = append(times, fmt.Sprintf("%.6f|0.500000", 0.1*float64(i)))
		}
		got := output(t, "ffprobe", "-v", "error", "-show_entries", "packet=pts_time,duration_time", "-of", "compact=p=0:nk=1", path)
		for i := range got {
			got[i] = strings.TrimSuffix(got[i], "|") // of the identifier, which has no value
		}
		if !slices.Equal(got, times) {
			t.Errorf("%s: ffprobe finds times %q, want %q", c.ext, got, times)
		}
		var texts []string
		for _, s := range hostile {
			texts = append(texts, c.shown(clean(s)))
		}
		if got := dialogue(output(t, "ffmpeg", "-v", "error", "-i", path, "-f", "ass", "-")); !slices.Equal(got, texts) {
			t.Errorf("%s: ffmpeg reads %q, want %q", c.ext, got, texts)
		}
	}
}

// An empty WebVTT file is one that ffmpeg reads.
func TestEmptyReadByFFmpeg(t *testing.T) {
	path := filepath.Join(t.TempDir(), "x.vtt")
	if err := os.WriteFile(path, []byte(written(t, WriteWebVTT, playOf(t, drill()), nil)), 0o600); err != nil {
		t.Fatal(err)
	}
	if got := output(t, "ffprobe", "-v", "error", "-show_entries", "stream=codec_name:packet=pts_time", "-of", "csv=p=0", path); !slices.Equal(got, []string{"webvtt"}) {
		t.Errorf("ffprobe reads %q, want a stream of webvtt without packets", got)
	}
}

// dialogue are the texts of a file in the format ASS, after nine fields.
func dialogue(lines []string) []string {
	var texts []string
	for _, line := range lines {
		if rest, ok := strings.CutPrefix(line, "Dialogue: "); ok {
			texts = append(texts, strings.SplitN(rest, ",", 10)[9])
		}
	}
	return texts
}

// output are the lines that a program of the Debian package ffmpeg prints.
func output(t *testing.T, program string, args ...string) []string {
	t.Helper()
	var errs bytes.Buffer
	c := exec.Command(program, args...)
	c.Stderr = &errs
	out, err := c.Output()
	if err != nil || errs.Len() > 0 {
		t.Fatalf("%s (Debian package ffmpeg): %v: %s", program, err, errs.Bytes())
	}
	return strings.FieldsFunc(string(out), func(r rune) bool { return r == '\n' || r == '\r' })
}
