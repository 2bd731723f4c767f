package drilling

import "testing"

func TestTurns(t *testing.T) {
	var q turns[string]
	for _, s := range []string{"a", "b", "c"} {
		q.add(s)
	}
	for i, c := range []struct {
		move func() bool
		ok   bool
		now  string
		last bool
	}{{q.forward, false, "c", true}, {q.back, true, "b", false}, {q.back, true, "a", false}, {q.back, false, "a", false}, {q.forward, true, "b", false}} {
		if ok := c.move(); ok != c.ok || *q.now() != c.now || q.last() != c.last {
			t.Fatalf("step %d: %v, at %q, last %v, want %v, %q, %v", i, ok, *q.now(), q.last(), c.ok, c.now, c.last)
		}
	}
	q.add("d")
	if *q.now() != "d" || !q.last() {
		t.Errorf("after a new question %q is looked at, want d", *q.now())
	}
}
