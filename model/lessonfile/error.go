package lessonfile

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"github.com/go-json-experiment/json/jsontext"
)

// What an Error of Read or Open may wrap.
var (
	ErrNotLesson = errors.New("not a Homeside lesson")
	ErrNewer     = errors.New("made by a newer version of Homeside")
	ErrTooLarge  = fmt.Errorf("larger than %d MiB, too large for a lesson", MaxSize>>20)
)

// ErrFolder is what Open and OpenRoster say of a folder.
var ErrFolder = errors.New("a folder, not a file")

// Error is a mistake in a lesson file, or in a lesson that is to be written.
type Error struct {
	Line int    // counted from 1; 0 if there is no file yet
	Path string // such as plays[2].shots[1].aim, counted from 0; empty for the file as a whole
	Err  error  // what is wrong and what is wanted
}

// Error is one line: where and what.
func (e *Error) Error() string {
	var b strings.Builder
	if e.Line > 0 {
		fmt.Fprintf(&b, "line %d: ", e.Line)
	}
	if e.Path != "" {
		b.WriteString(e.Path + ": ")
	}
	b.WriteString(e.Err.Error())
	return b.String()
}

// Unwrap is what is wrong.
func (e *Error) Unwrap() error { return e.Err }

// pathOf writes a JSON pointer as people do: /plays/2/lead_s becomes plays[2].lead_s.
func pathOf(at jsontext.Pointer) string {
	var b strings.Builder
	parts := 0
	for token := range at.Tokens() {
		if parts++; parts > mostParts {
			b.WriteString("...")
			break
		}
		switch {
		case isIndex(token):
			b.WriteString("[" + token + "]")
		case !isName(token):
			b.WriteString("[" + strconv.Quote(shorten(token)) + "]")
		case b.Len() > 0:
			b.WriteString("." + shorten(token))
		default:
			b.WriteString(shorten(token))
		}
	}
	return b.String()
}

// mostParts is how deep a path is told; lessons are less deep.
const mostParts = 12

func isIndex(s string) bool { return s != "" && len(s) < 10 && strings.Trim(s, "0123456789") == "" }

func isName(s string) bool {
	return s != "" && !strings.ContainsFunc(s, func(r rune) bool {
		return r != '_' && (r < '0' || r > '9') && (r < 'a' || r > 'z') && (r < 'A' || r > 'Z')
	})
}

// mostShown is how many bytes of a file's own text an error repeats.
const mostShown = 60

// shorten keeps an error to one readable line whatever the file holds.
func shorten(s string) string {
	if len(s) <= mostShown {
		return s
	}
	return strings.ToValidUTF8(s[:mostShown], "") + "..."
}
