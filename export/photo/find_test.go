package photo

import (
	"os"
	"path/filepath"
	"testing"
)

// A picture is found as it is called, from the lesson's folder, and beside the
// lesson by its last name when both were moved.
func TestNameAndFind(t *testing.T) {
	home := t.TempDir()
	lesson := filepath.Join(home, "club", "lesson.json")
	for _, folder := range []string{"club/photos", "elsewhere"} {
		if err := os.MkdirAll(filepath.Join(home, filepath.FromSlash(folder)), 0o700); err != nil {
			t.Fatal(err)
		}
	}
	put := func(path string) string {
		path = filepath.Join(home, filepath.FromSlash(path))
		if err := os.WriteFile(path, []byte("x"), 0o600); err != nil {
			t.Fatal(err)
		}
		return path
	}
	below, outside := put("club/photos/a.jpg"), put("elsewhere/b.jpg")
	for _, c := range []struct{ path, name string }{{below, "photos/a.jpg"}, {outside, filepath.ToSlash(outside)}} {
		if got := Name(lesson, c.path); got != c.name {
			t.Errorf("Name(%s) = %q, want %q", c.path, got, c.name)
		}
		if got, ok := Find(lesson, c.name); !ok || got != c.path {
			t.Errorf("Find(%s) = %q, %v, want %q", c.name, got, ok, c.path)
		}
	}
	if got := Name("", below); got != filepath.ToSlash(below) {
		t.Errorf("without a lesson's file the name is %q, want the whole path", got)
	}
	beside := put("club/b.jpg")
	if err := os.Remove(outside); err != nil {
		t.Fatal(err)
	}
	if got, ok := Find(lesson, filepath.ToSlash(outside)); !ok || got != beside {
		t.Errorf("moved beside the lesson it is %q, %v, want %q", got, ok, beside)
	}
	for _, file := range []string{"", "gone.jpg", "/gone/c.jpg"} {
		if got, ok := Find(lesson, file); ok {
			t.Errorf("Find(%q) = %q, want nothing", file, got)
		}
	}
}
