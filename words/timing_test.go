package words

import (
	"testing"

	"homeside/model/lesson"
)

func TestWhen(t *testing.T) {
	third := lesson.ContactOf(2)
	for _, c := range []struct {
		a           lesson.Anchor
		want, inSpa string
	}{
		{lesson.Anchor{}, "at the serve", "en el saque"},
		{lesson.Anchor{Offset: -0.5}, "0.50 s before the serve", "0.50 s antes del saque"},
		{lesson.Anchor{Event: third, Offset: 0.25}, "0.25 s after the third", "0.25 s después del tercer golpe"},
		{lesson.At(lesson.Event{Shot: 2, Moment: lesson.Bounce}), "at the bounce of the third", "en el bote del tercer golpe"},
		{lesson.At(lesson.Event{Shot: 1, Moment: lesson.Net}), "at the net crossing of the return", "en el paso por la red de la devolución"},
		{lesson.At(lesson.TheEnd), "at the end", "en el final"},
		{lesson.At(lesson.ContactOf(7)), "at shot 8", "en el golpe 8"},
	} {
		if got := When(c.a); got != c.want {
			t.Errorf("When(%+v) = %q, want %q", c.a, got, c.want)
		}
		Speak(Spanish)
		got := When(c.a)
		Speak(English)
		if got != c.inSpa {
			t.Errorf("in Spanish When(%+v) = %q, want %q", c.a, got, c.inSpa)
		}
	}
}

func TestReasonsBeginAsSentences(t *testing.T) {
	if got := NotByTime(0); got[:9] != "The serve" {
		t.Errorf("NotByTime(0) = %q, want it to begin with The serve", got)
	}
}
