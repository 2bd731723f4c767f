package formats

import (
	"bytes"
	"context"
	"image/gif"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"pgregory.net/rapid"

	"homeside/export"
	"homeside/export/exporttest"
)

const madeSo = "0123456789abcdef0123456789abcdef"

// Every format of the table says how a file was made, if it was told, and is the
// same film or picture for those who read it.
func TestRemarks(t *testing.T) {
	for _, f := range All {
		folder := t.TempDir()
		plain, told := filepath.Join(folder, "plain"+f.Ext), filepath.Join(folder, "told"+f.Ext)
		o := small()
		saveIn(t, f, plain, o)
		o.Made = madeSo
		saveIn(t, f, told, o)
		if got := MadeOf(plain); got != "" {
			t.Errorf("%s: a file that was not told says it was made as %q", f.Ext, got)
		}
		if got := MadeOf(told); got != madeSo {
			t.Errorf("%s was made as %q, want %q", f.Ext, got, madeSo)
		}
		if f.Clip && f.Write != nil {
			if said, err := exec.Command("ffmpeg", "-v", "warning", "-i", told, "-f", "null", "-").CombinedOutput(); err != nil || len(said) > 0 {
				t.Errorf("ffmpeg reads %s with a remark: %v, %s", f.Ext, err, said)
			}
			if got, want := exporttest.Probe(t, told), exporttest.Probe(t, plain); got.Frames != want.Frames || got.DurationS != want.DurationS || got.Width != want.Width || got.Frames < 2 {
				t.Errorf("%s with a remark is %+v, without %+v", f.Ext, got, want)
			}
		}
	}
}

func saveIn(t *testing.T, f Format, path string, o *export.Options) {
	t.Helper()
	if err := f.Save(context.Background(), path, play, o); err != nil {
		t.Fatal(err)
	}
}

// Strict readers of PNG and GIF read files with a remark; image/png checks every
// chunk's sum.
func TestRemarksAreWellFormed(t *testing.T) {
	folder := t.TempDir()
	for ext, read := range map[string]func(io.Reader) error{
		".png": func(r io.Reader) error { _, err := png.Decode(r); return err },
		".gif": func(r io.Reader) error { _, err := gif.DecodeAll(r); return err },
	} {
		path, o := filepath.Join(folder, "x"+ext), small()
		o.Made = madeSo
		f, err := ByPath(path)
		if err != nil {
			t.Fatal(err)
		}
		saveIn(t, f, path, o)
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		left := bytes.NewReader(data)
		if err := read(left); err != nil || left.Len() != 0 {
			t.Errorf("%s with a remark: %v, %d bytes are left over", ext, err, left.Len())
		}
	}
}

// However a file is written, all of it comes out in order with the remark before its
// last bytes.
func TestRemarkBeforeTheLastBytes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		before := rapid.IntRange(0, 12).Draw(t, "before")
		f := Format{room: room{before: before, wrap: func(s string) []byte { return []byte("<" + s + ">") }}}
		var all, out bytes.Buffer
		err := f.remarked(&out, &export.Options{Made: madeSo}, func(w io.Writer) error {
			for _, p := range rapid.SliceOf(rapid.SliceOfN(rapid.Byte(), 0, 20)).Draw(t, "writes") {
				all.Write(p)
				if n, err := w.Write(p); n != len(p) || err != nil {
					return io.ErrShortWrite
				}
			}
			return nil
		})
		at := max(all.Len()-before, 0)
		want := string(all.Bytes()[:at]) + "<homeside:" + madeSo + ">" + string(all.Bytes()[at:])
		if err != nil || out.String() != want {
			t.Fatalf("%q, %v, want %q", out.String(), err, want)
		}
	})
}
