//go:build unix

package journal

import (
	"io"
	"os"
	"syscall"
)

// hold locks an open file until it is closed or the process ends, however it ends.
func hold(f *os.File) error { return syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB) }

// tryLock locks a journal's file; false if its process runs.
func tryLock(path string) (io.Closer, bool) {
	f, err := os.OpenFile(path, os.O_CREATE|os.O_RDWR, 0o600)
	if err != nil {
		return nil, false
	}
	if hold(f) != nil {
		f.Close()
		return nil, false
	}
	return f, true
}
