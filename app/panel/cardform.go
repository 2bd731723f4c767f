package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/model/lesson"
	"homeside/words"
)

// cardForm changes the title or the end card of the reel.
type cardForm struct {
	box     fyne.CanvasObject
	session *session.Session
	heading *commitEntry
	text    *commitEntry
	seconds *commitEntry
}

func newCardForm(s *session.Session, say func(string)) *cardForm {
	f := &cardForm{session: s}
	f.heading = newCommitEntry(func(text string) { f.set(func(c *lesson.Card) { c.Heading = text }) })
	f.text = newCommitEntry(func(text string) { f.set(func(c *lesson.Card) { c.Text = text }) })
	f.seconds = newCommitEntry(func(text string) {
		v, err := secondsOf(text, leastFreeze, lesson.MaxHold)
		if err != nil {
			say(err.Error())
			return
		}
		f.set(func(c *lesson.Card) { c.Length = v })
	})
	f.box = container.New(layout.NewFormLayout(),
		widget.NewLabel(words.T("Heading")), f.heading, widget.NewLabel(words.T("Text")), f.text, widget.NewLabel(words.T("Seconds")), f.seconds)
	return f
}

func (f *cardForm) set(change func(*lesson.Card)) {
	f.session.ChangeReel(words.T("change a card"), func(r lesson.Reel) lesson.Reel {
		if f.session.ReelPick() == session.EndCard {
			change(&r.End)
		} else {
			change(&r.Title)
		}
		return r
	})
}

func (f *cardForm) refresh() {
	r, _ := f.session.Reel()
	c := r.Title
	if f.session.ReelPick() == session.EndCard {
		c = r.End
	}
	f.heading.show(c.Heading)
	f.text.show(c.Text)
	length := c.Length
	if length == 0 {
		length = lesson.DefaultCard
	}
	f.seconds.show(secondsText(length))
}
