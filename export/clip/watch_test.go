package clip

import (
	"context"
	"testing"
	"time"
)

// endingOf is how a wait ends that sees these signs one after another, the last
// for ever, and how many looks it took.
func endingOf(seen ...signs) (how ending, took int) {
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	every := make(chan time.Time, 1)
	how = wait(ctx, every, func() signs {
		s := seen[min(took, len(seen)-1)]
		if took++; took > 1000 {
			cancel()
		} else {
			every <- time.Time{}
		}
		return s
	})
	return how, took - 1
}

// What shows no sign for all of patience is idle; what computes may do so longer,
// but not for ever; a frame taken, a line, a byte or a change of the file counts
// anew.
func TestWaitForSigns(t *testing.T) {
	var computing, slow, taking []signs
	for i := range 2000 {
		computing = append(computing, signs{computed: time.Duration(i)})
		slow = append(slow, signs{computed: time.Duration(i / (looks - 1))})
		taking = append(taking, signs{outward: outward{taken: int64(i / (looks - 1))}})
	}
	for name, c := range map[string]struct {
		seen []signs
		how  ending
		took int
	}{
		"nothing":          {[]signs{{}}, idle, looks},
		"a line":           {[]signs{{}, {}, {}, {outward: outward{said: 5}}}, idle, 3 + looks},
		"a byte":           {[]signs{{}, {outward: outward{size: 1}}}, idle, 1 + looks},
		"the same byte":    {[]signs{{}, {}, {outward: outward{written: time.Unix(1, 0)}}}, idle, 2 + looks},
		"computing":        {computing, spinning, looks * spins},
		"computing slowly": {slow, spinning, looks * spins},
		"taking frames":    {taking, over, 1000},
	} {
		if how, took := endingOf(c.seen...); how != c.how || took != c.took {
			t.Errorf("%s: ended as %d after %d looks, want %d after %d", name, how, took, c.how, c.took)
		}
	}
}
