package rehearse

import (
	"fyne.io/fyne/v2"

	"homeside/app/rehearsal"
)

// Key implements Page.
func (w *Walk) Key(k *fyne.KeyEvent) bool {
	switch {
	case w.rally == nil:
		return false
	case w.cautions != nil:
		return w.keyOnCautions(k.Name)
	}
	switch k.Name {
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		w.toggle()
	case fyne.KeyRight:
		w.step(true)
	case fyne.KeyLeft, fyne.KeyPageUp:
		w.step(false)
	case fyne.KeyPageDown:
		w.forward()
	case fyne.KeyHome:
		w.restart()
	case fyne.KeyV:
		w.controls.view.SetSelectedIndex(int((w.stage.view + 1) % viewCount))
	case fyne.KeyS:
		w.controls.speed.SetSelectedIndex((w.controls.speed.SelectedIndex() + 1) % len(rehearsal.Speeds))
	case fyne.KeyM:
		w.controls.sound.SetChecked(!w.controls.sound.Checked)
	default:
		return false
	}
	return true
}

// keyOnCautions is a key while the cautions are to be read.
func (w *Walk) keyOnCautions(k fyne.KeyName) bool {
	switch k {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeyPageDown:
		w.read()
		return true
	}
	return false
}

// toggle starts, pauses and goes on.
func (w *Walk) toggle() {
	if w.cautions != nil {
		return // to be read first
	}
	if w.rehearsal.Toggle(); w.rehearsal.Paused() {
		w.player.Hush()
	}
	w.follow()
}

// step goes to the next event or the one before.
func (w *Walk) step(forward bool) {
	if w.cautions != nil {
		return
	}
	w.player.Hush()
	w.rehearsal.Step(forward)
	w.stepped()
}

func (w *Walk) stepped() {
	name := "before"
	if e, ok := w.rally.EventAt(w.rehearsal.Moment()); ok {
		name = e.Name.String()
	}
	w.say("rehearsing at %s", name)
	w.follow()
}

// forward is what a clicker's key does: it starts, goes from event to event and,
// after the last one and in a pause of any kind, on.
func (w *Walk) forward() {
	switch h := w.rehearsal; h.Phase() {
	case rehearsal.Waiting, rehearsal.Done:
		w.toggle()
		return
	case rehearsal.Running:
		if w.player.Hush(); h.Step(true) {
			w.stepped()
			return
		}
	}
	w.rehearsal.Skip()
	w.follow()
}

// restart goes back to before the first round.
func (w *Walk) restart() {
	w.player.Hush()
	w.rehearsal.Stop()
	w.follow()
}
