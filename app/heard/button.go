package heard

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	tooltip "github.com/dweymouth/fyne-tooltip/widget"
)

// Button is the only kind of button. Enter presses it as the space bar does, and
// pressed by a key it keeps the keys, so that Tab goes on from there; the toolkit's
// own gives them up. It may say what it does, and does say why it is off: in a tip
// beside the pointer, and in a line for pointer and keys alike.
type Button struct {
	tooltip.Button
	Keys   func(*fyne.KeyEvent)  // takes the keys that do not press it; nil offers them to the window
	Then   func() fyne.Focusable // gets the keys where the button is off after it was pressed; may be nil
	LetsGo bool                  // pressed by a key it gives the keys to its window, as the pointer does

	says   func() string
	reason string // why it is off
	line   func(string)
	told   bool // the line has its tip now
	edge   fynecanvas.Rectangle
}

// NewButton is a button that does something.
func NewButton(text string, do func()) *Button { return NewButtonWithIcon(text, nil, do) }

// NewButtonWithIcon is a button with a picture, which may be nil.
func NewButtonWithIcon(text string, icon fyne.Resource, do func()) *Button {
	b := &Button{}
	b.Text, b.Icon, b.OnTapped = text, icon, do
	b.edge.Hidden = true
	b.ExtendBaseWidget(b)
	return b
}

// Says gives the button a tip, asked for whenever it is shown.
func (b *Button) Says(tip func() string) *Button {
	b.says = tip
	return b
}

// Tell gives the tip to a line as well, and "" when it is over.
func (b *Button) Tell(line func(string)) *Button {
	b.line = line
	return b
}

// Unless turns the button off while there is a reason against pressing it, and on
// where that is "". The reason takes the place of its tip.
func (b *Button) Unless(reason string) {
	changed := b.reason != reason
	b.reason = reason
	switch off := reason != ""; {
	case off && !b.Disabled():
		b.Disable()
	case !off && b.Disabled():
		b.Enable()
	}
	if changed {
		b.SetToolTip(b.Tip())
		b.retell()
	}
}

// Tip is what the button says now; "" for nothing.
func (b *Button) Tip() string {
	switch {
	case b.reason != "":
		return b.reason
	case b.says != nil:
		return b.says()
	}
	return ""
}

// tell gives the line the tip while the pointer or the keys are on the button.
func (b *Button) tell(on bool) {
	tip := b.Tip()
	if b.line == nil || on && tip == "" || !on && !b.told {
		return
	}
	if b.told = on; !on {
		tip = ""
	}
	b.line(tip)
}

// retell tells the tip again where it is told now.
func (b *Button) retell() {
	if tip := b.Tip(); b.told {
		b.told = tip != ""
		b.line(tip)
	}
}

// TypedKey implements fyne.Focusable.
func (b *Button) TypedKey(k *fyne.KeyEvent) {
	switch {
	case enter(k) || k.Name == fyne.KeySpace:
		b.press()
	case b.Keys != nil:
		b.Keys(k)
	default:
		Offered(b, k)
	}
}

// press presses the button by a key.
func (b *Button) press() {
	if b.Disabled() || b.OnTapped == nil {
		return
	}
	if b.LetsGo {
		letGo(b)
	}
	b.OnTapped()
	if b.Then == nil || !b.Disabled() {
		return
	}
	next := b.Then()
	if w := fyne.CurrentApp().Driver().CanvasForObject(b); w != nil && w.Focused() == fyne.Focusable(b) && next.(fyne.CanvasObject).Visible() {
		w.Focus(next)
	}
}

// MouseIn implements desktop.Hoverable.
func (b *Button) MouseIn(e *desktop.MouseEvent) {
	b.SetToolTip(b.Tip())
	b.tell(true)
	b.Button.MouseIn(e)
}

// MouseOut implements desktop.Hoverable.
func (b *Button) MouseOut() {
	b.tell(false)
	b.Button.MouseOut()
}

// FocusGained implements fyne.Focusable: a tip beside the pointer is of no use to
// whoever works by keys.
func (b *Button) FocusGained() {
	b.tell(true)
	b.edge.Hidden = false
	b.Button.FocusGained()
	Focused(b)
}

// FocusLost implements fyne.Focusable.
func (b *Button) FocusLost() {
	b.tell(false)
	b.edge.Hidden = true
	b.Button.FocusLost()
}
