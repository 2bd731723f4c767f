package drilling

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
)

// choice is an answer that can be given.
type choice struct {
	text   string
	icon   fyne.Resource
	chosen bool
	do     func()
}

// row is a question with its answers.
type row struct {
	asks    string
	choices []choice
}

// The most that can be asked at once, and answered.
const (
	mostRows    = 2
	mostChoices = 4
)

// answers are the buttons of the answers, counted through from 1 by the digits
// that press them. The buttons stay; what is on them changes.
type answers struct {
	box   *container.ThemeOverride
	rows  [mostRows]answerRow
	shown []choice // as counted
	grown *float32 // see larger
}

type answerRow struct {
	box     *fyne.Container
	asks    *widget.Label
	buttons [mostChoices]*heard.Button
}

func newAnswers(grown *float32) *answers {
	a := &answers{grown: grown}
	all := container.NewVBox()
	for i := range a.rows {
		r := &a.rows[i]
		r.asks = widget.NewLabel("")
		r.box = container.NewHBox(r.asks)
		for k := range r.buttons {
			r.buttons[k] = heard.NewButton("", nil)
			r.box.Add(r.buttons[k])
		}
		all.Add(container.NewCenter(r.box))
	}
	a.box = container.NewThemeOverride(all, larger{buttonText, grown, false})
	return a
}

// show shows questions with their answers.
func (a *answers) show(rows []row) {
	a.shown = nil
	signs := false
	for i := range a.rows {
		var r row
		if i < len(rows) {
			r = rows[i]
		}
		a.rows[i].show(r, len(a.shown))
		a.shown = append(a.shown, r.choices...)
		signs = signs || len(r.choices) > 0 && r.choices[0].icon != nil
	}
	a.box.Theme = larger{buttonText, a.grown, signs}
	a.box.Refresh()
}

// show shows a question, its answers counted on from a number; no room is taken
// by one without answers.
func (r *answerRow) show(asked row, before int) {
	visible(r.box, len(asked.choices) > 0)
	r.asks.SetText(asked.asks)
	visible(r.asks, asked.asks != "")
	for k, b := range r.buttons {
		if k < len(asked.choices) {
			c := asked.choices[k]
			b.Importance = widget.MediumImportance
			if c.chosen {
				b.Importance = widget.HighImportance
			}
			b.Icon, b.OnTapped = c.icon, c.do
			b.SetText(strconv.Itoa(before+k+1) + "  " + c.text)
		}
		visible(b, k < len(asked.choices))
	}
}

// press gives answer n, counted from 1; false if there is none.
func (a *answers) press(n int) bool {
	if n < 1 || n > len(a.shown) {
		return false
	}
	a.shown[n-1].do()
	return true
}

// button is the button of answer n, counted from 1; nil if there is none.
func (a *answers) button(n int) *heard.Button {
	for _, r := range a.rows {
		for _, b := range r.buttons {
			if b.Visible() {
				if n--; n == 0 {
					return b
				}
			}
		}
	}
	return nil
}

// mostLetters of a name are shown on a button: the buttons of a question stand in
// one row.
const mostLetters = 16

func onButton(name string) string {
	if r := []rune(name); len(r) > mostLetters {
		return string(r[:mostLetters-1]) + "…"
	}
	return name
}

func visible(o fyne.CanvasObject, yes bool) {
	if yes {
		o.Show()
	} else {
		o.Hide()
	}
}
