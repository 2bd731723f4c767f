package journal

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"homeside/export"
)

// Names in the folder of journals. A journal is a folder of its own with a file
// for each entry; beside it lies a lock that its process holds.
const (
	prefix    = "journal-"
	lockName  = ".lock"
	entryName = ".entry"
)

// Journal is this process's own. Use Open.
type Journal struct {
	at   string
	lock io.Closer
}

// Open makes a journal in a folder, which is made where there is none.
func Open(folder string) (*Journal, error) {
	j, err := open(folder)
	if err != nil {
		return nil, fmt.Errorf("make a journal in %s: %w", folder, err)
	}
	return j, nil
}

func open(folder string) (*Journal, error) {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return nil, err
	}
	lock, err := os.CreateTemp(folder, prefix+"*"+lockName)
	if err != nil {
		return nil, err
	}
	at := strings.TrimSuffix(lock.Name(), lockName)
	if err = hold(lock); err == nil { // before there is a folder, which others look for
		err = os.Mkdir(at, 0o700)
	}
	if err != nil {
		unlock(lock, at)
		return nil, err
	}
	return &Journal{at, lock}, nil
}

// Keep writes entry n anew, whole or not at all.
func (j *Journal) Keep(n int, e Entry) error {
	return export.Save(context.Background(), j.file(n), e.write)
}

// Drop takes entry n out: its lesson is in its file.
func (j *Journal) Drop(n int) error {
	err := os.Remove(j.file(n))
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	return err
}

// Close removes the journal: all is saved, or let go by the person.
func (j *Journal) Close() error {
	err := os.RemoveAll(j.at)
	unlock(j.lock, j.at)
	return err
}

// Abandon leaves a journal as the end of its process does; for tests.
func Abandon(j *Journal) error { return j.lock.Close() }

// unlock ends a journal's lock.
func unlock(lock io.Closer, at string) {
	lock.Close()
	os.Remove(at + lockName)
}

func (j *Journal) file(n int) string { return filepath.Join(j.at, strconv.Itoa(n)+entryName) }
