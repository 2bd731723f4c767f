package lessonfile

import (
	"bytes"
	"fmt"
	"math"

	"github.com/go-json-experiment/json/jsontext"
)

// kind is a kind of document.
type kind struct {
	name   string // in words
	format string // its name in the file
	not    error  // says that a file is of no such kind
	size   int    // bytes that are read at most
	large  error  // says that a file is larger
}

var (
	lessons = kind{"lesson", Format, ErrNotLesson, MaxSize, ErrTooLarge}
	rosters = kind{"roster", RosterFormat, ErrNotRoster, MaxRosterSize, ErrRosterTooLarge}
	clips   = kind{"clip", ClipFormat, ErrNotClip, MaxSize, ErrClipTooLarge}
)

// checkHeader finds format and version, wherever they stand among the file's
// outermost members, and refuses what Read cannot read.
func (k kind) checkHeader(data []byte) error {
	format, version, err := k.header(data)
	if err != nil {
		return err
	}
	if name, ok := text(format); !ok || name != k.format {
		return k.refuse(data, "/format", fmt.Sprintf(`"format" is %s, want %q`, found(format), k.format))
	}
	return checkVersion(data, version)
}

func checkVersion(data []byte, version jsontext.Value) error {
	at := jsontext.Pointer("/version")
	v, ok := number(version)
	switch {
	case !ok || v < 1 || v != math.Trunc(v):
		return &Error{lineOf(data, at), pathOf(at), fmt.Errorf("%s, want %d", found(version), Version)}
	case v > Version:
		err := fmt.Errorf("%w (version %s; this one reads up to %d)", ErrNewer, found(version), Version)
		return &Error{lineOf(data, at), pathOf(at), err}
	}
	return nil
}

func (k kind) refuse(data []byte, at jsontext.Pointer, why string) *Error {
	return &Error{lineOf(data, at), "", fmt.Errorf("%w: %s", k.not, why)}
}

// header reads the file's outermost members until it has both.
func (k kind) header(data []byte) (format, version jsontext.Value, err error) {
	if len(bytes.TrimSpace(data)) == 0 {
		return nil, nil, k.refuse(nil, "", "the file is empty")
	}
	d := jsontext.NewDecoder(bytes.NewBuffer(data), jsontext.AllowDuplicateNames(true))
	if d.PeekKind() != '{' {
		return nil, nil, k.refuse(data, "", "want a JSON object that starts with {")
	}
	if _, err := d.ReadToken(); err != nil {
		return nil, nil, explain(data, err)
	}
	for d.PeekKind() != '}' && (format == nil || version == nil) {
		name, err := readName(d)
		if err != nil {
			return nil, nil, explain(data, err)
		}
		value, err := d.ReadValue()
		if err != nil {
			return nil, nil, explain(data, err)
		}
		switch name {
		case "format":
			format = value.Clone()
		case "version":
			version = value.Clone()
		}
	}
	return format, version, nil
}

func text(v jsontext.Value) (string, bool) {
	if v.Kind() != '"' {
		return "", false
	}
	s, err := jsontext.AppendUnquote(nil, v)
	return string(s), err == nil
}

func number(v jsontext.Value) (float64, bool) {
	if v.Kind() != '0' {
		return 0, false
	}
	t, err := jsontext.NewDecoder(bytes.NewReader(v)).ReadToken()
	if err != nil {
		return 0, false
	}
	f, err := t.Float()
	return f, err == nil
}

// found is what the file says, short enough for an error's one line.
func found(v jsontext.Value) string {
	if v == nil {
		return "missing"
	}
	if err := v.Compact(); err != nil {
		return "unreadable"
	}
	return shorten(string(v))
}
