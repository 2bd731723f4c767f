package panel

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
)

// views are contents that share a place; a row of buttons chooses which is shown.
type views struct {
	row     *fyne.Container
	stack   *fyne.Container
	buttons []*heard.Button
	changed func()
}

type view struct {
	title   string
	content fyne.CanvasObject
}

// newViews shows the first of the views; changed is called after another is chosen.
func newViews(changed func(), all ...view) *views {
	v := &views{row: container.New(&flow{}), stack: container.NewStack(), changed: changed}
	for i, one := range all {
		b := heard.NewButton(one.title, func() { v.choose(i) })
		v.buttons = append(v.buttons, b)
		v.row.Objects, v.stack.Objects = append(v.row.Objects, b), append(v.stack.Objects, one.content)
	}
	v.mark(0)
	return v
}

func (v *views) choose(i int) {
	v.mark(i)
	v.changed()
}

func (v *views) mark(chosen int) {
	for i, b := range v.buttons {
		b.Importance = widget.MediumImportance
		if i == chosen {
			b.Importance = widget.HighImportance
		}
		b.Refresh()
		show(v.stack.Objects[i], i == chosen)
	}
}

func (v *views) name(named map[string]fyne.CanvasObject) {
	for i, b := range v.buttons {
		named[fmt.Sprintf("plan-view-%d", i)] = b
	}
}
