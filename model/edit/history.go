package edit

import "homeside/model/lesson"

// History is what was done to a lesson, step by step, as far back as it goes.
// Its zero value holds an empty lesson, unmodified. It is a value: copies share
// their past and do not disturb one another.
type History struct {
	present *step   // nil means the zero lesson
	undone  *undone // the next redo
	saved   *step
}

// step is a state and the one before it.
type step struct {
	name   string
	lesson lesson.Lesson
	before *step
}

// undone is a step taken back and the one taken back before it.
type undone struct {
	step *step
	next *undone
}

// Begin is a history that starts, saved, with a lesson.
func Begin(l lesson.Lesson) History {
	first := &step{lesson: l}
	return History{present: first, saved: first}
}

// BeginUnsaved is a history that starts with a lesson that is in no file yet:
// it is modified until it is saved.
func BeginUnsaved(l lesson.Lesson) History { return History{present: &step{lesson: l}} }

// Lesson is the present state.
func (h History) Lesson() lesson.Lesson {
	if h.present == nil {
		return lesson.Lesson{}
	}
	return h.present.lesson
}

// State is one of a history's states: equal to itself after undo and redo, to no
// other, whatever the lesson holds.
type State struct{ of *step }

// State is the present one.
func (h History) State() State { return State{h.present} }

// Do is the history with one more step. What had been undone is forgotten.
func (h History) Do(name string, l lesson.Lesson) History {
	if h.present == nil {
		h = Begin(lesson.Lesson{})
	}
	return History{present: &step{name, l, h.present}, saved: h.saved}
}

// CanUndo says whether there is a step to take back, and its name.
func (h History) CanUndo() (string, bool) {
	if h.present == nil || h.present.before == nil {
		return "", false
	}
	return h.present.name, true
}

// CanRedo says whether there is a step to do again, and its name.
func (h History) CanRedo() (string, bool) {
	if h.undone == nil {
		return "", false
	}
	return h.undone.step.name, true
}

// Undo is the history one step back; itself if there is none.
func (h History) Undo() History {
	if _, ok := h.CanUndo(); !ok {
		return h
	}
	h.undone = &undone{h.present, h.undone}
	h.present = h.present.before
	return h
}

// Redo is the history with the last undone step done again; itself if there is none.
func (h History) Redo() History {
	if _, ok := h.CanRedo(); !ok {
		return h
	}
	h.present = h.undone.step
	h.undone = h.undone.next
	return h
}

// Save is the history with the present state marked as saved.
func (h History) Save() History {
	h.saved = h.present
	return h
}

// SaveAt is the history with one of its states marked as saved.
func (h History) SaveAt(s State) History {
	h.saved = s.of
	return h
}

// Modified says whether the present state is another than the saved one.
func (h History) Modified() bool { return h.saved != h.present }
