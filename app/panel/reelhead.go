package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/model/lesson"
	"homeside/model/reel"
	"homeside/words"
)

// head is which reel there is, and how long one is to last.
func (p *Reels) head() fyne.CanvasObject {
	s := p.session
	p.back = p.button("reel-back", words.T("Back to the court"), theme.NavigateBackIcon(), p.Close)
	p.which = NewDropdown(nil, func(string) { s.SelectReel(p.which.SelectedIndex()) })
	p.which.PlaceHolder = words.T("no reels yet")
	p.name = newCommitEntry(func(text string) {
		s.ChangeReel(words.T("rename a reel"), func(r lesson.Reel) lesson.Reel { r.Name = text; return r })
	})
	p.corner = NewDropdown(words.Corners(), func(string) {
		s.ChangeReel(words.T("place the logo"), func(r lesson.Reel) lesson.Reel {
			r.Logo = lesson.Corner(max(p.corner.SelectedIndex(), 0))
			return r
		})
	})
	p.seconds = heard.NewEntry()
	p.seconds.SetText("20")
	p.seconds.OnSubmitted = func(string) { p.fit() }
	p.recipe = NewDropdown(words.Recipes(), nil)
	p.recipe.Selected = p.recipe.Options[0]
	p.named["reel-seconds"], p.named["reel-recipe"], p.named["reel-which"] = p.seconds, p.recipe, p.which
	p.ofReel = []fyne.CanvasObject{inWidth(230, p.name), p.button("reel-delete", words.T("Delete the reel"), theme.DeleteIcon(), s.DeleteReel),
		Roomy(p.corner), p.button("reel-logo", words.T("Logo…"), theme.MediaPhotoIcon(), func() { invoke(p.events.Logo) })}
	first := []fyne.CanvasObject{p.back, inWidth(230, p.which), p.button("reel-new", words.T("New reel"), theme.ContentAddIcon(), s.AddReel),
		container.NewGridWrap(fyne.NewSize(1, 1), p.pulse)}
	p.export = p.button("reel-export", words.T("Export…"), theme.DocumentSaveIcon(), func() { invoke(p.events.Export) })
	second := container.New(&flow{}, beside(words.T("Make one of the play shown that lasts")), inWidth(60, p.seconds), beside(words.T("seconds:")),
		Roomy(p.recipe), p.button("reel-fit", words.T("Fit"), theme.ConfirmIcon(), p.fit), p.export)
	return container.NewVBox(container.New(&flow{}, append(first, p.ofReel...)...), second, p.line, widget.NewSeparator())
}

// fit makes the reel anew so that it lasts as long as asked for.
func (p *Reels) fit() {
	n, err := secondsOf(p.seconds.Text, 1, 3600)
	if err != nil {
		p.Say(err.Error())
		return
	}
	left, err := p.session.FitReel(n, reel.FitOptions{Recipe: reel.Recipe(max(p.recipe.SelectedIndex(), 0))})
	switch {
	case err != nil:
		p.Say(words.FitRefused(err))
	case len(left) > 0:
		p.Say(words.FitLeft(left))
	default:
		p.Say(words.T("The reel lasts %s.", words.ClipClock(p.session.SolvedReel().Length())))
	}
}
