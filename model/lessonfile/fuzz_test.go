package lessonfile_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
)

// FuzzRead holds Read to its promises: a sound lesson that can be written and
// read again the same, or one short line with a place.
func FuzzRead(f *testing.F) {
	f.Add([]byte(small))
	f.Add([]byte(written(f, lessontest.Sample())))
	f.Add([]byte(written(f, lesson.Lesson{})))
	for _, m := range mistakes {
		f.Add([]byte(strings.Replace(small, m.old, m.new, 1)))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		l, err := lessonfile.Read(strings.NewReader(string(data)))
		if err != nil {
			checkError(t, err, 1+strings.Count(string(data), "\n"))
			return
		}
		if problems := lesson.Validate(l); problems != nil {
			t.Errorf("Read gave a lesson with problems: %v", problems)
		}
		again, err := lessonfile.Read(strings.NewReader(written(t, l)))
		if err != nil || !reflect.DeepEqual(again, l) {
			t.Errorf("Read(Write(l)) = %+v, %v\nwant %+v", again, err, l)
		}
	})
}

func checkError(t *testing.T, err error, lines int) {
	t.Helper()
	var e *lessonfile.Error
	if !errors.As(err, &e) {
		t.Fatalf("Read = %v, want an *Error", err)
	}
	if e.Line < 1 || e.Line > lines {
		t.Errorf("Read = %v, want a line from 1 to %d", err, lines)
	}
	if text := err.Error(); len(text) > 1000 || strings.ContainsAny(text, "\n\r") {
		t.Errorf("Read = %.1000q, want one short line", text)
	}
}
