package app

import (
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
)

// pictureExts are the names of files that are taken for pictures.
var pictureExts = []string{".png", ".jpg", ".jpeg", ".gif", ".webp", ".bmp", ".tif", ".tiff", ".heic"}

func isPicture(path string) bool {
	return slices.Contains(pictureExts, strings.ToLower(filepath.Ext(path)))
}

// dropped takes files that were dropped onto the window: lessons and rosters
// are opened, a picture is handed on where somebody wants it.
func (e *Editor) dropped(_ fyne.Position, what []fyne.URI) {
	if e.win.Canvas().Overlays().Top() != nil {
		return // under a dialog
	}
	var paths []string
	for _, u := range what {
		paths = append(paths, u.Path())
	}
	e.trace.say("dropped %d", len(paths))
	if len(paths) == 1 && isPicture(paths[0]) && e.onPicture != nil && !e.desk.Blank() {
		e.onPicture(paths[0])
		return
	}
	e.openAll(paths)
}
