package app

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"
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

// askPath shows the dialog. extra may be nil; accept is called with a path that is not empty.
func askPath(win fyne.Window, title, confirm, path string, extra fyne.CanvasObject, accept func(string)) {
	d := &pathDialog{win: win, path: newEscapeEntry(path), accept: accept}
	d.path.cancel = func() { d.close(false) }
	d.path.OnSubmitted = func(string) { d.close(true) }
	row := container.NewBorder(nil, nil, nil, widget.NewButton("Folder…", d.browse), d.path)
	box := container.NewVBox(widget.NewLabel("File"), row)
	if extra != nil {
		box.Add(extra)
	}
	d.dialog = dialog.NewCustomConfirm(title, confirm, "Cancel", box, d.close, win)
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
