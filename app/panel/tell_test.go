package panel

import (
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/words"
)

// What two plays give away is said within the narrow cards, in either language.
func TestTellIsNarrow(t *testing.T) {
	defer words.Speak(words.English)
	for _, l := range []words.Language{words.English, words.Spanish} {
		words.Speak(l)
		test.NewTempApp(t)
		const cards = 240 // in the window, less the scroll bars and the edges
		if p := NewTell(session.New(lettered("ab"), "", nil)); p.Box.MinSize().Width > cards {
			t.Errorf("%s: the tell wants %.0f, more than the cards' %d", l.Tag(), p.Box.MinSize().Width, cards)
		}
	}
}
