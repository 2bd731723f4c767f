package rules

import (
	"testing"

	"homeside/model/lesson"
	"homeside/model/rally"
)

// A play's rules are to take less than 0.2 ms.
func BenchmarkCheck(b *testing.B) {
	l, rallies := solved(b, 1)
	for b.Loop() {
		Check(rallies[0], l)
	}
}

// A lesson of 500 plays, solved beforehand, is to take less than 0.3 s.
func BenchmarkCheckLesson(b *testing.B) {
	l, rallies := solved(b, 500)
	for b.Loop() {
		for _, r := range rallies {
			Check(r, l)
		}
	}
}

// The same with solving the rallies.
func BenchmarkSolveAndCheckLesson(b *testing.B) {
	l, _ := solved(b, 500)
	for b.Loop() {
		for i := range l.Plays {
			r, err := rally.Solve(l, i)
			if err != nil {
				b.Fatal(err)
			}
			Check(r, l)
		}
	}
}

func solved(b *testing.B, plays int) (lesson.Lesson, []*rally.Rally) {
	l := base()
	for len(l.Plays) < plays {
		l.Plays = append(l.Plays, base().Plays[0])
	}
	rallies := make([]*rally.Rally, plays)
	for i := range rallies {
		var err error
		if rallies[i], err = rally.Solve(l, i); err != nil {
			b.Fatal(err)
		}
	}
	return l, rallies
}
