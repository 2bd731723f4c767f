package page

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"homeside/export/exporttest"
	"homeside/model/lesson"
)

func html(t testing.TB, l lesson.Lesson, plays ...int) []byte {
	t.Helper()
	p, err := Of(l, plays...)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := p.Write(&b); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// opened is the page of a lesson in headless Chromium, at a phone's size.
func opened(t testing.TB, l lesson.Lesson) *exporttest.Page {
	t.Helper()
	path := filepath.Join(t.TempDir(), "page.html")
	if err := os.WriteFile(path, html(t, l), 0o600); err != nil {
		t.Fatal(err)
	}
	return exporttest.OpenPage(t, path, 390, 844)
}
