package app

import (
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"homeside/words"
)

// pictureExts are the names of files that are taken for pictures.
var pictureExts = []string{".png", ".jpg", ".jpeg", ".gif", ".webp", ".bmp", ".tif", ".tiff", ".heic"}

func isPicture(path string) bool {
	return slices.Contains(pictureExts, strings.ToLower(filepath.Ext(path)))
}

// dropped takes files that were dropped onto the window: lessons and rosters
// are opened, a picture is handed on where somebody wants it. While a dialog is
// open, or a file is read or written, they wait.
func (e *Editor) dropped(_ fyne.Position, what []fyne.URI) {
	var paths []string
	for _, u := range what {
		paths = append(paths, u.Path())
	}
	e.trace.say("dropped %d", len(paths))
	if e.answering() {
		e.say(words.DroppedWaits(bases(paths)))
	}
	e.waiting = append(e.waiting, paths)
	e.takeDropped()
}

func bases(paths []string) []string {
	names := make([]string, len(paths))
	for i, p := range paths {
		names[i] = filepath.Base(p)
	}
	return names
}

// answering says whether a dialog is open.
func (e *Editor) answering() bool {
	return slices.ContainsFunc(e.asking, func(q *question) bool { return !q.done })
}

// takeDropped takes the files that wait longest, if nothing holds them up any more.
// Opening them calls it again.
func (e *Editor) takeDropped() {
	if len(e.waiting) == 0 || e.working || e.answering() {
		return
	}
	if menu := e.win.Canvas().Overlays().Top(); menu != nil {
		menu.Hide()
	}
	paths := e.waiting[0]
	e.waiting = e.waiting[1:]
	if len(paths) == 1 && isPicture(paths[0]) && e.onPicture != nil && !e.desk.Blank() {
		e.onPicture(paths[0])
		e.takeDropped()
		return
	}
	e.openAll(paths)
}
