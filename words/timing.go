package words

import (
	"strings"
	"unicode/utf8"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// TheShot is a shot with its article, in a sentence: "the serve", "the third", "shot 6".
func TheShot(i int) string {
	switch i {
	case 0:
		return T("the serve")
	case 1:
		return T("the return")
	case 2:
		return T("the third")
	case 3:
		return T("the fourth")
	case 4:
		return T("the fifth")
	}
	return T("shot %d", i+1)
}

// TheEvent is an event with its article: "the serve", "the bounce of the third", "the end".
func TheEvent(e lesson.Event) string {
	switch e.Moment {
	case lesson.End:
		return T("the end")
	case lesson.Net:
		return contracted(T("the net crossing of %s", TheShot(e.Shot)))
	case lesson.Bounce:
		return contracted(T("the bounce of %s", TheShot(e.Shot)))
	}
	return TheShot(e.Shot)
}

// contracted joins the Spanish article with the word before it.
func contracted(s string) string {
	return strings.NewReplacer(" de el ", " del ", " a el ", " al ").Replace(s)
}

// When says a time by its event: "at the serve", "0.25 s after the third".
func When(a lesson.Anchor) string {
	name, t := TheEvent(a.Event), a.Offset
	switch {
	case t > -0.005 && t < 0.005:
		return contracted(T("at %s", name))
	case t < 0:
		return contracted(T("%s before %s", Seconds(-t), name))
	default:
		return contracted(T("%s after %s", Seconds(t), name))
	}
}

// Timing says when a thing is: "Tobin arrives 0.25 s after the third (3.53 s)".
func Timing(r *rally.Rally, what rally.Timed, on lesson.Anchor, at units.Seconds) string {
	when, clock := When(on), Seconds(at)
	switch what.Kind {
	case rally.Landing:
		return sentenceCase(T("%s comes down at %s", TheShot(what.Index), clock))
	case rally.Start:
		return T("%s starts %s (%s)", r.NameOf(what.Player), when, clock)
	case rally.Running:
		return T("%s's run starts %s (%s)", r.NameOf(what.Player), when, clock)
	case rally.CueFrom, rally.Saying:
		return T("%s begins %s (%s)", cueName(r, what.Index), when, clock)
	case rally.CueTo:
		return T("%s ends %s (%s)", cueName(r, what.Index), when, clock)
	}
	return T("%s arrives %s (%s)", r.NameOf(what.Player), when, clock)
}

// TimingStep names the change of a thing's time: "change when Tobin arrives".
func TimingStep(r *rally.Rally, what rally.Timed) string {
	switch what.Kind {
	case rally.Landing:
		return contracted(T("change the time of %s", TheShot(what.Index)))
	case rally.Start:
		return T("change when %s starts", r.NameOf(what.Player))
	case rally.Running:
		return T("move the run of %s in time", r.NameOf(what.Player))
	case rally.CueFrom, rally.CueTo:
		return T("change how long a text is shown")
	case rally.Saying:
		return T("move a text in time")
	}
	return T("change when %s arrives", r.NameOf(what.Player))
}

// cueName says which cue it is, in a few words.
func cueName(r *rally.Rally, i int) string {
	if i >= len(r.Play.Cues) {
		return T("The caption")
	}
	c := r.Play.Cues[i]
	if c.Kind == lesson.Signal {
		return contracted(T("The signal of %s", r.NameOf(c.Giver)))
	}
	const most = 24
	text := []rune(c.Text)
	if len(text) > most {
		text = append(text[:most-1], '…')
	}
	return T("“%s”", string(text))
}

// PlaceOfHit is why the time of a place that nobody stated cannot be changed.
func PlaceOfHit(name string, shot int) string {
	return T("%s is there to hit %s, so the ball says when. Drag the player on the court first to give a place of its own.", name, TheShot(shot))
}

// NotByTime is why a shot's time cannot be dragged.
func NotByTime(shot int) string {
	return sentenceCase(T("%s is not said by its time in the air. In the menu Play, choose “Say this shot by its time”.", TheShot(shot)))
}

// sentenceCase begins a sentence with a capital.
func sentenceCase(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	return strings.ToUpper(string(r)) + s[n:]
}
