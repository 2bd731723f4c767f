package app

import (
	"homeside/app/panel"
	"homeside/words"
)

// askCompare lets a play be picked that is shown beside the present one, on one clock.
func (e *Editor) askCompare() {
	e.rest()
	if len(e.session.Lesson().Plays) < 2 {
		e.say(words.T("There is no other play in this lesson to compare with."))
		return
	}
	var q *question
	list := panel.NewPlayPicker(e.session, func(i int) {
		q.give(func() { e.compareWith(i) })
	}, func() { q.first() })
	q = e.askWith(words.T("Compare with another play"), list.List, answer{label: words.T("Cancel")})
	q.size(480, 560).focus(list.List)
	e.trace.say("choosing a play to compare")
}

func (e *Editor) compareWith(i int) {
	e.session.Compare(i)
	e.cards.showFound()
	e.say(words.T("Dashed and hollow: play %s.", panel.PlayName(e.session, i)))
	e.trace.say("comparing: %s", e.tell.Text())
}

func (e *Editor) stopComparing() {
	e.session.StopComparing()
	e.say("")
}
