package panel

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/words"
)

// planColumns is how many columns the table has, by words.PlanHeads.
const planColumns = 11

// Columns whose figures can be a warning.
const (
	formationColumn = 4
	marginColumn    = 7
	legalColumn     = 8
)

// planTable is the table of a match plan; a click opens a row's play.
type planTable struct {
	box   *fyne.Container
	table *heard.Table
	say   *widget.Label
	plan  session.MatchPlan
	open  func(play int)
	cells map[int]fyne.CanvasObject // the first of each row shown
}

func newPlanTable(open func(play int)) *planTable {
	t := &planTable{open: open, say: wrapped(), cells: map[int]fyne.CanvasObject{}}
	t.table = heard.NewTable(func() (int, int) { return len(t.plan.Rows), planColumns }, newState, t.fill)
	t.table.ShowHeaderRow = true
	t.table.CreateHeader = newState
	t.table.UpdateHeader = t.head
	t.table.OnSelected = t.selected
	t.box = container.NewBorder(nil, t.say, nil, nil, t.table)
	return t
}

func (t *planTable) show(m session.MatchPlan) {
	t.plan = m
	t.fit()
	t.table.Refresh()
	t.say.SetText(saidOf(m))
}

// fit makes every column as wide as what stands in it.
func (t *planTable) fit() {
	heads := words.PlanHeads(t.plan.Pair.Lesson, t.plan.Pair.Team)
	for col := range planColumns {
		wide := letters(heads[col], true)
		for row := range t.plan.Rows {
			wide = max(wide, letters(t.text(widget.TableCellID{Row: row, Col: col}), false))
		}
		t.table.SetColumnWidth(col, wide+2*theme.InnerPadding()+1)
	}
}

// letters is the width of a text.
func letters(text string, bold bool) float32 {
	return fyne.MeasureText(text, theme.TextSize(), fyne.TextStyle{Bold: bold}).Width
}

// saidOf is what stands under the table.
func saidOf(m session.MatchPlan) string {
	if len(m.Rows) == 0 {
		return ""
	}
	said := []string{words.PlanTotals(m.Plan), words.Worth(m.Worth)}
	if !m.Pair.Lesson.Scoring.Format.SwapsSides() {
		said = append(said, words.ChooseSides())
	}
	if late := words.PlanLate(m.Plan); late != "" {
		said = append(said, late)
	}
	for _, r := range m.Rows {
		if refused := words.PlanRefused(m.Plan, r); refused != "" {
			said = append(said, refused)
		}
	}
	return strings.Join(append(said, words.PlanCaution()), "\n")
}

func (t *planTable) head(id widget.TableCellID, o fyne.CanvasObject) {
	l := o.(*widget.Label)
	l.TextStyle.Bold = true
	l.SetText(words.PlanHeads(t.plan.Pair.Lesson, t.plan.Pair.Team)[id.Col])
}

func (t *planTable) fill(id widget.TableCellID, o fyne.CanvasObject) {
	if id.Row >= len(t.plan.Rows) {
		return
	}
	label := o.(*widget.Label)
	label.Importance = t.importance(id)
	label.SetText(t.text(id))
	if id.Col == 0 {
		t.cells[id.Row] = o
	}
}

// importance marks what is not as wanted, late or against the rules.
func (t *planTable) importance(id widget.TableCellID) widget.Importance {
	r := t.plan.Rows[id.Row]
	switch {
	case id.Col == formationColumn && !r.Wanted():
		return widget.WarningImportance
	case id.Col == marginColumn && r.Margin != nil && *r.Margin < 0, id.Col == legalColumn && r.Legal != nil && !*r.Legal:
		return widget.DangerImportance
	default:
		return widget.MediumImportance
	}
}

// text is a cell, by words.PlanHeads.
func (t *planTable) text(id widget.TableCellID) string {
	r, l := t.plan.Rows[id.Row], t.plan.Pair.Lesson
	return [...]func() string{
		func() string { return words.PlanWhen(r) },
		func() string { return words.PlanLead(l, r) },
		func() string { return words.PlanRight(l, r.Right()) },
		func() string { return words.PlanWants(l, r) },
		func() string { return words.Formation(r.Formation) },
		func() string { return words.Way(r.Feet[0]) },
		func() string { return words.Way(r.Feet[1]) },
		func() string { return words.PlanMargin(r) },
		func() string { return words.PlanLegal(r) },
		func() string { return fmt.Sprintf("%.1f", r.Rallies) },
		func() string { return playNumber(t.plan.Plays[id.Row]) },
	}[id.Col]()
}

// playNumber is a play as the list counts it; nothing where there is none.
func playNumber(i int) string {
	if i < 0 {
		return words.T("none")
	}
	return fmt.Sprintf("%d", i+1)
}

func (t *planTable) selected(id widget.TableCellID) {
	t.table.UnselectAll()
	if id.Row >= 0 && id.Row < len(t.plan.Rows) {
		t.open(t.plan.Plays[id.Row])
	}
}

func (t *planTable) name(named map[string]fyne.CanvasObject) {
	for row, cell := range t.cells {
		if row < len(t.plan.Rows) {
			named[fmt.Sprintf("plan-row-%d", row)] = cell
		}
	}
}
