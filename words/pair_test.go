package words_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/roster"
	"homeside/words"
)

func TestPairWords(t *testing.T) {
	p := roster.Pair{Name: "Harbour Lane", Players: [2]lesson.Player{{Name: "Ivo"}, {}}}
	if got, want := words.Pair(p), "Harbour Lane: Ivo and second"; got != want {
		t.Errorf("Pair = %q, want %q", got, want)
	}
	if got, want := words.PairPut(p, court.Far), "Harbour Lane is the far team now."; got != want {
		t.Errorf("PairPut = %q, want %q", got, want)
	}
	mara := lesson.Player{Name: "Mara", Hand: lesson.LeftHanded, Wheelchair: true, Serving: lesson.WantRight}
	if got, want := words.PairPlayer(mara), "Mara: left-handed, plays in a wheelchair; on the serve wants the right, on the return either side; 10 ft from standing in about "; !strings.HasPrefix(got, want) {
		t.Errorf("PairPlayer = %q, want it to begin with %q", got, want)
	}
	p.Players[0].Name = strings.Repeat("ü", lesson.MaxName)
	if got := words.PairName(p); utf8.RuneCountInString(got) != lesson.MaxName || !utf8.ValidString(got) {
		t.Errorf("PairName of a long name is %q, want %d characters", got, lesson.MaxName)
	}
}
