package app

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"
	"homeside/words"
)

// pathDialog asks for a file's path in a field that can be typed into, with a
// button to look for its folder. Enter accepts, Escape cancels. The toolkit's
// own save dialog would empty an existing file before it is asked for.
type pathDialog struct {
	win    fyne.Window
	dialog *dialog.ConfirmDialog
	path   *escapeEntry
	accept func(path string)
	done   bool
}

// askFile is askPath for a file that is there: its button shows the lessons and
// rosters of a folder to choose from.
func askFile(win fyne.Window, title, confirm, path string, accept func(string)) {
	askOne(win, title, confirm, path, []string{lessonExt}, accept)
}

// askOne is askFile for files with some endings.
func askOne(win fyne.Window, title, confirm, path string, exts []string, accept func(string)) {
	askWith(win, title, confirm, path, nil, accept, words.T("Choose…"), func(d *pathDialog) { d.choose(exts) })
}

// askPath shows the dialog. extra may be nil; accept is called with a path that is not empty.
func askPath(win fyne.Window, title, confirm, path string, extra fyne.CanvasObject, accept func(string)) {
	askWith(win, title, confirm, path, extra, accept, words.T("Folder…"), (*pathDialog).browse)
}

func askWith(win fyne.Window, title, confirm, path string, extra fyne.CanvasObject, accept func(string), button string, look func(*pathDialog)) {
	d := &pathDialog{win: win, path: newEscapeEntry(path), accept: accept}
	d.path.cancel = func() { d.close(false) }
	d.path.OnSubmitted = func(string) { d.close(true) }
	row := container.NewBorder(nil, nil, nil, widget.NewButton(button, func() { look(d) }), d.path)
	box := container.NewVBox(widget.NewLabel(words.T("File")), row)
	if extra != nil {
		box.Add(extra)
	}
	d.dialog = dialog.NewCustomConfirm(title, confirm, words.T("Cancel"), box, d.close, win)
	d.dialog.Resize(fyne.NewSize(640, 220))
	d.dialog.Show()
	win.Canvas().Focus(d.path)
	d.path.selectAll()
}

// close ends the dialog once, whichever way it was asked to.
func (d *pathDialog) close(ok bool) {
	if d.done {
		return
	}
	d.done = true
	d.dialog.Hide()
	if ok && d.path.Text != "" {
		d.accept(d.path.Text)
	}
}

// choose shows the files of the path's folder; one that is chosen is accepted.
func (d *pathDialog) choose(exts []string) {
	files := dialog.NewFileOpen(func(u fyne.URIReadCloser, err error) {
		if err != nil || u == nil {
			return
		}
		d.path.SetText(u.URI().Path())
		_ = u.Close() // it was only opened for its path
		d.close(true)
	}, d.win)
	files.SetFilter(storage.NewExtensionFileFilter(exts))
	if at, err := storage.ListerForURI(storage.NewFileURI(filepath.Dir(d.path.Text))); err == nil {
		files.SetLocation(at)
	}
	files.Show()
}

func (d *pathDialog) browse() {
	folder := dialog.NewFolderOpen(func(u fyne.ListableURI, err error) {
		if err == nil && u != nil {
			d.path.SetText(filepath.Join(u.Path(), filepath.Base(d.path.Text)))
		}
	}, d.win)
	if at, err := storage.ListerForURI(storage.NewFileURI(filepath.Dir(d.path.Text))); err == nil {
		folder.SetLocation(at)
	}
	folder.Show()
}

// escapeEntry is a field that hands Escape on.
type escapeEntry struct {
	widget.Entry
	cancel func()
}

func newEscapeEntry(text string) *escapeEntry {
	e := &escapeEntry{}
	e.ExtendBaseWidget(e)
	e.SetText(text)
	return e
}

// TypedKey implements fyne.Focusable.
func (e *escapeEntry) TypedKey(k *fyne.KeyEvent) {
	if k.Name == fyne.KeyEscape && e.cancel != nil {
		e.cancel()
		return
	}
	e.Entry.TypedKey(k)
}

func (e *escapeEntry) selectAll() { e.TypedShortcut(&fyne.ShortcutSelectAll{}) }
