package app

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/words"
)

// A file is asked for in a field that can be typed into, with a button to look for
// it or its folder. The toolkit's own save dialog would empty an existing file
// before it is asked for, and its dialogs do not hear Escape.

// askFile asks for a lesson or a roster that is there.
func (e *Editor) askFile(title, confirm, path string, accept func(string)) {
	e.askOne(title, confirm, path, []string{lessonExt}, accept)
}

// askOne asks for a file that is there, with one of some endings. One that is
// looked for and found is taken at once.
func (e *Editor) askOne(title, confirm, path string, exts []string, accept func(string)) {
	e.askPathBy(title, confirm, path, nil, words.T("Choose…"), accept, func(q *question, field *heard.Entry) {
		e.browseFiles(title, filepath.Dir(field.Text), exts, func(path string) {
			field.SetText(path)
			q.enter()
		})
	})
}

// askPath asks for a file to write. extra may be nil; accept is called with a path
// that is not empty.
func (e *Editor) askPath(title, confirm, path string, extra fyne.CanvasObject, accept func(string)) {
	e.askPathBy(title, confirm, path, extra, words.T("Folder…"), accept, func(_ *question, field *heard.Entry) {
		e.browseFolder(filepath.Dir(field.Text), func(folder string) {
			field.SetText(filepath.Join(folder, filepath.Base(field.Text)))
		})
	})
}

func (e *Editor) askPathBy(title, confirm, path string, extra fyne.CanvasObject, look string, accept func(string), looked func(*question, *heard.Entry)) {
	var q *question
	field := filledEntry(path)
	button := heard.NewButton(look, func() { looked(q, field) })
	box := container.NewVBox(widget.NewLabel(words.T("File")), container.NewBorder(nil, nil, nil, button, field))
	if extra != nil {
		box.Add(extra)
	}
	q = e.askWith(title, box, answer{label: words.T("Cancel")}, answer{label: confirm, do: func() {
		if field.Text != "" {
			accept(field.Text)
		}
	}})
	q.size(640, 220).focus(field)
	field.SelectAll()
}
