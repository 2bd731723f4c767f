package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/model/lesson"
)

// hostileDrill is the drill with all that a lesson may say: tags, scripts that run
// from right to left, letters that no font has, and captions as long as they can be.
// Its third play says nothing.
func hostileDrill() lesson.Lesson {
	const tags = `</script><script>alert(1)</script><img src=x onerror=1>"'& --> {{.}} `
	l := drill()
	l.Title, l.Notes = tags, strings.Repeat(tags, 10)
	for i := range l.Teams {
		l.Teams[i].Name = "<b>\u0645\u062d\u0645\u062f</b>"
		l.Teams[i].Players[0].Name = "\u05d3\u05d5\u05d3 \U0001F3D3"
	}
	for i := range 2 {
		l.Plays[i].Title = tags
		l.Plays[i].Cues = []lesson.Cue{{Span: lesson.Span{To: lesson.At(lesson.TheEnd)}, Text: strings.Repeat(tags, 6)}}
	}
	l.Plays[2].Title = ""
	return l
}

// Whatever a lesson says, every handout, page, caption file and track of it is
// written in both languages, and nothing of it is a tag in a page.
func TestExportHostile(t *testing.T) {
	l := hostileDrill()
	if err := lesson.Validate(l); err != nil {
		t.Fatal(err)
	}
	path := lessonFile(t, l)
	for _, lang := range []string{"en", "es"} {
		for _, line := range []string{
			"x.pdf --sheet storyboard", "x.pdf --sheet cones --paper letter", "x.pdf --sheet match", "x.pdf --sheet advisor --paper letter", "x.pdf --sheet plan",
			"x.html", "x.vtt", "x.srt", "x.chapters.vtt", "x.txt", "x.wav", "x.vtt --play 3", "x.txt --play 3", "x.wav --play 3", "x.html --play 3",
		} {
			args := strings.Fields(line)
			out := filepath.Join(t.TempDir(), args[0])
			_, stderr, code := cli(append([]string{"export", path, "--lang", lang, "--out", out}, args[1:]...)...)
			data, err := os.ReadFile(out)
			if code != exitOK || err != nil || len(data) < 8 {
				t.Errorf("export --lang %s --out %s: exit %d, %d bytes, %v, %q", lang, line, code, len(data), err, stderr)
			}
			if page := strings.HasSuffix(out, ".html") || strings.HasSuffix(out, ".vtt"); page && strings.Contains(string(data), "<script>alert") {
				t.Errorf("export --lang %s --out %s: a text of the lesson is a tag", lang, line)
			}
		}
	}
}
