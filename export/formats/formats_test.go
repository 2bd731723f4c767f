package formats

import (
	"bytes"
	"context"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

var play = exporttest.Play{To: 1}

func small() *export.Options { return &export.Options{Width: 90, Height: 160, FPS: 10} }

// endings are those of the table in its order: stills, then clips.
const endings = ".png, .svg, .pdf, .gif, .avi, .apng, .mp4, .webm, .mov, .frames"

func TestByPath(t *testing.T) {
	for path, want := range map[string]string{"a.png": ".png", "a.b.GIF": ".gif", "/x.png/y.Avi": ".avi", "a.SVG": ".svg", "a.pdf": ".pdf"} {
		if got, err := ByPath(path); err != nil || got.Ext != want {
			t.Errorf("ByPath(%q) = %q, %v, want %q", path, got.Ext, err, want)
		}
	}
	for path, want := range map[string]string{
		"a.bmp":       "a.bmp: no format is called .bmp; there are " + endings,
		"clip":        "clip: the name must end in one of " + endings,
		"":            ": the name must end in one of " + endings,
		"clip.gif.gz": "clip.gif.gz: no format is called .gz; there are " + endings,
	} {
		var unknown *UnknownError
		if _, err := ByPath(path); !errors.As(err, &unknown) || err.Error() != want {
			t.Errorf("ByPath(%q): got error %v, want %q", path, err, want)
		}
	}
}

// written is what a format writes of the play; of a folder, all files one after
// another.
func written(f Format, o *export.Options) ([]byte, error) {
	var b bytes.Buffer
	if f.Write == nil {
		put := func(_ string, write func(io.Writer) error) error { return write(&b) }
		err := f.Fill(context.Background(), put, play, o)
		return b.Bytes(), err
	}
	err := f.Write(context.Background(), &b, play, o)
	return b.Bytes(), err
}

// Every format of the table is what it says it is, and can be found by its ending.
func TestAllAreWhole(t *testing.T) {
	magic := map[string]string{".png": "\x89PNG\r\n", ".svg": "<svg xmlns=", ".pdf": "%PDF-1.", ".gif": "GIF89a", ".avi": "RIFF", ".apng": "\x89PNG\r\n", ".mp4": "\x00\x00\x00 ftyp", ".webm": "\x1aE\xdf\xa3", ".mov": "\x00\x00\x00\x14ftypqt", ".frames": "\x89PNG\r\n"}
	for _, f := range All {
		if got, err := ByPath("x" + f.Ext); err != nil || got.Name != f.Name {
			t.Errorf("ByPath(x%s) = %q, %v, want %q", f.Ext, got.Name, err, f.Name)
		}
		if f.Name == "" || f.Ext != strings.ToLower(f.Ext) || (f.MaxFPS > 0) != f.Clip {
			t.Errorf("format %+v is not filled in", f)
		}
		frames := 0
		o := small()
		o.Progress = func(_, total int) { frames = total }
		b, err := written(f, o)
		if err != nil {
			t.Errorf("%s: %v", f.Name, err)
		}
		if m := magic[f.Ext]; m == "" || !strings.HasPrefix(string(b), m) {
			t.Errorf("%s begins with %q, want %q", f.Name, b[:min(8, len(b))], m)
		}
		if (frames == 10) != f.Clip {
			t.Errorf("%s has %d frames, and Clip is %v", f.Name, frames, f.Clip)
		}
	}
}

// A format that says it can be transparent is; any other refuses and names all
// that can.
func TestClear(t *testing.T) {
	clear := small()
	clear.Ground.Clear = true
	said := (&export.ClearError{}).Error()
	for _, f := range All {
		_, err := written(f, clear)
		var refused *export.ClearError
		if errors.As(err, &refused) == f.Clear {
			t.Errorf("%s on a clear ground: error %v, and Clear is %v", f.Ext, err, f.Clear)
		}
		if strings.Contains(said, " "+f.Ext) != f.Clear {
			t.Errorf("%q names %s, and its Clear is %v", said, f.Ext, f.Clear)
		}
	}
}

func TestSaveWritesWhatWriteWrites(t *testing.T) {
	for _, f := range All {
		folder := t.TempDir()
		path := filepath.Join(folder, "x"+f.Ext)
		want, err := written(f, small())
		if err := errors.Join(err, Save(context.Background(), path, play, small())); err != nil {
			t.Fatal(err)
		}
		files := exporttest.Files(t, folder)
		if got := contents(t, files); !bytes.Equal(got, want) {
			t.Errorf("Save %s: %d bytes, want the %d that it writes", f.Ext, len(got), len(want))
		}
		if f.Write != nil && len(files) != 1 || f.Write == nil && len(files) != 1+10 {
			t.Errorf("Save %s: the folder has %v, want the file alone or the folder of 10", f.Ext, files)
		}
	}
}

// contents are the bytes of files one after another, without folders.
func contents(t *testing.T, files []string) []byte {
	t.Helper()
	var all []byte
	for _, path := range files {
		if info, err := os.Stat(path); err != nil || info.IsDir() {
			continue
		}
		b, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, b...)
	}
	return all
}

// Cancelled at the middle frame, no clip leaves a file, neither where it was
// wanted nor in the folder for temporary ones.
func TestSaveCancelledInTheMiddle(t *testing.T) {
	for _, f := range All {
		folder, temp := t.TempDir(), t.TempDir()
		t.Setenv("TMPDIR", temp)
		ctx, cancel := context.WithCancel(context.Background())
		o := small()
		o.Progress = func(done, total int) {
			if done >= total/2 {
				cancel()
			}
		}
		if err := Save(ctx, filepath.Join(folder, "x"+f.Ext), play, o); !errors.Is(err, context.Canceled) {
			t.Errorf("Save %s cancelled: error %v, want %v", f.Ext, err, context.Canceled)
		}
		if left := append(exporttest.Files(t, folder), exporttest.Files(t, temp)...); len(left) != 0 {
			t.Errorf("Save %s cancelled: %v is left behind", f.Ext, left)
		}
	}
}

func TestSaveErrorsLeaveNothing(t *testing.T) {
	for _, f := range All {
		folder := t.TempDir()
		for path, o := range map[string]*export.Options{
			filepath.Join(folder, "missing", "x"+f.Ext): small(),
			filepath.Join(folder, "x"+f.Ext):            {Width: 1, Height: 1},
			filepath.Join(folder, "x"+f.Ext+".txt"):     small(),
		} {
			if err := Save(context.Background(), path, play, o); err == nil || strings.Contains(err.Error(), "\n") {
				t.Errorf("Save(%s, %+v) = %v, want an error of one line", path, o, err)
			}
		}
		if left := exporttest.Files(t, folder); len(left) != 0 {
			t.Errorf("%s: %v is left behind", f.Ext, left)
		}
	}
}

// A format that needs another program says so before anything is begun.
func TestNeeds(t *testing.T) {
	needy := 0
	for _, f := range All {
		if f.Needs == nil {
			continue
		}
		needy++
		path := filepath.Join(t.TempDir(), "x"+f.Ext)
		if err := f.Needs(); err != nil {
			t.Fatalf("with ffmpeg installed, %q lacks something: %v", f.Name, err)
		}
		before := os.Getenv("PATH")
		t.Setenv("PATH", "")
		if lacks, saved := f.Needs(), Save(context.Background(), path, play, small()); lacks == nil || saved == nil || !strings.Contains(saved.Error(), lacks.Error()) {
			t.Errorf("%s without ffmpeg: Needs() = %v, Save: %v", f.Ext, lacks, saved)
		}
		t.Setenv("PATH", before)
	}
	if needy != 3 {
		t.Errorf("%d formats need another program, want 3", needy)
	}
}
