package app

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/roster"
)

// readFile is what was read from a file: a lesson, a roster, or why neither.
type readFile struct {
	path   string
	lesson lesson.Lesson
	roster *roster.Roster // nil for a lesson
	stamp  stamp          // of the file as it was read
	err    error
}

// readAll reads files one after the other.
func readAll(paths []string) []readFile {
	var all []readFile
	for _, path := range absolute(paths) {
		all = append(all, readOne(path))
	}
	return all
}

// readOne reads a file that was chosen or dropped, whatever it is.
func readOne(path string) readFile {
	f := readFile{path: path}
	if f.err = ordinary(path); f.err != nil {
		return f
	}
	f.lesson, f.err = lessonfile.Open(path)
	if errors.Is(f.err, lessonfile.ErrNotLesson) {
		if r, err := lessonfile.OpenRoster(path); err == nil {
			f.roster, f.err = &r, nil
		}
	}
	if f.err == nil {
		f.stamp, f.err = stampOf(path)
	}
	return f
}

// errNotOrdinary is a pipe, a device and the like: whoever opens it may wait for ever.
var errNotOrdinary = errors.New("not an ordinary file")

func ordinary(path string) error {
	info, err := os.Stat(path)
	if err == nil && !info.Mode().IsRegular() && !info.IsDir() {
		return fmt.Errorf("%s: %w", path, errNotOrdinary)
	}
	return err
}

// absolute are paths that stay right when the program's folder changes.
func absolute(paths []string) []string {
	all := make([]string, len(paths))
	for i, p := range paths {
		all[i] = p
		if a, err := filepath.Abs(p); err == nil {
			all[i] = a
		}
	}
	return all
}
