package export_test

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

func ownText(name string) bool { return strings.HasSuffix(name, ".txt") }

// texts puts numbered files of one line into a folder.
func texts(n int, line string) func(export.Put) error {
	return func(put export.Put) error {
		for i := range n {
			err := put(fmt.Sprintf("%d.txt", i), func(w io.Writer) error {
				_, err := io.WriteString(w, line)
				return err
			})
			if err != nil {
				return err
			}
		}
		return nil
	}
}

func names(t *testing.T, folder string) []string {
	t.Helper()
	out := exporttest.Files(t, folder)
	for i := range out {
		out[i] = strings.TrimPrefix(out[i], folder+"/")
	}
	return out
}

// A folder comes as a whole, and in the place of one of its kind, with nothing of
// it left.
func TestSaveFolder(t *testing.T) {
	parent := t.TempDir()
	path := filepath.Join(parent, "x")
	for _, n := range []int{3, 1, 2} {
		line := fmt.Sprint("line ", n)
		if err := export.SaveFolder(context.Background(), path+"/", ownText, texts(n, line)); err != nil {
			t.Fatal(err)
		}
		want := []string{"x"}
		for i := range n {
			want = append(want, fmt.Sprintf("x/%d.txt", i))
		}
		data, err := os.ReadFile(filepath.Join(path, "0.txt"))
		if got := names(t, parent); !slices.Equal(got, want) || string(data) != line || err != nil {
			t.Errorf("after a folder of %d files: %v with %q (%v), want %v", n, got, data, err, want)
		}
	}
}

// Whatever goes wrong, what stood there stays and nothing is added.
func TestSaveFolderLeavesNothing(t *testing.T) {
	broken := errors.New("broken")
	parent := t.TempDir()
	path := filepath.Join(parent, "x")
	if err := export.SaveFolder(context.Background(), path, ownText, texts(1, "before")); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(parent, "file"), []byte("before"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Join(parent, "other", "deep"), 0o700); err != nil {
		t.Fatal(err)
	}
	before := names(t, parent)
	ctx, cancel := context.WithCancel(context.Background())
	for _, c := range []struct {
		ctx  context.Context
		path string
		fill func(export.Put) error
		want string
	}{
		{context.Background(), path, func(put export.Put) error { return errors.Join(texts(2, "new")(put), broken) }, "broken"},
		{context.Background(), path, func(put export.Put) error {
			return put("0.txt", func(w io.Writer) error { _, _ = io.WriteString(w, "half"); return broken })
		}, "broken"},
		{context.Background(), filepath.Join(parent, "file"), texts(1, "new"), "there is a file of this name"},
		{context.Background(), filepath.Join(parent, "other"), texts(1, "new"), "holds other things, such as deep"},
		{context.Background(), filepath.Join(parent, "missing", "x"), texts(1, "new"), "there is no folder"},
		{context.Background(), filepath.Join(parent, "file", "x"), texts(1, "new"), ""},
		{ctx, path, func(put export.Put) error { cancel(); return texts(1, "new")(put) }, "cancelled, nothing was written"},
		{ctx, path, texts(1, "new"), "cancelled, nothing was written"},
	} {
		err := export.SaveFolder(c.ctx, c.path, ownText, c.fill)
		if err == nil || !strings.Contains(err.Error(), c.want) || !strings.HasPrefix(err.Error(), "save "+c.path+": ") {
			t.Errorf("SaveFolder(%s): error %v, want %q", c.path, err, c.want)
		}
		data, err := os.ReadFile(filepath.Join(path, "0.txt"))
		if got := names(t, parent); !slices.Equal(got, before) || string(data) != "before" || err != nil {
			t.Errorf("after %q: %v with %q (%v), want %v as before", c.want, got, data, err, before)
		}
	}
}

// A stranger's file that comes into the folder meanwhile stays.
func TestSaveFolderMeanwhile(t *testing.T) {
	parent := t.TempDir()
	path := filepath.Join(parent, "x")
	fill := func(put export.Put) error {
		return errors.Join(texts(1, "new")(put), os.Mkdir(path, 0o700), os.WriteFile(filepath.Join(path, "mine.doc"), nil, 0o600))
	}
	if err := export.SaveFolder(context.Background(), path, ownText, fill); err == nil || !strings.Contains(err.Error(), "mine.doc") {
		t.Errorf("SaveFolder: error %v, want one about mine.doc", err)
	}
	if got := names(t, parent); !slices.Equal(got, []string{"x", "x/mine.doc"}) {
		t.Errorf("left are %v", got)
	}
}
