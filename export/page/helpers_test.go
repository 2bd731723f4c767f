package page

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"homeside/assets"
	"homeside/export/exporttest"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

func html(t testing.TB, l lesson.Lesson, plays ...int) []byte {
	t.Helper()
	p, err := Of(l, plays...)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if _, err := p.Write(&b); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// read is a built-in lesson.
func read(t testing.TB, name string) lesson.Lesson {
	t.Helper()
	data, err := assets.Lessons.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// opened is the page of a lesson in headless Chromium, at a phone's size.
func opened(t testing.TB, l lesson.Lesson) *exporttest.Page {
	t.Helper()
	return openedAt(t, l, 390, 844)
}

func openedAt(t testing.TB, l lesson.Lesson, width, height int) *exporttest.Page {
	t.Helper()
	path := filepath.Join(t.TempDir(), "page.html")
	if err := os.WriteFile(path, html(t, l), 0o600); err != nil {
		t.Fatal(err)
	}
	return exporttest.OpenPage(t, path, width, height)
}
