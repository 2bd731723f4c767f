package lessonfile

import (
	"fmt"
	"io"

	"github.com/go-json-experiment/json"

	"homeside/model/lesson"
)

// Write writes a lesson so that Read gives the same lesson back, except for
// what does not count for its kind, such as the tip of a text mark. A lesson
// outside the bounds, one with a NaN among them, is not written at all: the
// error is an *Error without a line that wraps a lesson.Problem. Errors of w
// are wrapped.
func Write(w io.Writer, l lesson.Lesson) error {
	if problems := lesson.Validate(l); len(problems) > 0 {
		return problemError(problems[0], 0)
	}
	compact, err := json.Marshal(toFile(l))
	if err != nil {
		return fmt.Errorf("writing a lesson: %w", err)
	}
	data, err := layOut(compact)
	if err != nil {
		return fmt.Errorf("writing a lesson: %w", err)
	}
	if _, err := w.Write(data); err != nil {
		return fmt.Errorf("writing a lesson: %w", err)
	}
	return nil
}
