package session

import (
	"reflect"
	"slices"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/words"
)

// Desk holds the lessons open at once. One of them is shown by its session, the
// others are put aside, each with its own steps to undo.
type Desk struct {
	session *Session
	open    []sheet
	shown   int
	last    int           // the last id given
	blank   lesson.Lesson // what a lesson is that nobody has worked on
}

// sheet is a lesson's place on the desk.
type sheet struct {
	id     int
	parked Parked // of the one shown: stale
}

// Paper is what a desk tells of one of its lessons.
type Paper struct {
	ID       int // the same as long as the lesson is open
	Lesson   lesson.Lesson
	Path     string // of its file, empty if it has none
	Step     string // the last step done, if any
	Modified bool   // it differs from its file
	State    edit.State
}

// NewDesk is a desk with the session's lesson on it.
func NewDesk(s *Session) *Desk {
	return &Desk{session: s, open: []sheet{{id: 1}}, last: 1, blank: Blank()}
}

// Len is how many lessons are open; at least one, which may be blank.
func (d *Desk) Len() int { return len(d.open) }

// Shown is the number of the lesson shown, from 0.
func (d *Desk) Shown() int { return d.shown }

// Paper is lesson i as it is saved: without the draft of a gesture.
func (d *Desk) Paper(i int) Paper {
	s := d.at(i)
	step, _ := s.CanUndo()
	return Paper{d.open[i].id, s.history.Lesson(), s.path, step, s.Modified(), s.history.State()}
}

// Papers are all lessons in their order.
func (d *Desk) Papers() []Paper {
	all := make([]Paper, d.Len())
	for i := range all {
		all[i] = d.Paper(i)
	}
	return all
}

// Modified are the numbers of the lessons that differ from their files.
func (d *Desk) Modified() (all []int) {
	for i := range d.open {
		if d.Paper(i).Modified {
			all = append(all, i)
		}
	}
	return all
}

// Find is the number of the lesson of a file; false if it is not open.
func (d *Desk) Find(path string) (int, bool) {
	i := slices.IndexFunc(d.Papers(), func(p Paper) bool { return path != "" && p.Path == path })
	return i, i >= 0
}

// Blank is a lesson without plays, in which the players are called by letters
// until somebody says who they are.
func Blank() lesson.Lesson {
	var l lesson.Lesson
	for i := range 2 {
		l.Teams[court.Near].Players[i], l.Teams[court.Far].Players[i] = words.Partner(i), words.Opponent(i)
	}
	return l
}

// Blank says whether the lesson shown is empty and untouched.
func (d *Desk) Blank() bool {
	p := d.Paper(d.shown)
	return p.Path == "" && !p.Modified && reflect.DeepEqual(p.Lesson, d.blank)
}

// Show shows lesson i and puts the one shown aside.
func (d *Desk) Show(i int) {
	if i < 0 || i >= d.Len() || i == d.shown {
		return
	}
	d.open[d.shown].parked = d.session.Park()
	d.shown = i
	d.session.Resume(d.open[i].parked)
}

// Begin puts the people of a lesson without plays into the blank one shown, which
// stays blank; its first play is to be served at a state of their game. Nothing
// happens where another is shown.
func (d *Desk) Begin(l lesson.Lesson, at game.State) {
	if d.Blank() {
		d.blank = l
		p := parked(l, "")
		p.s.opening = &at
		d.session.Resume(p)
	}
}

// Step shows the next lesson, or with -1 the one before, around the ends.
func (d *Desk) Step(by int) { d.Show(((d.shown+by)%d.Len() + d.Len()) % d.Len()) }

// Open shows a lesson of a file, as it is there; without a path a lesson that
// there is no need to save. It comes behind the one shown, or in its place if
// that one is blank.
func (d *Desk) Open(l lesson.Lesson, path string) { d.put(parked(l, path)) }

// OpenUnsaved shows a lesson that would be lost if it were not saved; path is
// the file it is to be saved to, if there is one.
func (d *Desk) OpenUnsaved(l lesson.Lesson, path string) { d.put(parkedUnsaved(l, path)) }

func (d *Desk) put(p Parked) {
	d.last++
	was := d.session.Park()
	if d.Blank() {
		d.open[d.shown] = sheet{id: d.last}
	} else {
		d.open[d.shown].parked = was
		d.shown++
		d.open = slices.Insert(d.open, d.shown, sheet{id: d.last})
	}
	d.session.Resume(p)
}

// Saved marks what a paper says as written to path; what has been done to the
// lesson since stays unsaved. A lesson that has been closed is let be.
func (d *Desk) Saved(p Paper, path string) {
	i := slices.IndexFunc(d.open, func(s sheet) bool { return s.id == p.ID })
	if i < 0 {
		return
	}
	s := d.at(i)
	s.path = path
	s.history = s.history.SaveAt(p.State)
	d.session.touch()
}

// at is the session of lesson i: the one that shows it, or the one put aside.
func (d *Desk) at(i int) *Session {
	if i == d.shown {
		return d.session
	}
	return &d.open[i].parked.s
}

// Close takes lesson i from the desk, saved or not, and shows the one beside it
// if it was shown. The last one leaves a blank lesson.
func (d *Desk) Close(i int) {
	switch {
	case i < 0 || i >= d.Len():
		return
	case d.Len() == 1:
		d.last++
		d.open[0] = sheet{id: d.last}
		d.blank = Blank()
		d.session.Resume(parked(d.blank, ""))
		return
	case i == d.shown:
		d.Show(max(i-1, 1-i)) // the one before, of the first the one behind
	}
	d.open = slices.Delete(d.open, i, i+1)
	if i < d.shown {
		d.shown--
	}
	d.session.touch()
}
