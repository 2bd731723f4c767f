package journal_test

import (
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
	"time"

	"homeside/app/journal"
	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

func entry(title string, minute int) journal.Entry {
	return journal.Entry{
		Lesson: lesson.Lesson{Title: title, Plays: []lesson.Play{edit.OrdinaryPlay()}},
		About:  journal.About{When: time.Date(2026, 11, 25, 18, minute, 0, 0, time.UTC), Path: "/home/a/" + title + ".json", Step: "move A", Sum: "1f"},
	}
}

func open(t *testing.T, folder string) *journal.Journal {
	t.Helper()
	j, err := journal.Open(folder)
	if err != nil {
		t.Fatal(err)
	}
	return j
}

func keep(t *testing.T, j *journal.Journal, n int, e journal.Entry) {
	t.Helper()
	if err := j.Keep(n, e); err != nil {
		t.Fatal(err)
	}
}

// abandon leaves a journal behind as a killed process does: its lock is gone,
// its files stay.
func abandon(t *testing.T, j *journal.Journal) {
	t.Helper()
	if err := journal.Abandon(j); err != nil {
		t.Fatal(err)
	}
}

func titles(all []journal.Left) string {
	var out []string
	for _, l := range all {
		out = append(out, l.Lesson.Title)
	}
	return strings.Join(out, " ")
}

func wantFiles(t *testing.T, folder string, want int) {
	t.Helper()
	if all, err := os.ReadDir(folder); err != nil || len(all) != want {
		t.Errorf("%d files in the folder of journals (%v), want %d: %v", len(all), err, want, all)
	}
}

func TestWhatIsKeptIsFoundAsItWas(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "state", "journals")
	j := open(t, folder)
	keep(t, j, 1, entry("first", 1))
	keep(t, j, 2, entry("second", 2))
	keep(t, j, 1, entry("first-again", 3))
	keep(t, j, 3, entry("dropped", 4))
	for range 2 {
		if err := j.Drop(3); err != nil {
			t.Errorf("Drop(3) = %v", err)
		}
	}
	if got := journal.FindLeft(folder); len(got) != 0 {
		t.Errorf("of a process that runs %s was found, want nothing", titles(got))
	}
	abandon(t, j)
	got := journal.FindLeft(folder)
	if titles(got) != "first-again second" {
		t.Fatalf("found %q, want the latest of each, the later first", titles(got))
	}
	if want := entry("second", 2); !reflect.DeepEqual(got[1].Entry, want) {
		t.Errorf("found %+v, want %+v", got[1].Entry, want)
	}
}

// A journal is offered to one process at a time, and again after it was put off.
func TestTwoDoNotFight(t *testing.T) {
	folder := t.TempDir()
	j := open(t, folder)
	keep(t, j, 1, entry("a", 1))
	abandon(t, j)
	other := open(t, folder) // runs
	keep(t, other, 1, entry("b", 2))
	first := journal.FindLeft(folder)
	if second := journal.FindLeft(folder); titles(first) != "a" || len(second) != 0 {
		t.Errorf("found %q and then %q, want a and then nothing", titles(first), titles(second))
	}
	first[0].Release()
	first[0].Release()
	if again := journal.FindLeft(folder); titles(again) != "a" {
		t.Errorf("after it was put off %q was found, want a", titles(again))
	}
}

func TestRemoving(t *testing.T) {
	folder := t.TempDir()
	j := open(t, folder)
	keep(t, j, 1, entry("a", 1))
	keep(t, j, 2, entry("b", 2))
	abandon(t, j)
	all := journal.FindLeft(folder)
	if err := all[0].Remove(); err != nil {
		t.Fatal(err)
	}
	all[1].Release()
	all = journal.FindLeft(folder)
	if titles(all) != "a" {
		t.Fatalf("found %q, want what was not removed", titles(all))
	}
	if err := all[0].Remove(); err != nil {
		t.Fatal(err)
	}
	wantFiles(t, folder, 0)
}

func TestCloseLeavesNothing(t *testing.T) {
	folder := t.TempDir()
	j := open(t, folder)
	keep(t, j, 1, entry("a", 1))
	if err := j.Close(); err != nil {
		t.Fatal(err)
	}
	wantFiles(t, folder, 0)
	abandon(t, open(t, folder)) // killed before anything was changed
	if got := journal.FindLeft(folder); len(got) != 0 {
		t.Errorf("found %q, want nothing", titles(got))
	}
	wantFiles(t, folder, 0)
}

// What cannot be read is let lie, the rest is found.
func TestAMangledEntryIsLetLie(t *testing.T) {
	folder := t.TempDir()
	j := open(t, folder)
	keep(t, j, 1, entry("a", 1))
	abandon(t, j)
	at, _ := filepath.Glob(filepath.Join(folder, "journal-*", "1.entry"))
	if len(at) != 1 {
		t.Fatalf("entries in %s: %v, want one", folder, at)
	}
	for i, text := range []string{"", "{}", "{}\n", "no\n{}", strings.Repeat("x", 1<<20)} {
		if err := os.WriteFile(filepath.Join(filepath.Dir(at[0]), string(rune('2'+i))+".entry"), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	all := journal.FindLeft(folder)
	if titles(all) != "a" {
		t.Fatalf("found %q, want a", titles(all))
	}
	if err := all[0].Remove(); err != nil {
		t.Fatal(err)
	}
	wantFiles(t, folder, 2) // the mangled ones stay, with their lock
}

// An entry's text behind its first line is a lesson file.
func TestAnEntryHoldsALessonFile(t *testing.T) {
	folder := t.TempDir()
	j := open(t, folder)
	keep(t, j, 1, entry("a", 1))
	at, _ := filepath.Glob(filepath.Join(folder, "journal-*", "1.entry"))
	data, err := os.ReadFile(at[0])
	if err != nil {
		t.Fatal(err)
	}
	_, text, _ := strings.Cut(string(data), "\n")
	if l, err := lessonfile.Read(strings.NewReader(text)); err != nil || l.Title != "a" {
		t.Errorf("Read of the entry's text = %q, %v, want the lesson a", l.Title, err)
	}
}

func TestOpenSaysWhy(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := journal.Open(filepath.Join(file, "journals")); err == nil || !strings.Contains(err.Error(), file) {
		t.Errorf("Open below a file = %v, want an error that names it", err)
	}
	if got := journal.FindLeft(filepath.Join(file, "journals")); len(got) != 0 {
		t.Errorf("FindLeft below a file = %q, want nothing", titles(got))
	}
}
