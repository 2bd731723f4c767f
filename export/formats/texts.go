package formats

import (
	"context"
	"io"
	"path/filepath"
	"strings"

	"homeside/export"
	"homeside/export/captions"
	"homeside/export/sound"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/words"
)

// Told is a play as it is said and heard.
type Told struct {
	Words captions.Play
	Beeps sound.Play
}

// Tell is a play of a lesson in words and beeps; r is the play solved.
func Tell(l lesson.Lesson, r *rally.Rally) Told { return Told{captions.Of(l, r), sound.Of(r)} }

// TellReel is a solved reel of a lesson in words and beeps, on the clip's clock.
func TellReel(l lesson.Lesson, r *reel.Reel) Told {
	return Told{captions.OfReel(l, r), sound.OfReel(r)}
}

// Text is one kind of file that holds a play in words or beeps, in a clip's
// times. It is made from the rally, where a Format is made from its scenes.
type Text struct {
	Name  string // for people
	Ext   string // of file names, lower case with its dot
	Cues  bool   // it holds the captions and nothing else
	Write func(w io.Writer, p Told, o *export.Options) error
}

// Texts are the formats of words and beeps. Of two endings that both fit the
// first counts.
var Texts = []Text{
	{Name: words.Text("chapters (WebVTT)"), Ext: ".chapters.vtt", Write: said(captions.WriteChapters)},
	{Name: words.Text("captions (WebVTT)"), Ext: ".vtt", Cues: true, Write: said(captions.WriteWebVTT)},
	{Name: words.Text("captions (SRT)"), Ext: ".srt", Cues: true, Write: said(captions.WriteSRT)},
	{Name: words.Text("script for a voice-over"), Ext: ".txt", Write: said(captions.WriteScript)},
	{Name: words.Text("cue track (WAV)"), Ext: ".wav", Write: func(w io.Writer, p Told, o *export.Options) error { return sound.WriteWAV(w, p.Beeps, o) }},
}

// said is a writer of words alone.
func said(write func(io.Writer, captions.Play, *export.Options) error) func(io.Writer, Told, *export.Options) error {
	return func(w io.Writer, p Told, o *export.Options) error { return write(w, p.Words, o) }
}

// TextByPath is the text that a file name's ending asks for, in any case; false
// if it asks for none.
func TextByPath(path string) (Text, bool) {
	name := strings.ToLower(filepath.Base(path))
	for _, t := range Texts {
		if strings.HasSuffix(name, t.Ext) {
			return t, true
		}
	}
	return Text{}, false
}

// SaveText writes a play in words or beeps, as a whole or not at all.
func SaveText(ctx context.Context, path string, t Text, p Told, o *export.Options) error {
	return export.Save(ctx, path, func(w io.Writer) error { return t.Write(w, p, o) })
}
