package words

import "testing"

func TestPlays(t *testing.T) {
	for n, want := range []string{"no plays", "1 play", "2 plays"} {
		if got := Plays(n); got != want {
			t.Errorf("Plays(%d) = %q, want %q", n, got, want)
		}
	}
}
