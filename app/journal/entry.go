package journal

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"time"

	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

// Entry is a lesson as it was when it was last kept.
type Entry struct {
	Lesson lesson.Lesson
	About
}

// About is what is known of an entry besides its lesson.
type About struct {
	When time.Time `json:"when"`           // it was kept
	Path string    `json:"path,omitempty"` // the file that the lesson belongs to; empty if it has none
	Step string    `json:"step,omitempty"` // the last change
	Sum  string    `json:"sum,omitempty"`  // of that file as it was read, as its keeper reckons it
}

// longestAbout bounds an entry's first line, in bytes.
const longestAbout = 1 << 16

// write writes an entry: what is known of it in one line, then the lesson as a
// lesson file has it, so that a hand can save it with any editor of text.
func (e Entry) write(w io.Writer) error {
	about, err := json.Marshal(e.About)
	if err != nil {
		return fmt.Errorf("writing a journal: %w", err)
	}
	if _, err := w.Write(append(about, '\n')); err != nil {
		return fmt.Errorf("writing a journal: %w", err)
	}
	return lessonfile.Write(w, e.Lesson)
}

func readEntry(r io.Reader) (e Entry, err error) {
	in := bufio.NewReaderSize(r, longestAbout)
	line, err := in.ReadSlice('\n')
	if err != nil {
		return e, fmt.Errorf("reading a journal: %w", err)
	}
	if err := json.Unmarshal(line, &e.About); err != nil {
		return e, fmt.Errorf("reading a journal: %w", err)
	}
	e.Lesson, err = lessonfile.Read(in)
	return e, err
}
