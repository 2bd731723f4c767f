package export_test

import (
	"context"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

var errBroken = errors.New("broken")

func text(s string) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := io.WriteString(w, s)
		return err
	}
}

func read(t *testing.T, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func TestSave(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "a.txt")
	for _, content := range []string{"first", "second, longer", ""} {
		if err := export.Save(context.Background(), path, text(content)); err != nil {
			t.Fatalf("Save(%q): %v", content, err)
		}
		if got := read(t, path); got != content {
			t.Errorf("Save(%q) wrote %q", content, got)
		}
		if files := exporttest.Files(t, folder); len(files) != 1 {
			t.Errorf("Save left %v, want %s alone", files, path)
		}
	}
}

// A failing or cancelled export leaves an empty folder empty and an old file as it was.
func TestSaveLeavesNothingHalfWritten(t *testing.T) {
	big := strings.Repeat("x", 1<<20) // more than any buffer
	for _, c := range []struct {
		name  string
		write func(cancel context.CancelFunc) func(io.Writer) error
		want  error
	}{
		{"failing at once", func(context.CancelFunc) func(io.Writer) error {
			return func(io.Writer) error { return errBroken }
		}, errBroken},
		{"failing in the middle", func(context.CancelFunc) func(io.Writer) error {
			return func(w io.Writer) error { return errors.Join(text(big)(w), errBroken) }
		}, errBroken},
		{"cancelled in the middle, the writer going on", func(cancel context.CancelFunc) func(io.Writer) error {
			return func(w io.Writer) error { err := text(big)(w); cancel(); return errors.Join(err, text(big)(w)) }
		}, context.Canceled},
		{"cancelled after the last byte", func(cancel context.CancelFunc) func(io.Writer) error {
			return func(w io.Writer) error { err := text("x")(w); cancel(); return err }
		}, context.Canceled},
	} {
		for _, old := range []string{"", "old"} {
			folder := t.TempDir()
			path := filepath.Join(folder, "a.gif")
			if old != "" {
				if err := os.WriteFile(path, []byte(old), 0o600); err != nil {
					t.Fatal(err)
				}
			}
			ctx, cancel := context.WithCancel(context.Background())
			err := export.Save(ctx, path, c.write(cancel))
			cancel()
			if !errors.Is(err, c.want) || !strings.HasPrefix(err.Error(), "save "+path+": ") {
				t.Errorf("%s: error %v, want %v with the path", c.name, err, c.want)
			}
			if strings.Contains(err.Error(), ".part") || strings.Contains(err.Error(), "context") {
				t.Errorf("%s: error %v is not in plain words", c.name, err)
			}
			if files := exporttest.Files(t, folder); old == "" && len(files) != 0 {
				t.Errorf("%s: %v is left behind", c.name, files)
			}
			if old != "" && read(t, path) != old {
				t.Errorf("%s: the old file is now %q, want %q", c.name, read(t, path), old)
			}
		}
	}
}

func TestSavePanicLeavesNothing(t *testing.T) {
	folder := t.TempDir()
	func() {
		defer func() {
			if recover() == nil {
				t.Error("the panic did not get out")
			}
		}()
		err := export.Save(context.Background(), filepath.Join(folder, "a"), func(io.Writer) error { panic("broken") })
		t.Errorf("Save returned %v", err)
	}()
	if files := exporttest.Files(t, folder); len(files) != 0 {
		t.Errorf("%v is left behind", files)
	}
}

func TestSaveRefuses(t *testing.T) {
	folder := t.TempDir()
	file, locked := filepath.Join(folder, "file"), filepath.Join(folder, "locked")
	if err := errors.Join(os.WriteFile(file, nil, 0o600), os.WriteFile(locked, []byte("keep"), 0o400)); err != nil {
		t.Fatal(err)
	}
	for path, want := range map[string]string{
		folder:                                 "this is a folder, not a file",
		filepath.Join(folder, "no", "a.png"):   "there is no folder " + filepath.Join(folder, "no"),
		filepath.Join(folder, "no") + "/":      "there is no folder " + filepath.Join(folder, "no"),
		filepath.Join(file, "a.png"):           "not a directory",
		locked:                                 "the file is write-protected",
		"/dev/null":                            "this is not an ordinary file",
		filepath.Join(folder, "a\x00b"):        "invalid argument",
		filepath.Join(folder, longName()):      "file name too long",
		filepath.Join("/proc/self", "new.png"): "make a file in folder /proc/self: ",
	} {
		err := export.Save(context.Background(), path, func(io.Writer) error { t.Errorf("%q: write was called", path); return nil })
		if err == nil || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("Save(%q) = %v, want an error with %q on one line", path, err, want)
		}
	}
	if got := read(t, locked); got != "keep" {
		t.Errorf("the write-protected file is now %q", got)
	}
	if files := exporttest.Files(t, folder); len(files) != 2 {
		t.Errorf("the folder has %v, want the two files as before", files)
	}
}

func longName() string { return strings.Repeat("n", 300) }

func TestSaveCancelledBeforeItBegins(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	folder := t.TempDir()
	if err := export.Save(ctx, filepath.Join(folder, "a"), text("x")); !errors.Is(err, context.Canceled) {
		t.Errorf("Save = %v, want %v", err, context.Canceled)
	}
	if files := exporttest.Files(t, folder); len(files) != 0 {
		t.Errorf("%v is left behind", files)
	}
}

func TestSaveKeepsPermissionsAndLinks(t *testing.T) {
	folder := t.TempDir()
	file, link := filepath.Join(folder, "file"), filepath.Join(folder, "link")
	if err := errors.Join(os.WriteFile(file, nil, 0o640), os.Chmod(file, 0o640), os.Symlink(file, link)); err != nil {
		t.Fatal(err)
	}
	if err := export.Save(context.Background(), link, text("new")); err != nil {
		t.Fatal(err)
	}
	info, err := os.Lstat(link)
	if err != nil || info.Mode().Type() != fs.ModeSymlink {
		t.Errorf("the link is now %v (%v)", info.Mode(), err)
	}
	if info, err = os.Stat(file); err != nil || info.Mode().Perm() != 0o640 || read(t, file) != "new" {
		t.Errorf("the file is %v with %q, want %v with %q", info.Mode(), read(t, file), fs.FileMode(0o640), "new")
	}
}

// A temporary file left by a crash, or in use by another program, is not touched.
func TestSaveBesideAnotherTemporaryFile(t *testing.T) {
	folder := t.TempDir()
	other := filepath.Join(folder, ".homeside-0.part")
	if err := os.WriteFile(other, []byte("theirs"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := export.Save(context.Background(), filepath.Join(folder, "a"), text("mine")); err != nil {
		t.Fatal(err)
	}
	if got := read(t, other); got != "theirs" {
		t.Errorf("the other file is now %q", got)
	}
}

// Exports into one folder at the same time do not touch one another's temporary
// files: every file has its own content, whole.
func TestSaveManyAtOnce(t *testing.T) {
	const savers, rounds = 6, 60
	folder := t.TempDir()
	errs := make(chan error, savers)
	for i := range savers {
		go func() {
			var err error
			for range rounds {
				name := string(rune('a' + i))
				path := filepath.Join(folder, name)
				err = errors.Join(err, export.Save(context.Background(), path, text(strings.Repeat(name, 1000))))
				if b, readErr := os.ReadFile(path); readErr != nil || string(b) != strings.Repeat(name, 1000) {
					err = errors.Join(err, readErr, errors.New(name+" has another content"))
				}
			}
			errs <- err
		}()
	}
	for range savers {
		if err := <-errs; err != nil {
			t.Errorf("%d exports at once into one folder: %v", savers, err)
		}
	}
	if files := exporttest.Files(t, folder); len(files) != savers {
		t.Errorf("the folder has %v, want %d files", files, savers)
	}
}
