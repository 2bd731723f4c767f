package panel

import (
	"fyne.io/fyne/v2"

	"homeside/app/session"
)

// key is a key on the running order.
func (p *Reels) key(k *fyne.KeyEvent) {
	if p.strip.order.under() && k.Name != fyne.KeyEscape {
		return // the hand first: what it holds would change under it
	}
	switch k.Name {
	case fyne.KeyEscape:
		if !p.strip.cancel() {
			p.Close()
		}
	case fyne.KeySpace:
		p.preview.toggle()
	case fyne.KeyDelete, fyne.KeyBackspace:
		p.session.DeleteTake()
	case fyne.KeyLeft:
		p.session.PickTake(max(p.session.ReelPick()-1, session.TitleCard))
	case fyne.KeyRight:
		p.session.PickTake(p.session.ReelPick() + 1)
	}
}

// CancelDrag lets a take go where it was and says whether one was dragged.
func (p *Reels) CancelDrag() bool { return p.strip.cancel() }

// Press is a key that no control of the page has taken.
func (p *Reels) Press(k *fyne.KeyEvent) { p.key(k) }
