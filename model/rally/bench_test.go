package rally

import (
	"testing"

	"homeside/model/lesson"
	"homeside/model/units"
)

// One play of four shots is solved again at every paint of a drag: well under a
// millisecond is the goal, half of one the aim.
func BenchmarkSolve(b *testing.B) {
	l := lesson.Lesson{Teams: teams(), Plays: []lesson.Play{play(four()...)}}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Solve(l, 0); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkAt(b *testing.B) {
	r := solved(b, play(four()...))
	span := r.To - r.From
	i := 0
	b.ReportAllocs()
	for b.Loop() {
		i++
		f := r.At(r.From + span*units.Seconds(i%997)/997)
		if f.T < r.From {
			b.Fatal(f.T)
		}
	}
}
