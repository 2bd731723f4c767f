package clip

import (
	"context"
	"errors"
	"fmt"
	"runtime"
	"slices"
	"sync/atomic"
	"testing"
)

func TestInOrder(t *testing.T) {
	for _, n := range []int{0, 1, 2, 5, run, run + 1, 2 * run, 5*run - 1} {
		var got []int
		newMaker := func(int) func(int) (int, error) { return func(i int) (int, error) { return i * i, nil } }
		err := inOrder(context.Background(), n, newMaker, func(i, piece int) error {
			got = append(got, i, piece)
			return nil
		})
		want := []int(nil)
		for i := range n {
			want = append(want, i, i*i)
		}
		if err != nil || !slices.Equal(got, want) {
			t.Errorf("inOrder of %d: got %v (%v), want %v", n, got, err, want)
		}
	}
}

// However slowly pieces are taken, no more than some are made ahead: memory does
// not grow with a clip.
func TestInOrderIsNotFarAhead(t *testing.T) {
	var made atomic.Int64
	newMaker := func(int) func(int) (int, error) {
		return func(i int) (int, error) { made.Add(1); return i, nil }
	}
	err := inOrder(context.Background(), 20*run, newMaker, func(i, _ int) error {
		for range 100 {
			runtime.Gosched()
		}
		if ahead := int(made.Load()) - i; ahead > workers*(run+2) {
			return fmt.Errorf("%d pieces are ahead", ahead)
		}
		return nil
	})
	if err != nil {
		t.Error(err)
	}
}

func TestInOrderGivesTheMakersError(t *testing.T) {
	broken := errors.New("broken")
	newMaker := func(int) func(int) (int, error) {
		return func(i int) (int, error) {
			if i == 3 {
				return 0, fmt.Errorf("piece %d: %w", i, broken)
			}
			return i, nil
		}
	}
	if err := inOrder(context.Background(), 10, newMaker, func(int, int) error { return nil }); !errors.Is(err, broken) {
		t.Errorf("inOrder with a broken maker: got %v, want %v", err, broken)
	}
}
