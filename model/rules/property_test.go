package rules

import (
	"math"
	"os"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
	"homeside/model/rally"
)

// mirrored is the lesson with the teams at each other's ends.
func mirrored(l lesson.Lesson) lesson.Lesson {
	l.Teams[0], l.Teams[1] = l.Teams[1], l.Teams[0]
	l.Conditions.WindX, l.Conditions.WindY = -l.Conditions.WindX, -l.Conditions.WindY
	plays := make([]lesson.Play, len(l.Plays))
	for i, p := range l.Plays {
		plays[i] = p.Turned()
	}
	l.Plays = plays
	return l
}

// mirroredFindings are the findings seen from the other end.
func mirroredFindings(all []finding.Finding) []finding.Finding {
	var out []finding.Finding
	for _, f := range all {
		f.Where = f.Where.Mirror()
		if f.Someone {
			f.Player ^= 2
		}
		out = append(out, f)
	}
	return out
}

// same says whether two lists hold the same findings at the same places, in any order.
func same(a, b []finding.Finding) bool {
	if len(a) != len(b) {
		return false
	}
	left := append([]finding.Finding(nil), b...)
	for _, f := range a {
		i := 0
		for i < len(left) && !alike(f, left[i]) {
			i++
		}
		if i == len(left) {
			return false
		}
		left = append(left[:i], left[i+1:]...)
	}
	return true
}

func alike(f, g finding.Finding) bool {
	const near = 1e-5
	return f.ID == g.ID && f.Rule == g.Rule && f.Severity == g.Severity && f.Someone == g.Someone && f.Player == g.Player &&
		math.Abs(float64(f.When-g.When)) < near && f.Where.Distance(g.Where) < near
}

// Mirrored ends get mirrored findings, for every case.
func TestMirroredEnds(t *testing.T) {
	for _, c := range cases {
		for _, change := range []change{c.has, c.not} {
			l := with(change)
			want, got := mirroredFindings(found(t, l)), found(t, mirrored(l))
			if !same(got, want) {
				t.Errorf("%s: Check(mirrored) = %v, want %v", c.id, ids(got), ids(want))
			}
		}
	}
}

// The base lesson with everybody moved about and every shot aimed elsewhere
// gets the same findings from both ends.
func TestMirroredEndsAnywhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := base()
		p := &l.Plays[0]
		shift := func() court.Point {
			return pt(rapid.Float64Range(-9, 9).Draw(t, "x"), rapid.Float64Range(-9, 9).Draw(t, "y"))
		}
		for id := range p.Tracks {
			by := shift()
			for k := range p.Tracks[id] {
				p.Tracks[id][k].Place = p.Tracks[id][k].Place.Add(by)
			}
		}
		for i := range p.Shots {
			p.Shots[i].Aim = p.Shots[i].Aim.Add(shift())
		}
		p.Situation.Call = game.Call{Serving: rapid.IntRange(0, 11).Draw(t, "own"), Receiving: rapid.IntRange(0, 11).Draw(t, "other"), Server: rapid.IntRange(0, 2).Draw(t, "server")}
		want, got := mirroredFindings(solvedAndChecked(t, l, 0)), solvedAndChecked(t, mirrored(l), 0)
		if !same(got, want) {
			t.Fatalf("Check(mirrored) = %+v, want %+v", got, want)
		}
	})
}

func solvedAndChecked(t *rapid.T, l lesson.Lesson, i int) []finding.Finding {
	r, err := rally.Solve(l, i)
	if err != nil {
		t.Fatal(err)
	}
	return Check(r, l)
}

// Any sound lesson is judged: findings of known kinds, in order, at ordinary
// places and times within the rally, and twice the same.
func TestAnyLesson(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lessontest.Lessons().Draw(t, "lesson")
		for i := range l.Plays {
			r, err := rally.Solve(l, i)
			if err != nil {
				t.Fatal(err)
			}
			got := Check(r, l)
			for k, f := range got {
				if !f.Where.Finite() || math.IsNaN(float64(f.When)) || math.IsInf(float64(f.When), 0) {
					t.Fatalf("%s at %v, %v s, want ordinary numbers", f.ID, f.Where, f.When)
				}
				if k > 0 && f.Severity < got[k-1].Severity {
					t.Fatalf("%v comes after %v, want the worst first", f.ID, got[k-1].ID)
				}
			}
			if again := Check(r, l); !reflect.DeepEqual(got, again) {
				t.Fatalf("Check twice = %v and %v, want the same", got, again)
			}
		}
	})
}

// The built-in lesson teaches legal stacks.
func TestBuiltInLessonHasNoFaults(t *testing.T) {
	f, err := os.Open("../../assets/lessons/left-hand-middle.json")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	l, err := lessonfile.Read(f)
	if err != nil {
		t.Fatal(err)
	}
	stacks := 0
	for i, p := range l.Plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range Check(r, l) {
			if f.Severity == finding.Fault {
				t.Errorf("%q: %s at %v s, %v, want no fault", p.Title, f.ID, f.When, f.Where)
			}
			if f.ID == finding.StackLegal {
				stacks++
			}
		}
	}
	if stacks == 0 {
		t.Error("no play of the built-in lesson is said to be stacked")
	}
}
