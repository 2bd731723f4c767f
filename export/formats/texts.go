package formats

import (
	"context"
	"io"
	"path/filepath"
	"strings"

	"homeside/export"
	"homeside/export/captions"
)

// Text is one kind of file that holds a play in words. It is made from the
// rally's words, where a Format is made from its scenes.
type Text struct {
	Name  string // for people
	Ext   string // of file names, lower case with its dot
	Write func(w io.Writer, p captions.Play, o *export.Options) error
}

// Texts are the formats of words. Of two endings that both fit the first counts.
var Texts = []Text{
	{Name: "chapters (WebVTT)", Ext: ".chapters.vtt", Write: captions.WriteChapters},
	{Name: "captions (WebVTT)", Ext: ".vtt", Write: captions.WriteWebVTT},
	{Name: "captions (SRT)", Ext: ".srt", Write: captions.WriteSRT},
	{Name: "script for a voice-over", Ext: ".txt", Write: captions.WriteScript},
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

// SaveText writes a play in words, as a whole or not at all.
func SaveText(ctx context.Context, path string, t Text, p captions.Play, o *export.Options) error {
	return export.Save(ctx, path, func(w io.Writer) error { return t.Write(w, p, o) })
}
