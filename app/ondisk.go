package app

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"time"

	"homeside/model/lessonfile"
)

// errChanged is a file that another program has written since it was read.
var errChanged = errors.New("the file has been changed by another program since it was opened here")

// stamp tells whether a file is still as it was. Its zero value is of a file
// that nobody has looked at.
type stamp struct {
	size int64
	at   time.Time
	sum  [sha256.Size]byte
}

// stampOf is a file's stamp as it is now.
func stampOf(path string) (stamp, error) {
	f, err := os.Open(path)
	if err != nil {
		return stamp{}, err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return stamp{}, err
	}
	h := sha256.New()
	if _, err := io.Copy(h, io.LimitReader(f, lessonfile.MaxSize+1)); err != nil {
		return stamp{}, fmt.Errorf("read %s: %w", path, err)
	}
	s := stamp{size: info.Size(), at: info.ModTime()}
	h.Sum(s.sum[:0])
	return s, nil
}

// check is errChanged if the file has another content than when it was stamped.
// A file that has gone is no change: it is written anew.
func (s stamp) check(path string) error {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist) || s == stamp{}:
		return nil
	case err != nil:
		return err
	case info.Size() == s.size && info.ModTime().Equal(s.at):
		return nil
	}
	now, err := stampOf(path)
	if err != nil {
		return err
	}
	if now.sum != s.sum {
		return errChanged
	}
	return nil
}
