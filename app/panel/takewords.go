package panel

import (
	"homeside/app/session"
	"homeside/canvas/film"
	"homeside/model/lesson"
	"homeside/words"
)

// title is what a card of the running order is.
func (t *takeStrip) title(pick int) string {
	switch pick {
	case session.TitleCard:
		return words.T("Title card")
	case session.EndCard:
		return words.T("End card")
	}
	return words.T("Take %d", pick+1)
}

// play is the name of a take's play; "" for a card of words.
func (t *takeStrip) play(r lesson.Reel, pick int) string {
	if pick < 0 || r.Takes[pick].Play > len(t.session.Lesson().Plays) {
		return ""
	}
	return PlayName(t.session, r.Takes[pick].Play-1)
}

// tip says a take's plays whole; "" for a card of words.
func (t *takeStrip) tip(r lesson.Reel, pick int) string {
	name := t.play(r, pick)
	if name == "" {
		return ""
	}
	if beside := r.Takes[pick].Beside; beside > 0 && beside <= len(t.session.Lesson().Plays) {
		return words.T("Take %d: %s; beside it %s", pick+1, name, PlayName(t.session, beside-1))
	}
	return words.T("Take %d: %s", pick+1, name)
}

// lasts is how long a part of the reel is shown.
func (t *takeStrip) lasts(f *film.Film, r lesson.Reel, pick int) string {
	switch pick {
	case session.TitleCard:
		return cardLasts(r.Title)
	case session.EndCard:
		return cardLasts(r.End)
	}
	if k := shownTake(f.Reel, pick); k >= 0 {
		return words.ClipClock(f.Reel.Takes[k].End-f.Reel.Takes[k].Start) + " " + words.SpeedTag(r.Takes[pick].Rate())
	}
	return words.T("not shown")
}

func cardLasts(c lesson.Card) string {
	if !c.Shown() {
		return words.T("none")
	}
	return words.ClipClock(c.Lasts())
}
