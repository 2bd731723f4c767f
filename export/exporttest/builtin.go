package exporttest

import (
	"bytes"
	"testing"

	"homeside/assets"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

// BuiltIn is the first built-in lesson. Everybody in it is invented.
func BuiltIn(t testing.TB) lesson.Lesson {
	t.Helper()
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return l
}
