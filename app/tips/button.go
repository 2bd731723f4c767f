package tips

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	tooltip "github.com/dweymouth/fyne-tooltip/widget"

	"homeside/app/heard"
)

// Button is a button with a tip.
type Button struct {
	tooltip.Button
	says func() string
	off  func() string
	line func(string)
}

// New is a button that does something. says is its tip.
func New(text string, icon fyne.Resource, says func() string, do func()) *Button {
	b := &Button{says: says}
	b.Text, b.Icon, b.OnTapped = text, icon, do
	b.ExtendBaseWidget(b)
	return b
}

// Off says why the button cannot be pressed while it is off, in place of its tip.
func (b *Button) Off(why func() string) *Button {
	b.off = why
	return b
}

// Tell gives the tip to the status line as well, and "" when it is over.
func (b *Button) Tell(line func(string)) *Button {
	b.line = line
	return b
}

// Tip is what the button says now.
func (b *Button) Tip() string {
	if b.Disabled() && b.off != nil {
		return b.off()
	}
	return b.says()
}

func (b *Button) tell(s string) {
	if b.line != nil {
		b.line(s)
	}
}

// TypedKey implements fyne.Focusable.
func (b *Button) TypedKey(k *fyne.KeyEvent) { heard.PressKey(b, &b.Button.Button, k) }

// MouseIn implements desktop.Hoverable.
func (b *Button) MouseIn(e *desktop.MouseEvent) {
	b.SetToolTip(b.Tip())
	b.tell(b.Tip())
	b.Button.MouseIn(e)
}

// MouseOut implements desktop.Hoverable.
func (b *Button) MouseOut() {
	b.tell("")
	b.Button.MouseOut()
}

// FocusGained implements fyne.Focusable: the keys' tip is the status line's.
func (b *Button) FocusGained() {
	b.tell(b.Tip())
	b.Button.FocusGained()
}

// FocusLost implements fyne.Focusable.
func (b *Button) FocusLost() {
	b.tell("")
	b.Button.FocusLost()
}
