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

// freezeRow changes one freeze of the take picked.
type freezeRow struct {
	box     *fyne.Container
	at      *anchorChoice
	seconds *commitEntry
	caption *commitEntry
}

func newFreezeRow(f *takeForm, i int) *freezeRow {
	change := func(set func(*lesson.Freeze)) {
		f.set(words.T("change a freeze"), func(t *lesson.Take) {
			if i < len(t.Freezes) {
				t.Freezes = slices.Clone(t.Freezes)
				set(&t.Freezes[i])
			}
		})
	}
	r := &freezeRow{}
	r.at = newAnchorChoice("", func(a *lesson.Anchor) { change(func(z *lesson.Freeze) { z.At = *a }) })
	r.seconds = newCommitEntry(func(text string) {
		s, err := secondsOf(text, leastFreeze, lesson.MaxHold)
		if err != nil {
			f.say(err.Error())
			return
		}
		change(func(z *lesson.Freeze) { z.Length = s })
	})
	r.caption = newCommitEntry(func(text string) { change(func(z *lesson.Freeze) { z.Caption = text }) })
	r.caption.SetPlaceHolder(words.T("Caption while it holds"))
	remove := heard.NewButtonWithIcon("", theme.DeleteIcon(), func() {
		f.set(words.T("delete a freeze"), func(t *lesson.Take) {
			if i < len(t.Freezes) {
				t.Freezes = slices.Delete(slices.Clone(t.Freezes), i, i+1)
			}
		})
	}).Says(func() string { return words.T("Deletes this freeze") })
	first := container.NewBorder(nil, nil, widget.NewLabel(words.T("Freeze")), container.NewHBox(inWidth(58, r.seconds), widget.NewLabel("s"), remove), r.at.Dropdown)
	r.box = container.NewVBox(first, r.caption)
	return r
}

// leastFreeze is the shortest freeze that can be typed.
const leastFreeze = 0.1

func (r *freezeRow) refresh(p lesson.Play, z lesson.Freeze) {
	r.at.show(p, &z.At)
	r.seconds.show(secondsText(z.Length))
	r.caption.show(z.Caption)
}
