package clip

import (
	"os"
	"testing"

	"golang.org/x/sys/unix"
)

// A pipe is made wide; one that is closed is left alone.
func TestWiden(t *testing.T) {
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer r.Close()
	defer w.Close()
	widen(w)
	if got, err := unix.FcntlInt(r.Fd(), unix.F_GETPIPE_SZ, 0); err != nil || got != pipeRoom {
		t.Errorf("the pipe holds %d bytes (%v), want %d", got, err, pipeRoom)
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	widen(w) // closed: nothing happens
}
