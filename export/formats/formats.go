package formats

import (
	"context"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"homeside/export"
	"homeside/export/clip"
	"homeside/export/still"
	"homeside/words"
)

// Format is one kind of file.
type Format struct {
	Name   string                                                                             // for people
	Ext    string                                                                             // of file names, lower case with its dot
	Clip   bool                                                                               // a stretch of a play; a still otherwise
	MaxFPS int                                                                                // of a clip
	Clear  bool                                                                               // can be transparent
	Full   bool                                                                               // has a choice between all colour samples and a quarter of them
	Heard  bool                                                                               // takes the Options' Track, on a ground that is not clear
	Needs  func() error                                                                       // what this machine lacks for it, in words; nil needs nothing
	Write  func(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error // nil for a folder

	// Of a folder of files: Fill writes them, Own says whether a name is one of theirs.
	Fill func(ctx context.Context, put export.Put, src export.Source, o *export.Options) error
	Own  func(name string) bool

	room room // for a remark
}

// Save writes a file or folder in the format, as a whole or not at all. What
// stood at path is replaced; a folder only if it holds nothing else.
func (f Format) Save(ctx context.Context, path string, src export.Source, o *export.Options) error {
	if o != nil {
		src = o.Ground.Of(src)
	}
	n := &noting{Source: src}
	if err := f.save(ctx, path, n, o); err != nil {
		return err
	}
	if o != nil && o.Lacks != nil && len(n.lacks) > 0 {
		o.Lacks(n.lacks)
	}
	return nil
}

func (f Format) save(ctx context.Context, path string, src export.Source, o *export.Options) error {
	if f.Write == nil {
		return export.SaveFolder(ctx, path, f.Own, func(put export.Put) error {
			return f.Fill(ctx, func(name string, write func(io.Writer) error) error {
				return put(name, func(w io.Writer) error { return f.remarked(w, o, write) })
			}, src, o)
		})
	}
	return export.Save(ctx, path, func(w io.Writer) error {
		return f.remarked(w, o, func(w io.Writer) error { return f.Write(ctx, w, src, beside(path, o)) })
	})
}

// beside are the options with temporary files on the disk that must have the room
// for the file anyway.
func beside(path string, o *export.Options) *export.Options {
	c := export.Options{}
	if o != nil {
		c = *o
	}
	if c.Scratch == "" {
		c.Scratch = filepath.Dir(path)
	}
	return &c
}

// All are the formats in the order of menus: stills, then clips.
var All = []Format{
	{Name: words.Text("PNG picture"), Ext: ".png", Clear: true, Write: still.WritePNG, room: inPNG},
	{Name: words.Text("SVG picture"), Ext: ".svg", Clear: true, Write: still.WriteSVG, room: inSVG},
	{Name: words.Text("PDF page"), Ext: ".pdf", Clear: true, Write: still.WritePDF, room: inPDF},
	{Name: words.Text("GIF clip"), Ext: ".gif", Clip: true, MaxFPS: clip.GIFMaxFPS, Write: clip.WriteGIF, room: inGIF},
	{Name: words.Text("AVI clip"), Ext: ".avi", Clip: true, MaxFPS: export.MaxFPS, Full: true, Write: clip.WriteAVI, room: inAVI},
	{Name: words.Text("animated PNG"), Ext: ".apng", Clip: true, MaxFPS: export.MaxFPS, Clear: true, Write: clip.WriteAPNG, room: inPNG},
	{Name: words.Text("MP4 clip (needs ffmpeg)"), Ext: ".mp4", Clip: true, MaxFPS: export.MaxFPS, Heard: true, Needs: clip.FindFFmpeg, Write: clip.WriteMP4, room: inMP4},
	{Name: words.Text("WebM clip (needs ffmpeg)"), Ext: ".webm", Clip: true, MaxFPS: export.MaxFPS, Clear: true, Heard: true, Needs: clip.FindFFmpeg, Write: clip.WriteWebM, room: inWebM},
	{Name: words.Text("ProRes 4444 clip for an edit (needs ffmpeg)"), Ext: ".mov", Clip: true, MaxFPS: export.MaxFPS, Clear: true, Needs: clip.FindFFmpeg, Write: clip.WriteMOV, room: inMP4},
	{Name: words.Text("folder of PNG pictures"), Ext: ".frames", Clip: true, MaxFPS: export.MaxFPS, Clear: true, Fill: clip.FillPNGs, Own: clip.OwnPNG, room: inPNG},
}

// UnknownError is a file name whose ending belongs to no format.
type UnknownError struct{ Path string }

// Error lists the endings that are known.
func (e *UnknownError) Error() string {
	known := make([]string, len(All))
	for i, f := range All {
		known[i] = f.Ext
	}
	list := strings.Join(known, ", ")
	if ext := filepath.Ext(e.Path); ext != "" {
		return fmt.Sprintf("%s: no format is called %s; there are %s", e.Path, ext, list)
	}
	return fmt.Sprintf("%s: the name must end in one of %s", e.Path, list)
}

// ByPath is the format that a file name's ending asks for, in any case; an
// *UnknownError if there is none.
func ByPath(path string) (Format, error) {
	ext := filepath.Ext(path)
	for _, f := range All {
		if strings.EqualFold(f.Ext, ext) {
			return f, nil
		}
	}
	return Format{}, &UnknownError{path}
}

// Save writes a file or folder in the format of its name's ending, as a whole or
// not at all.
func Save(ctx context.Context, path string, src export.Source, o *export.Options) error {
	f, err := ByPath(path)
	if err != nil {
		return err
	}
	return f.Save(ctx, path, src, o)
}
