package game

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
)

func TestQuestions(t *testing.T) {
	both := [2]bool{true, true}
	began, server := Question{Kind: AskBegan}, Question{Kind: AskServer}
	starter := func(e court.End) Question { return Question{Kind: AskStarter, Team: e} }
	for _, c := range []struct {
		name string
		q    Query
		want []Question
	}{
		{"either partner can hold the serve", Query{Call: Call{4, 7, 2}}, []Question{server}},
		{"the server is seen", Query{Call: Call{4, 7, 2}, Server: new(Near2)}, nil},
		{"only the starter can", Query{Call: Call{0, 6, 1}}, nil},
		{"first turn or later", Query{Call: Call{0, 0, 2}}, []Question{began, server}},
		{"the far team began", Query{Call: Call{0, 0, 2}, Began: new(court.Far)}, nil},
		{"nobody knows anything", Query{Call: Call{4, 7, 2}, Unsure: both}, []Question{starter(court.Near), starter(court.Far), server}},
		{"the receiver is unknown", Query{Call: Call{0, 6, 1}, Unsure: [2]bool{false, true}}, []Question{starter(court.Far)}},
		{"the score decides", Query{Format: RallyFixed, Call: Call{4, 7, 0}}, nil},
		{"the first call says who began", Query{Format: RallyFixed}, nil},
		{"sides are hidden", Query{Format: RallyOwnServe, Call: Call{4, 7, 0}}, []Question{began, server}},
	} {
		got, err := c.q.Questions()
		if err != nil || !slices.Equal(got, c.want) {
			t.Errorf("%s: Questions = %v, %v, want %v", c.name, got, err, c.want)
		}
	}
}

// A referee who knows the truth and answers every question leaves exactly the
// true state.
func TestQuestionsSuffice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		set := drawSettings(t)
		truth := drawState(t, set)
		if truth.Over() {
			return
		}
		q := Query{Format: set.Format, To: set.To, Starters: set.Starters, Call: truth.Call(), Serving: truth.Serving()}
		q.Unsure = [2]bool{rapid.Bool().Draw(t, "unsure near"), rapid.Bool().Draw(t, "unsure far")}
		ask, err := q.Questions()
		if err != nil {
			t.Fatalf("Questions(%+v): %v", q, err)
		}
		for _, a := range ask {
			switch a.Kind {
			case AskStarter:
				q.Unsure[a.Team] = false
			case AskBegan:
				q.Began = &set.First
			case AskServer:
				q.Server = new(truth.Server())
			}
		}
		left, err := q.Who()
		wrong := slices.ContainsFunc(left, func(s State) bool { return line(s, true) != line(truth, true) })
		if err != nil || len(left) == 0 || wrong {
			t.Fatalf("%v: after %v left %q, %v, want %s", truth.Call(), ask, lines(left, true), err, line(truth, true))
		}
	})
}

func TestQuestionNames(t *testing.T) {
	for k, want := range map[QuestionKind]string{AskStarter: "starter", AskBegan: "began", AskServer: "server"} {
		if got := k.String(); got != want {
			t.Errorf("QuestionKind(%d).String() = %q, want %q", k, got, want)
		}
	}
}
