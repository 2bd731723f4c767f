package panel

import "testing"

// What is dragged comes in at the place it was over last; cancelled, it stays until
// the pointer lets go, however far it is moved.
func TestReorder(t *testing.T) {
	r := newReorder()
	if _, _, ok := r.drop(); ok || r.cancel() {
		t.Error("a drag ends that has not begun")
	}
	if !r.over(1, 2) || r.over(1, 2) || !r.over(1, 3) {
		t.Error("over does not tell what is new")
	}
	if !r.after(3) || r.before(3) || r.after(2) || r.after(1) {
		t.Error("what is dragged down does not come in behind the place it is over")
	}
	if from, to, ok := r.drop(); from != 1 || to != 3 || !ok {
		t.Errorf("drop = %d, %d, %v, want 1, 3", from, to, ok)
	}
	r.over(2, 0)
	if !r.before(0) || !r.cancel() || r.over(2, 1) || r.before(1) {
		t.Error("a drag that is cancelled goes on")
	}
	if _, _, ok := r.drop(); ok {
		t.Error("a drag that is cancelled moves something")
	}
	if !r.over(0, 1) {
		t.Error("after a cancelled drag nothing can be dragged")
	}
}

func TestPlaceAt(t *testing.T) {
	for _, c := range []struct {
		at, size float32
		n, want  int
	}{{-5, 10, 3, 0}, {0, 10, 3, 0}, {19, 10, 3, 1}, {20, 10, 3, 2}, {99, 10, 3, 2}, {5, 10, 0, 0}} {
		if got := placeAt(c.at, c.size, c.n); got != c.want {
			t.Errorf("placeAt(%v, %v, %d) = %d, want %d", c.at, c.size, c.n, got, c.want)
		}
	}
}
