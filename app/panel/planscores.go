package panel

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/looks"
	"homeside/app/session"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/words"
)

// Widths of the columns, by words.ScoreHeads().
var scoreWidths = []float32{90, 330, 150, 190, 130, 130, 70}

// planScores is the plan score by score: who serves to whom, what the pair does,
// how often the score comes up and what it is worth. A click opens its play.
type planScores struct {
	box    *fyne.Container
	table  *heard.Table
	find   *heard.Entry
	found  *widget.Label
	plan   session.MatchPlan
	lesson lesson.Lesson
	states []plan.State // that are shown
	open   func(play int)
}

func newPlanScores(open func(play int)) *planScores {
	p := &planScores{open: open, find: heard.NewEntry(), found: widget.NewLabel("")}
	p.find.SetPlaceHolder("7-5-2")
	p.find.OnChanged = func(string) { p.refresh() }
	p.table = heard.NewTable(func() (int, int) { return len(p.states), len(scoreWidths) }, newState, p.fill)
	p.table.ShowHeaderRow = true
	p.table.CreateHeader = newState
	p.table.UpdateHeader = p.head
	p.table.OnSelected = p.selected
	top := container.New(&flow{}, beside(words.T("The score as called")), inWidth(callWidth, p.find), container.NewCenter(p.found))
	p.box = container.NewBorder(top, nil, nil, nil, p.table)
	return p
}

func (p *planScores) show(m session.MatchPlan, l lesson.Lesson) {
	p.plan, p.lesson = m, l
	p.refresh()
}

// refresh shows the states whose call begins as typed.
func (p *planScores) refresh() {
	typed := strings.TrimSpace(p.find.Text)
	p.states = nil
	for _, st := range p.plan.States {
		if strings.HasPrefix(st.State.Call().String(), typed) {
			p.states = append(p.states, st)
		}
	}
	p.found.SetText(words.ScoresFound(len(p.states), len(p.plan.States)))
	for i, w := range scoreWidths {
		p.table.SetColumnWidth(i, w*looks.Letters())
	}
	p.table.ScrollToTop()
	p.table.Refresh()
}

func (p *planScores) head(id widget.TableCellID, o fyne.CanvasObject) {
	l := o.(*widget.Label)
	l.TextStyle.Bold = true
	l.SetText(words.ScoreHeads()[id.Col])
}

func (p *planScores) fill(id widget.TableCellID, o fyne.CanvasObject) {
	if id.Row < len(p.states) {
		o.(*widget.Label).SetText(p.text(id))
	}
}

// text is a cell, by words.ScoreHeads().
func (p *planScores) text(id widget.TableCellID) string {
	st := p.states[id.Row]
	r := p.plan.Rows[st.Row]
	switch id.Col {
	case 0:
		return st.State.Call().String()
	case 1:
		return words.ServeAt(p.lesson, st.State)
	case 2:
		return words.Formation(r.Formation)
	case 3:
		return words.PlanRight(p.lesson, r.EndsRight())
	case 4:
		return fmt.Sprintf("%.2f", st.Rallies)
	case 5:
		return fmt.Sprintf("%.1f %%", 100*st.Win)
	default:
		return playNumber(p.playOf(st))
	}
}

// playOf is the lesson's play at this very score or else that of its situation,
// -1 if there is none.
func (p *planScores) playOf(st plan.State) int {
	for i, play := range p.lesson.Plays {
		if play.Fits(st.State) {
			return i
		}
	}
	return p.plan.Plays[st.Row]
}

func (p *planScores) selected(id widget.TableCellID) {
	p.table.UnselectAll()
	if id.Row >= 0 && id.Row < len(p.states) {
		p.open(p.playOf(p.states[id.Row]))
	}
}
