package photopage

import (
	"homeside/model/game"
	"homeside/model/units"
	"homeside/words"
)

// helps says what to do next.
func (p *Page) helps() string {
	at := p.session.Photo()
	switch {
	case at == nil:
		return words.T("Choose a picture of a court, or drop one onto the window. Best is one from high behind the baseline.")
	case p.view.photo.Image == nil:
		return words.T("The picture %s is not there. Its points are kept: put it back beside the lesson, or choose it again.", p.missing)
	case !p.ready():
		return words.T("Drag each numbered mark onto its point of the court.")
	case p.view.feet != nil:
		return p.helpsKeys()
	}
	return words.T("Drag the marks until the yellow lines lie on the court's. Then click where each player's feet are.") + " " + words.T("By keys: N goes from mark to mark and on to the players, the arrows move.")
}

// fits says how well the points fit, or why they do not.
func (p *Page) fits() string {
	m, err := p.session.PhotoMap()
	if err != nil {
		return words.PhotoReason(err)
	}
	worst := p.points.worst(m)
	return words.Fits(len(p.session.Photo().Placed()), worst)
}

// off is how far the place that a player is given lies from where the legs can be by
// then, before it is worth a word.
const off units.Feet = 0.5

// when says of which moment the places are, and who cannot be there by then.
func (p *Page) when() string {
	r := p.session.Current()
	if r == nil {
		return ""
	}
	now := p.session.Now()
	said := words.T("The places are those of the moment shown, %s.", words.Seconds(now))
	for _, id := range game.Players {
		if pose := r.At(now).Players[id]; pose.Drawn.Place.Distance(pose.Run.Place) > off {
			said += " " + words.T("%s cannot be at the place given by then: the ring is where the legs get to.", p.session.Lesson().NameOf(id))
		}
	}
	return said
}

// ready says whether the play can be drawn over the picture.
func (p *Page) ready() bool {
	return p.hindered() == ""
}

// hindered is why nothing can be exported now; "" where something can.
func (p *Page) hindered() string {
	_, err := p.session.PhotoMap()
	switch {
	case p.view.photo.Image == nil:
		return words.T("The picture is not there.")
	case err != nil:
		return words.PhotoReason(err)
	case p.session.Current() == nil:
		return words.SentenceOf(words.T("this lesson has no plays"))
	}
	return ""
}

// hint shows a button's tip in place of how well the points fit, which "" shows again.
func (p *Page) hint(tip string) {
	if tip == "" && p.session.Photo() != nil {
		tip = p.fits()
	}
	p.fit.SetText(tip)
}
