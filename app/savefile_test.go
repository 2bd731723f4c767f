package app

import (
	"image"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
)

// A small file that a slow disk takes is told of after a while and can be
// cancelled: what stood there stays, and nothing else does.
func TestASlowFileCanBeCancelled(t *testing.T) {
	b := newBench(t, lessonFile(t, "open"))
	path := filepath.Join(t.TempDir(), "signals.txt")
	if err := os.WriteFile(path, []byte("as it was"), 0o600); err != nil {
		t.Fatal(err)
	}
	slow, ended := make(chan bool), make(chan bool)
	b.saveFile(path, "kept", func(w io.Writer) error {
		<-slow
		_, err := io.WriteString(w, "another")
		close(ended)
		return err
	}, func() { t.Error("a file that was cancelled is there") })
	b.waitUntil(func() bool { return b.asked() == "Saving…" })
	b.answer(fyne.KeyEscape)
	if b.status.Text != "Saving was cancelled." || b.working {
		t.Errorf("cancelled, the window says %q and works: %v", b.status.Text, b.working)
	}
	close(slow)
	<-ended
	b.waitUntil(func() bool { return len(names(t, filepath.Dir(path))) == 1 })
	if got, err := os.ReadFile(path); string(got) != "as it was" {
		t.Errorf("the file has %q, %v; want it as it was", got, err)
	}
}

// names are the files of a folder, hidden ones too.
func names(t *testing.T, folder string) (all []string) {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		all = append(all, e.Name())
	}
	return all
}

// Charts, texts and rosters are written as they are asked for, and it is said.
func TestSmallFilesAreSaved(t *testing.T) {
	b := newBench(t, lessonFile(t, "open"))
	folder := t.TempDir()
	for name, save := range map[string]func(path string){
		"a.txt":  func(path string) { b.saveText(path, "the text") },
		"a.png":  func(path string) { b.saveChart(path, image.NewGray(image.Rect(0, 0, 3, 3))) },
		"a.json": func(path string) { b.writeRoster(path, b.pairs.roster) },
	} {
		path := filepath.Join(folder, name)
		save(path)
		b.wait()
		got, err := os.ReadFile(path)
		if err != nil || len(got) == 0 || b.status.Text != "Saved "+path {
			t.Errorf("%s: %d bytes, %v, it says %q", name, len(got), err, b.status.Text)
		}
		save(filepath.Join(folder, "none", name))
		b.wait()
		if got := b.traced.String(); b.asked() != "Homeside" || !strings.Contains(got, "there is no folder") {
			t.Errorf("%s into a folder that is not there: %q is asked", name, b.asked())
		}
		b.answer(fyne.KeyEscape)
	}
	if b.pairs.path != filepath.Join(folder, "a.json") {
		t.Errorf("the roster shown is that of %q, want the one that was written", b.pairs.path)
	}
}
