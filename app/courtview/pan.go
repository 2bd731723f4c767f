package courtview

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// pan moves the court under the pointer: with the middle button, or with any
// while the space bar is held.
type pan struct {
	down bool
	at   fyne.Position
}

func (v *View) dragPan(p fyne.Position) {
	fromX, fromY := v.share(v.pan.at)
	x, y := v.share(p)
	v.pan.at = p
	v.space.used = true
	v.setZoom(v.zoom.moved(x-fromX, y-fromY))
}

// space is the space bar: let go it plays or pauses, unless it was held to pan.
type space struct{ held, used bool }

var _ desktop.Keyable = (*View)(nil)

// KeyDown implements desktop.Keyable.
func (v *View) KeyDown(k *fyne.KeyEvent) {
	if k.Name == fyne.KeySpace {
		v.space = space{held: true}
	}
}

// KeyUp implements desktop.Keyable.
func (v *View) KeyUp(k *fyne.KeyEvent) {
	if k.Name != fyne.KeySpace || !v.space.held {
		return
	}
	used := v.space.used
	v.space = space{}
	if !used && v.events.Key != nil {
		v.events.Key(k)
	}
}
