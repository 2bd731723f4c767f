package app

import (
	"cmp"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"homeside/words"
)

// browser looks through folders for a file or for a folder, by a few letters or a path.
type browser struct {
	editor *Editor
	finder *finder
	folder string
	inside []os.DirEntry
	err    error    // why the folder cannot be read
	exts   []string // of the files wanted; nil for a folder
	take   func(path string)
}

// browseFiles lets a file be chosen that has one of some endings.
func (e *Editor) browseFiles(title, folder string, exts []string, take func(string)) {
	e.browse(title, &browser{editor: e, exts: exts, take: take}, folder)
}

// browseFolder lets a folder be chosen.
func (e *Editor) browseFolder(folder string, take func(string)) {
	e.browse(words.T("Choose a folder"), &browser{editor: e, take: take}, folder)
}

func (e *Editor) browse(title string, b *browser, folder string) {
	b.read(absolute([]string{folder})[0])
	b.finder = e.showFinder(title, words.T("Type a few letters, or a path"), b.lines)
	e.trace.say("browsing %s", b.folder)
}

// read reads a folder, or says why it cannot be read.
func (b *browser) read(folder string) {
	b.folder = folder
	b.inside, b.err = os.ReadDir(folder)
	b.inside = slices.DeleteFunc(b.inside, func(d os.DirEntry) bool {
		return strings.HasPrefix(d.Name(), ".") || !b.isFolder(d) && !b.wanted(d.Name())
	})
	slices.SortStableFunc(b.inside, func(x, y os.DirEntry) int {
		if fx, fy := b.isFolder(x), b.isFolder(y); fx != fy {
			return map[bool]int{true: -1, false: 1}[fx]
		}
		return cmp.Compare(strings.ToLower(x.Name()), strings.ToLower(y.Name()))
	})
}

// isFolder says whether an entry is a folder or leads to one.
func (b *browser) isFolder(d os.DirEntry) bool {
	if d.Type()&os.ModeSymlink == 0 {
		return d.IsDir()
	}
	return isFolder(filepath.Join(b.folder, d.Name()))
}

func isFolder(path string) bool {
	info, err := os.Stat(path)
	return err == nil && info.IsDir()
}

func (b *browser) wanted(name string) bool {
	return slices.Contains(b.exts, strings.ToLower(filepath.Ext(name)))
}

// lines are the folder, what can be done with it, and what of it fits.
func (b *browser) lines(typed string) []line {
	lines := []line{{text: briefPath(b.folder), heading: true}}
	if path := typedPath(typed); filepath.IsAbs(path) && exists(path) {
		return append(lines, b.entry(path, isFolder(path)))
	}
	if b.exts == nil && typed == "" {
		lines = append(lines, line{text: words.T("Take this folder"), do: func() { b.take(b.folder) }})
	}
	if up := filepath.Dir(b.folder); up != b.folder && typed == "" {
		lines = append(lines, b.entry(up, true))
		lines[len(lines)-1].text = words.T("The folder above")
	}
	if b.err != nil {
		return append(lines, line{text: reason(b.err), off: true})
	}
	for _, d := range b.inside {
		if strings.Contains(folded(d.Name()), folded(typed)) {
			lines = append(lines, b.entry(filepath.Join(b.folder, d.Name()), b.isFolder(d)))
		}
	}
	return lines
}

// entry is a line of a folder to go into or a file to take.
func (b *browser) entry(path string, folder bool) line {
	if !folder {
		return line{text: filepath.Base(path), do: func() { b.take(path) }}
	}
	return line{text: filepath.Base(path) + string(filepath.Separator), stays: true, do: func() {
		b.read(path)
		b.finder.typed.SetText("")
		b.finder.refresh()
		b.editor.trace.say("browsing %s", path)
	}}
}

// typedPath is what is typed as a path, ~ being the home folder.
func typedPath(typed string) string {
	home, err := os.UserHomeDir()
	if rest, ok := strings.CutPrefix(typed, "~"); ok && err == nil {
		return home + rest
	}
	return typed
}
