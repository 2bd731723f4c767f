package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/ring"
)

// playList is the list of plays as a part of the window that has the keys: it shows
// the ring of such parts, and all keys are the window's. The toolkit's own grey row
// for the keys would be a second mark beside that of the play shown.
type playList struct {
	widget.List
	Typed func(rune) // a letter; nil means nobody asks
	ring  *ring.Ring
	keys  func(*fyne.KeyEvent)
	wider func() // the rows have another width
	high  map[int]float32
}

func newPlayList(keys func(*fyne.KeyEvent), wider func()) *playList {
	return &playList{ring: ring.New(), keys: keys, wider: wider, high: map[int]float32{}}
}

// FocusGained implements fyne.Focusable.
func (l *playList) FocusGained() {
	l.ring.Show(true)
	heard.Focused(l)
}

// FocusLost implements fyne.Focusable.
func (l *playList) FocusLost() { l.ring.Show(false) }

// TypedRune implements fyne.Focusable.
func (l *playList) TypedRune(r rune) {
	if l.Typed != nil {
		l.Typed(r)
	}
}

// TypedKey implements fyne.Focusable.
func (l *playList) TypedKey(k *fyne.KeyEvent) { l.keys(k) }

// Resize implements fyne.CanvasObject.
func (l *playList) Resize(s fyne.Size) {
	was := l.Size().Width
	l.List.Resize(s)
	if s.Width != was {
		l.wider()
	}
}

// setHeight makes a row so high; one that is as high as a row of few words always
// was is left alone, for every height that is set has the list painted again.
func (l *playList) setHeight(row int, high, least float32) {
	was, set := l.high[row]
	if was == high || !set && high == least {
		return
	}
	l.high[row] = high
	l.SetItemHeight(row, high)
}
