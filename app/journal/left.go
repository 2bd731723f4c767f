package journal

import (
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Left is an entry that a process has left behind. As long as this one holds
// it, no other is offered it.
type Left struct {
	Entry
	file string
	of   *abandoned
}

// abandoned is the journal of a process that has ended without closing it.
type abandoned struct {
	at   string
	lock io.Closer
	left int // entries in it
}

// FindLeft lists what other processes have left behind in a folder, the latest
// first. What cannot be read is let lie. Release what is not wanted now.
func FindLeft(folder string) (all []Left) {
	journals, err := filepath.Glob(filepath.Join(folder, prefix+"*"))
	if err != nil {
		return nil
	}
	for _, at := range journals {
		if strings.HasSuffix(at, lockName) {
			continue
		}
		all = append(all, leftIn(at)...)
	}
	slices.SortStableFunc(all, func(a, b Left) int { return b.When.Compare(a.When) })
	return all
}

// leftIn is what lies in one journal; nothing while its process runs. One
// without entries is removed.
func leftIn(at string) (all []Left) {
	lock, ok := tryLock(at + lockName)
	if !ok {
		return nil
	}
	of := &abandoned{at: at, lock: lock}
	names, err := os.ReadDir(at)
	if err != nil {
		lock.Close()
		return nil
	}
	unread := 0
	for _, n := range names {
		if file := filepath.Join(at, n.Name()); strings.HasSuffix(file, entryName) {
			if e, err := readFile(file); err == nil {
				all = append(all, Left{e, file, of})
			} else {
				unread++
			}
		}
	}
	of.left = len(all) + unread
	switch {
	case of.left == 0:
		of.remove()
	case len(all) == 0:
		lock.Close()
	}
	return all
}

func readFile(path string) (Entry, error) {
	f, err := os.Open(path)
	if err != nil {
		return Entry{}, err
	}
	defer f.Close()
	return readEntry(f)
}

// Remove throws an entry away; the last one takes its journal with it.
func (l Left) Remove() error {
	err := os.Remove(l.file)
	if l.of.left--; l.of.left == 0 {
		l.of.remove()
	}
	return err
}

// Release keeps an entry for another start. It may be called more than once.
func (l Left) Release() { l.of.lock.Close() }

func (a *abandoned) remove() {
	os.RemoveAll(a.at)
	unlock(a.lock, a.at)
}
