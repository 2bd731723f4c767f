package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/words"
)

// goalChoice is a goal of a pair with whom it is about, nil for nobody.
type goalChoice struct {
	team court.End
	goal plan.Goal
	who  *game.Player
}

// goalsOf are the goals that lead to sides for a pair.
func goalsOf(pair plan.Pair) (goals []goalChoice) {
	one, two := pair.Player(1), pair.Player(2)
	for _, g := range plan.Goals {
		about := []*game.Player{&one, &two}
		if _, err := pair.Wants(g, nil); err == nil {
			about = []*game.Player{nil}
		}
		for _, who := range about {
			goals = append(goals, goalChoice{pair.Team, g, who})
		}
	}
	return goals
}

// sidesChoice asks on the score strip what the pairs want from their sides.
type sidesChoice struct {
	button *heard.Button       // opens and closes the question
	parts  []fyne.CanvasObject // the question and its choice
	goal   *Dropdown
	goals  []goalChoice
}

func newSidesChoice(toggle func(), take func(goalChoice)) *sidesChoice {
	c := &sidesChoice{button: heard.NewButton(words.T("Sides"), toggle)}
	c.button.Importance = widget.LowImportance
	c.goal = NewDropdown(nil, func(string) {
		if i := c.goal.SelectedIndex(); i >= 0 {
			take(c.goals[i])
		}
	})
	c.goal.PlaceHolder = words.T("Choose a goal")
	c.parts = []fyne.CanvasObject{beside(words.T("What do you want from your sides?")), beside(words.T("The play for this score is written.")), Roomy(c.goal)}
	return c
}

// show offers the goals of both pairs.
func (c *sidesChoice) show(l lesson.Lesson) {
	c.goals = nil
	var options []string
	for _, e := range court.Ends {
		for _, g := range goalsOf(plan.Pair{Lesson: l, Team: e}) {
			c.goals = append(c.goals, g)
			options = append(options, words.Team(l, e)+": "+words.Goal(l, g.goal, g.who))
		}
	}
	relabel(c.goal, options, -1)
}
