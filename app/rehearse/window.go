package rehearse

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
	tooltip "github.com/dweymouth/fyne-tooltip"

	"homeside/app/fullscreen"
	"homeside/app/heard"
	"homeside/words"
)

// Window is the window for rehearsing. New makes one that is closed.
type Window struct {
	app     fyne.App
	choices []Choice
	say     func(format string, args ...any)

	win   *fullscreen.Window // nil while it is closed
	tabs  []*heard.Button
	shown *fyne.Container // holds the page
	page  Page
	at    int         // of choices
	size  image.Point // as last painted, in device pixels
}

// New is a window with these pages. say is told what happens, for tests.
func New(a fyne.App, say func(format string, args ...any), choices ...Choice) *Window {
	return &Window{app: a, say: say, choices: choices}
}

// Shown says whether the window is open.
func (w *Window) Shown() bool { return w.win != nil }

// Open shows the first page, full screen.
func (w *Window) Open() {
	if w.win != nil {
		w.win.RequestFocus()
		return
	}
	w.win = fullscreen.New(w.app, words.T("Homeside: rehearsing"), w.closed)
	w.shown, w.size = container.NewStack(), image.Point{}
	all := container.NewStack(fynecanvas.NewRaster(w.pulse), container.New(column{1}, w.row(), w.shown))
	w.win.SetContent(heard.NewWindow(tooltip.AddWindowToolTipLayer(all, w.win.Canvas()), func(k *fyne.KeyEvent) bool {
		w.key(k)
		return true
	}))
	w.win.Canvas().SetOnTypedKey(w.key)
	w.win.Show()
	w.say("rehearsing opened")
	w.choose(0)
}

// row is the row of pages to choose from and the way out.
func (w *Window) row() fyne.CanvasObject {
	w.tabs = nil
	row := container.New(flow{})
	for i, c := range w.choices {
		b := newButton(c.Name, nil, func() { w.choose(i) })
		w.tabs = append(w.tabs, b)
		row.Add(b)
	}
	row.Add(newButton(words.T("Close"), theme.WindowCloseIcon(), w.Close))
	return row
}

// choose shows a page in place of the one before. The page that is shown goes on.
func (w *Window) choose(i int) {
	if w.page != nil && w.at == i {
		return
	}
	w.leave()
	w.at = i
	for k, b := range w.tabs {
		b.Importance = widget.MediumImportance
		if k == i {
			b.Importance = widget.HighImportance
		}
		b.Refresh()
	}
	w.page = w.choices[i].Open()
	w.shown.Objects = []fyne.CanvasObject{w.page.Content()}
	w.shown.Refresh()
	w.say("rehearsing page %s", w.choices[i].Tag)
}

func (w *Window) leave() {
	if w.page != nil {
		w.page.Close()
		w.page = nil
	}
}

// key is a key that no control has taken.
func (w *Window) key(k *fyne.KeyEvent) {
	if w.page != nil && !w.page.Key(k) && k.Name == fyne.KeyEscape {
		w.Close()
	}
}

// Refresh has the page show the lesson as it is.
func (w *Window) Refresh() {
	if p, ok := w.page.(Refresher); ok {
		p.Refresh()
	}
}

// Close leaves the window.
func (w *Window) Close() {
	if w.win != nil {
		w.win.Close()
	}
}

// closed is called when the window has gone, whoever closed it.
func (w *Window) closed() {
	w.leave()
	tooltip.DestroyWindowToolTipLayer(w.win.Canvas())
	w.win = nil
	w.say("rehearsing closed")
}

// pulse is painted with the window and shows nothing.
func (w *Window) pulse(wide, high int) image.Image {
	if w.win != nil {
		w.win.Painted()
	}
	if size := image.Pt(wide, high); size != w.size {
		w.size = size
		w.say("rehearsing on %dx%d", wide, high)
	}
	return image.NewRGBA(image.Rect(0, 0, 1, 1))
}
