package words

import (
	"strings"
	"unicode/utf8"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
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

// LoopSays says which stretch is played again and again.
func LoopSays(from, to units.Seconds) string {
	return T("Loop from %s to %s", Seconds(from), Seconds(to))
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
	return sentenceCase(T("%s is not said by its time in the air. In the menu Time, choose “Say this shot by its time”.", TheShot(shot)))
}

// SaidByTime names the step that makes a shot's time in the air what fixes it.
func SaidByTime(shot int) string {
	return contracted(T("say %s by its time", TheShot(shot)))
}

// PickKey says what a digit does on the court.
func PickKey(id game.Player) string {
	return T("pick player %d of the %s team", id.Number(), endName(id))
}

// PickAlsoKey says what a digit does there with Shift.
func PickAlsoKey(id game.Player) string {
	return T("pick player %d of the %s team as well", id.Number(), endName(id))
}

func endName(id game.Player) string {
	if id.Team() == court.Far {
		return T("far")
	}
	return T("near")
}

// PartName says what is picked on the court: "Tobin", "Tobin's place 0.25 s after
// the third", "the aim of the return".
func PartName(r *rally.Rally, a edit.Part) string {
	switch a.Kind {
	case edit.KeyframePart, edit.RunPart, edit.BendPart:
		i := r.Tracks[a.Player].StopOf(a.Index)
		if i < 0 {
			break
		}
		when := When(r.Tracks[a.Player].Stops[i].Keyframe.At)
		if a.Kind == edit.KeyframePart {
			return contracted(T("Place of %s %s", r.NameOf(a.Player), when))
		}
		return contracted(T("Run of %s, arriving %s", r.NameOf(a.Player), when))
	case edit.AimPart:
		return contracted(T("Aim of %s", TheShot(a.Index)))
	case edit.MarkPart, edit.TipPart:
		if a.Index < len(r.Play.Marks) {
			return T("Mark: %s", r.Play.Marks[a.Index].Text)
		}
	}
	return r.NameOf(a.Player)
}

// SentenceOf is a reason as a sentence.
func SentenceOf(reason string) string { return sentenceCase(reason) + "." }

// sentenceCase begins a sentence with a capital.
func sentenceCase(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	return strings.ToUpper(string(r)) + s[n:]
}
