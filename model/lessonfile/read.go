package lessonfile

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

	"homeside/model/lesson"
	"homeside/model/roster"
)

// MaxSize is the largest lesson file that is read, in bytes. A season of
// lessons is far below it.
const MaxSize = 64 << 20

// Read reads a lesson. A mistake in the file is an *Error with its place; it
// wraps ErrNotLesson, ErrNewer or ErrTooLarge where one of them fits, and a
// lesson.Problem where a value lies outside the bounds. Errors of r are wrapped.
func Read(r io.Reader) (lesson.Lesson, error) {
	data, err := lessons.readAll(r)
	if err != nil {
		return lesson.Lesson{}, err
	}
	return parse(data)
}

// Open reads the lesson file at path, which its errors name. A folder is ErrFolder.
func Open(path string) (lesson.Lesson, error) {
	f, err := lessons.open(path)
	if err != nil {
		return lesson.Lesson{}, err
	}
	defer f.Close()
	l, err := Read(f)
	if err != nil {
		return lesson.Lesson{}, fmt.Errorf("%s: %w", path, err)
	}
	return l, nil
}

// open opens a file that is not too large.
func (k kind) open(path string) (*os.File, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil, err // names the path already
	case info.IsDir():
		return nil, fmt.Errorf("%s: %w", path, ErrFolder)
	case info.Size() > int64(k.size):
		return nil, fmt.Errorf("%s: %w", path, &Error{Err: k.large})
	}
	return os.Open(path)
}

// readAll reads a whole file, up to the size of its kind.
func (k kind) readAll(r io.Reader) ([]byte, error) {
	data, err := io.ReadAll(io.LimitReader(r, int64(k.size)+1))
	if err != nil {
		return nil, fmt.Errorf("reading a %s: %w", k.name, err)
	}
	if len(data) > k.size {
		return nil, &Error{Err: k.large}
	}
	return bytes.TrimPrefix(data, []byte("\ufeff")), nil // some editors put a byte order mark there
}

// decode reads a whole file into its JSON types. Format and version come first,
// so that a newer file is not blamed for the names it has added.
func (k kind) decode(data []byte, into any) error {
	if err := k.checkHeader(data); err != nil {
		return err
	}
	if err := json.Unmarshal(data, into, json.RejectUnknownMembers(true), json.WithUnmarshalers(bounded)); err != nil {
		return explain(data, err)
	}
	return nil
}

func parse(data []byte) (lesson.Lesson, error) {
	var f file
	if err := lessons.decode(data, &f); err != nil {
		return lesson.Lesson{}, err
	}
	l, at, err := fromFile(f)
	if err != nil {
		return lesson.Lesson{}, &Error{lineOf(data, at), pathOf(at), err}
	}
	if problems := lesson.Validate(l); len(problems) > 0 {
		return lesson.Lesson{}, problemError(problems[0], lineOf(data, jsontext.Pointer(problems[0].Pointer)))
	}
	return l, nil
}

// boundError is a lesson's problem, told by an Error that has its path already.
type boundError struct{ lesson.Problem }

func (e boundError) Error() string { return e.Text }
func (e boundError) Unwrap() error { return e.Problem }

func problemError(p lesson.Problem, line int) *Error {
	return &Error{line, pathOf(jsontext.Pointer(p.Pointer)), boundError{p}}
}

// bounded reads lists no further than a lesson's bounds, so that a file of
// empty entries cannot fill the memory.
var bounded = json.JoinUnmarshalers(
	upTo[play](lesson.MaxPlays),
	upTo[tag](lesson.MaxTags),
	upTo[shot](lesson.MaxShots),
	upTo[keyframe](lesson.MaxKeyframes),
	upTo[mark](lesson.MaxMarks),
	upTo[cue](lesson.MaxCues),
	upTo[photoPoint](lesson.MaxPhotoPoints),
	upTo[reel](lesson.MaxReels),
	upTo[take](lesson.MaxTakes),
	upTo[slow](lesson.MaxSlows),
	upTo[freeze](lesson.MaxFreezes),
	upTo[rosterPair](roster.MaxPairs),
)

func upTo[T any](most int) *json.Unmarshalers {
	return json.UnmarshalFromFunc(func(d *jsontext.Decoder, list *[]T) error {
		if d.PeekKind() != '[' {
			return errors.ErrUnsupported // null, or the library's own complaint
		}
		if _, err := d.ReadToken(); err != nil {
			return err
		}
		for d.PeekKind() != ']' {
			if len(*list) == most {
				return fmt.Errorf("too many entries, want at most %d", most)
			}
			var entry T
			if err := json.UnmarshalDecode(d, &entry); err != nil {
				return err
			}
			*list = append(*list, entry)
		}
		_, err := d.ReadToken()
		return err
	})
}
