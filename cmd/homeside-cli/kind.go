package main

import (
	"context"
	"strings"

	"homeside/export"
	"homeside/export/formats"
)

// kind is what one file of a batch is: a picture or clip, or a play in words or
// beeps, of which only the name and the ending of the Format count.
type kind struct {
	formats.Format
	text *formats.Text // nil for a picture or clip
}

// kindByPath is the kind that a file name's ending asks for.
func kindByPath(path string) (kind, error) {
	if t, ok := formats.TextByPath(path); ok {
		return kind{formats.Format{Name: t.Name, Ext: t.Ext}, &t}, nil
	}
	f, err := formats.ByPath(path)
	return kind{f, nil}, err
}

func (k kind) isClip() bool    { return k.text == nil && k.Clip }
func (k kind) isStill() bool   { return k.text == nil && !k.Clip }
func (k kind) isPicture() bool { return k.text == nil }
func (k kind) hasTimes() bool  { return k.text != nil || k.Clip }
func (k kind) hasFull() bool   { return k.text == nil && k.Full }
func (k kind) isHeard() bool   { return k.text == nil && k.Heard }

// save writes a file of the kind, as a whole or not at all.
func (k kind) save(ctx context.Context, path string, p staged, o *export.Options) error {
	if k.text != nil {
		return formats.SaveText(ctx, path, *k.text, p.told, o)
	}
	return k.Save(ctx, path, p.pictures, o)
}

// allEndings are those of all kinds.
func allEndings() string { return strings.Join([]string{endings(), textEndings()}, ", ") }
