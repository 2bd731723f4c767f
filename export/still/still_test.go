package still

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export"
	"homeside/model/units"
)

type writer func(context.Context, io.Writer, export.Source, *export.Options) error

// writers are all there are.
var writers = map[string]writer{"PNG": WritePNG, "SVG": WriteSVG, "PDF": WritePDF}

func writeBytes(t *testing.T, format string, src export.Source, o *export.Options) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := writers[format](context.Background(), &b, src, o); err != nil {
		t.Fatalf("Write%s(%+v): %v", format, o, err)
	}
	return b.Bytes()
}

// The same moment gives the same bytes, another one others; nil is the start.
func TestSameMomentSameBytes(t *testing.T) {
	for format := range writers {
		late, small := units.Seconds(2), &export.Options{Width: 180, Height: 320}
		a, b, c := writeBytes(t, format, play, nil), writeBytes(t, format, play, &export.Options{At: &play.From}), writeBytes(t, format, play, &export.Options{At: &late})
		if !bytes.Equal(a, b) || bytes.Equal(a, c) {
			t.Errorf("%s: the same moment twice is the same: %v, another moment is the same: %v", format, bytes.Equal(a, b), bytes.Equal(a, c))
		}
		for range 3 {
			if !bytes.Equal(writeBytes(t, format, sampler{}, small), writeBytes(t, format, sampler{}, small)) {
				t.Errorf("%s: the sampler comes out differently", format)
			}
		}
	}
}

func TestWriteErrors(t *testing.T) {
	late, broken := units.Seconds(4), errors.New("broken")
	for format, write := range writers {
		for _, c := range []struct {
			o    export.Options
			want string
		}{
			{export.Options{At: &late}, "at 4 s is outside the -1 to 3 s of the play"},
			{export.Options{Width: 9000, Height: 100}, "width 9000 px is outside"},
		} {
			if err := write(context.Background(), io.Discard, play, &c.o); err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("Write%s(%+v) = %v, want %q", format, c.o, err, c.want)
			}
		}
		if err := write(context.Background(), failing{broken}, play, nil); !errors.Is(err, broken) || !strings.Contains(err.Error(), "write the "+format) {
			t.Errorf("Write%s to a broken writer = %v, want %v", format, err, broken)
		}
	}
}

type failing struct{ err error }

func (f failing) Write([]byte) (int, error) { return 0, f.err }

// cancelling cancels when the first bytes come and then takes everything.
type cancelling struct {
	cancel context.CancelFunc
	writes int
}

func (c *cancelling) Write(p []byte) (int, error) { c.cancel(); c.writes++; return len(p), nil }

func TestWriteCancel(t *testing.T) {
	for format, write := range writers {
		ctx, cancel := context.WithCancel(context.Background())
		w, calls := &cancelling{cancel: cancel}, 0
		o := &export.Options{Progress: func(int, int) { calls++ }}
		for range 2 { // in the middle, then before it begins
			if err := write(ctx, w, play, o); !errors.Is(err, context.Canceled) || w.writes != 1 || calls != 0 {
				t.Errorf("Write%s cancelled: got %v after %d writes, %d said to be done, want %v after 1", format, err, w.writes, calls, context.Canceled)
			}
		}
		if err := write(context.Background(), io.Discard, play, o); err != nil || calls != 1 {
			t.Errorf("Write%s: %v, %d said to be done, want 1", format, err, calls)
		}
	}
}

// tool runs a program of a Debian package on a file that is written for it.
func tool(t *testing.T, debian string, content []byte, program string, args ...string) []byte {
	t.Helper()
	if _, err := exec.LookPath(program); err != nil {
		t.Fatalf("%s is needed to read pictures back: install the Debian package %s", program, debian)
	}
	path := filepath.Join(t.TempDir(), "picture")
	if err := os.WriteFile(path, content, 0o600); err != nil {
		t.Fatal(err)
	}
	for i, a := range args {
		args[i] = strings.ReplaceAll(a, "FILE", path)
	}
	var errs bytes.Buffer
	c := exec.Command(program, args...)
	c.Stderr = &errs
	out, err := c.Output()
	if err != nil || errs.Len() > 0 {
		t.Fatalf("%s %s: %v: %s", program, fmt.Sprint(args), err, errs.Bytes())
	}
	return out
}
