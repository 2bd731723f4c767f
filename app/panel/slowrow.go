package panel

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/model/lesson"
	"homeside/words"
)

// slowRow changes one of the stretches of the take picked that run at another speed.
type slowRow struct {
	box      *fyne.Container
	from, to *anchorChoice
	speed    *speedChoice
	remove   *heard.Button
}

func newSlowRow(f *takeForm, i int) *slowRow {
	change := func(set func(*lesson.Slow)) {
		f.set(words.T("slow down between two events"), func(t *lesson.Take) {
			if i < len(t.Slows) {
				t.Slows = slices.Clone(t.Slows)
				set(&t.Slows[i])
			}
		})
	}
	r := &slowRow{}
	r.from = newAnchorChoice("", func(a *lesson.Anchor) { change(func(s *lesson.Slow) { s.Span.From = *a }) })
	r.to = newAnchorChoice("", func(a *lesson.Anchor) { change(func(s *lesson.Slow) { s.Span.To = *a }) })
	r.speed = newSpeedChoice(func(v float64) { change(func(s *lesson.Slow) { s.Speed = v }) })
	r.remove = heard.NewButtonWithIcon("", theme.DeleteIcon(), func() {
		f.set(words.T("delete a stretch at another speed"), func(t *lesson.Take) {
			if i < len(t.Slows) {
				t.Slows = slices.Delete(slices.Clone(t.Slows), i, i+1)
			}
		})
	}).Says(func() string { return words.T("Deletes this stretch at another speed") })
	ends := container.NewGridWithColumns(2, r.from.Dropdown, r.to.Dropdown)
	r.box = container.NewVBox(ends, container.NewBorder(nil, nil, widget.NewLabel(words.T("Speed %d", i+1)), r.remove, r.speed.Dropdown))
	return r
}

func (r *slowRow) refresh(p lesson.Play, s lesson.Slow) {
	r.from.show(p, &s.Span.From)
	r.to.show(p, &s.Span.To)
	r.speed.show(s.Speed)
}
