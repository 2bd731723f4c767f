package photo

import (
	"os"
	"path/filepath"
	"strings"
)

// Find is where the picture of a lesson is that the lesson calls file: there, seen
// from the lesson's own folder, or by its last name beside the lesson. False if it
// is nowhere. The lesson's path is empty for one that has no file yet.
func Find(lesson, file string) (string, bool) {
	if file == "" {
		return "", false
	}
	own := filepath.FromSlash(file)
	tries := []string{own}
	if lesson != "" {
		folder := filepath.Dir(lesson)
		if !filepath.IsAbs(own) {
			tries[0] = filepath.Join(folder, own)
		}
		tries = append(tries, filepath.Join(folder, filepath.Base(own)))
	}
	for _, path := range tries {
		if _, err := os.Stat(path); err == nil {
			return path, true
		}
	}
	return "", false
}

// Name is how a lesson calls a picture: from its own folder if the picture is in
// or below it, so that both can be moved together, otherwise by its whole path.
func Name(lesson, path string) string {
	if whole, err := filepath.Abs(path); err == nil {
		path = whole
	}
	if lesson == "" {
		return filepath.ToSlash(path)
	}
	folder, err := filepath.Abs(filepath.Dir(lesson))
	if err != nil {
		return filepath.ToSlash(path)
	}
	rel, err := filepath.Rel(folder, path)
	if err != nil || rel == ".." || strings.HasPrefix(rel, ".."+string(filepath.Separator)) {
		return filepath.ToSlash(path)
	}
	return filepath.ToSlash(rel)
}
