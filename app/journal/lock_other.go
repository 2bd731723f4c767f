//go:build !unix

package journal

import (
	"errors"
	"io"
	"io/fs"
	"os"
)

// hold has nothing to do where an open file cannot be removed: see tryLock.
func hold(*os.File) error { return nil }

// tryLock takes a journal's file over; false if its process runs and has it open.
func tryLock(path string) (io.Closer, bool) {
	if err := os.Remove(path); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, false
	}
	f, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_RDWR, 0o600)
	return f, err == nil
}
