package edit

import (
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/lesson"
)

func titled(s string) lesson.Lesson { return lesson.Lesson{Title: s} }

func TestUndoRedo(t *testing.T) {
	h := Begin(titled("a")).Do("rename to b", titled("b")).Do("rename to c", titled("c"))
	if name, ok := h.CanUndo(); !ok || name != "rename to c" {
		t.Errorf("CanUndo() = %q, %v, want \"rename to c\"", name, ok)
	}
	back := h.Undo()
	if got := back.Lesson().Title; got != "b" {
		t.Errorf("after Undo the title is %q, want b", got)
	}
	if name, ok := back.CanRedo(); !ok || name != "rename to c" {
		t.Errorf("CanRedo() = %q, %v, want \"rename to c\"", name, ok)
	}
	if got := back.Redo().Lesson().Title; got != "c" {
		t.Errorf("after Redo the title is %q, want c", got)
	}
	if _, ok := back.Do("rename to d", titled("d")).CanRedo(); ok {
		t.Error("a new step left something to redo, want nothing")
	}
	if got := Begin(titled("a")).Undo().Lesson().Title; got != "a" {
		t.Errorf("Undo at the start gives %q, want a", got)
	}
}

func TestModifiedIsExact(t *testing.T) {
	h := Begin(titled("a"))
	if h.Modified() {
		t.Error("a new history is modified, want not")
	}
	h = h.Do("b", titled("b")).Save().Do("c", titled("c"))
	if !h.Modified() {
		t.Error("after a step past the saved one Modified() = false")
	}
	if h.Undo().Modified() {
		t.Error("back at the saved step Modified() = true")
	}
	gone := h.Undo().Undo().Do("d", titled("d"))
	if !gone.Modified() {
		t.Error("the saved step was undone and replaced, want modified")
	}
	if !gone.Undo().Modified() {
		t.Error("before the saved step that is gone Modified() = false")
	}
}

// Undoing everything and redoing everything gives every state again.
func TestThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := Begin(titled("start"))
		var titles []string
		for i := range rapid.IntRange(0, 30).Draw(t, "steps") {
			h = h.Do("step", titled(strconv.Itoa(i)))
			titles = append(titles, strconv.Itoa(i))
		}
		end := h
		for range titles {
			h = h.Undo()
		}
		if got := h.Lesson().Title; got != "start" {
			t.Fatalf("after undoing all the title is %q, want start", got)
		}
		for _, want := range titles {
			h = h.Redo()
			if got := h.Lesson().Title; got != want {
				t.Fatalf("Redo gives %q, want %q", got, want)
			}
		}
		if h.Lesson().Title != end.Lesson().Title || h.Modified() != end.Modified() {
			t.Fatalf("there and back: %q, want %q", h.Lesson().Title, end.Lesson().Title)
		}
	})
}

func TestCopiesDoNotDisturb(t *testing.T) {
	h := Begin(titled("a")).Do("b", titled("b"))
	left, right := h.Do("c", titled("c")), h.Do("d", titled("d"))
	if left.Lesson().Title != "c" || right.Lesson().Title != "d" || h.Lesson().Title != "b" {
		t.Errorf("two futures of one history: %q, %q, %q, want c, d, b", left.Lesson().Title, right.Lesson().Title, h.Lesson().Title)
	}
}
