package app

import (
	"homeside/canvas/look"
	"homeside/words"
)

// lacking are the letters of what the present play's pictures say that no font
// has.
func (e *Editor) lacking() []rune {
	r := e.session.Current()
	if r == nil {
		return nil
	}
	texts := []string{r.Play.Title}
	for _, c := range r.Play.Cues {
		texts = append(texts, c.Text)
	}
	for _, t := range e.session.Lesson().Teams {
		for _, p := range t.Players {
			texts = append(texts, p.Name, p.Initials)
		}
	}
	return look.Lacking(texts...)
}

// tellLacks says which letters are empty boxes, when there are others than before.
func (e *Editor) tellLacks() {
	letters := e.lacking()
	if before := e.lacks; string(letters) == before {
		return
	}
	e.lacks = string(letters)
	if len(letters) > 0 {
		e.say(words.Lacks(letters))
	}
}

// idleLine is the line that stands while there is nothing to say.
func (e *Editor) idleLine() string {
	if e.lacks != "" {
		return words.Lacks([]rune(e.lacks))
	}
	return words.Caution()
}
