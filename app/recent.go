package app

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"homeside/words"
)

// mostRecent is how many lessons are remembered.
const mostRecent = 10

// recentKey names them among the program's preferences.
const recentKey = "recent lessons"

// recentLessons are the files last opened or saved, the latest first.
func (e *Editor) recentLessons() []string { return e.app.Preferences().StringList(recentKey) }

// remember puts a file first among the recent ones.
func (e *Editor) remember(path string) {
	e.app.Preferences().SetStringList(recentKey, withRecent(e.recentLessons(), path))
	e.refreshRecent()
}

// forgetRecent takes a file that is not there any more from the recent ones.
func (e *Editor) forgetRecent(path string) {
	e.app.Preferences().SetStringList(recentKey, withoutRecent(e.recentLessons(), path))
	e.refreshRecent()
}

func withRecent(all []string, path string) []string {
	all = append([]string{path}, withoutRecent(all, path)...)
	return all[:min(len(all), mostRecent)]
}

func withoutRecent(all []string, path string) []string {
	return slices.DeleteFunc(slices.Clone(all), func(p string) bool { return p == path })
}

// refreshRecent lists them in the menu.
func (e *Editor) refreshRecent() {
	var items []*fyne.MenuItem
	for _, path := range e.recentLessons() {
		items = append(items, e.item(briefPath(path), func() { e.open(path) }, nil))
	}
	if len(items) == 0 {
		none := fyne.NewMenuItem(words.T("None yet"), nil)
		none.Disabled = true
		items = append(items, none)
	}
	e.recentItem.ChildMenu.Items = items
	if m := e.win.MainMenu(); m != nil {
		m.Refresh()
	}
}

// briefPath is a path with ~ for the home folder, its middle left out where it
// is long.
func briefPath(path string) string {
	if home, err := os.UserHomeDir(); err == nil && strings.HasPrefix(path, home+string(filepath.Separator)) {
		path = "~" + strings.TrimPrefix(path, home)
	}
	const most = 60
	r := []rune(path)
	if len(r) <= most {
		return path
	}
	return string(r[:15]) + "…" + string(r[len(r)-most+16:])
}
