package photopage

import (
	"fyne.io/fyne/v2"

	"homeside/app/ring"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/game"
	"homeside/model/homography"
	"homeside/words"
)

// feet are those of a player for whom the keys look for a place on the ground.
type feet struct {
	player int     // among game.Players
	x, y   float64 // in the photo's pixels
}

// TakeKeys gives the keys to the photo.
func (p *Page) TakeKeys() { ring.Take(p.view) }

// Next chooses what the keys move: the points one after the other, then, where the
// points make a map, the players; by -1 the other way round.
func (p *Page) Next(by int) {
	at := p.session.Photo()
	if at == nil {
		return
	}
	points, all, now := len(at.Points), len(at.Points), p.view.chosen
	if p.ready() {
		all += len(game.Players)
	}
	if f := p.view.feet; f != nil {
		now = points + f.player
	}
	if now = ((now+by)%all + all) % all; now < points {
		p.Point(now)
	} else {
		p.seek(now - points)
	}
}

// Point chooses a point, if there is such a one.
func (p *Page) Point(i int) {
	if at := p.session.Photo(); at == nil || i >= len(at.Points) {
		return
	}
	p.view.chosen, p.view.feet, p.view.close = i, nil, true
	p.Refresh()
}

// seek begins to look for a place for a player: where it stands now or, if the
// picture does not show that, in its middle.
func (p *Page) seek(player int) {
	v := p.view
	f := &feet{player: player, x: float64(v.photo.Width) / 2, y: float64(v.photo.Height) / 2}
	r, m, err := p.session.Current(), homography.Map{}, error(nil)
	if m, err = p.session.PhotoMap(); err == nil && r != nil {
		place := r.At(p.session.Now()).Players[game.Players[player]].Drawn.Place
		if px, ok := m.ToPx(place); ok && px.X >= 0 && px.Y >= 0 && px.X <= float64(v.photo.Width) && px.Y <= float64(v.photo.Height) {
			f.x, f.y = px.X, px.Y
		}
	}
	v.feet, v.close = f, true
	p.who.SetSelectedIndex(player)
	p.Refresh()
}

// Move moves what is chosen by pixels of the photo: a point at once, a player's
// feet until Put.
func (p *Page) Move(right, down float64) {
	at, v := p.session.Photo(), p.view
	if at == nil || v.photo.Image == nil {
		return
	}
	v.close = true
	if f := v.feet; f != nil {
		f.x, f.y = min(max(f.x+right, 0), float64(at.Width)), min(max(f.y+down, 0), float64(at.Height))
		v.Refresh()
	} else if v.chosen < len(at.Points) {
		q := at.Points[v.chosen]
		p.session.NudgePhotoPoint(v.chosen, within(q.X+right, at.Width), within(q.Y+down, at.Height))
	}
}

// Put puts the player where the keys have found a place, and looks for the next
// one's.
func (p *Page) Put() {
	if f := p.view.feet; f != nil {
		p.place(f.x, f.y)
		p.seek(p.who.SelectedIndex())
	}
}

// sign is the mark of the feet, like that of a point, with the player's name.
func (v *view) sign() compose.PhotoPoint {
	name := v.session.Lesson().NameOf(game.Players[v.feet.player])
	return compose.PhotoPoint{At: v.toView(v.feet.x, v.feet.y), Chosen: true, Name: name}
}

// closeUp is the place of the photo to show larger, if there is one.
func (v *view) closeUp() (x, y float64, ok bool) {
	at := v.session.Photo()
	switch {
	case at == nil || v.photo.Image == nil || !v.drag && !v.close:
		return 0, 0, false
	case v.feet != nil:
		return v.feet.x, v.feet.y, true
	case v.chosen < len(at.Points):
		return at.Points[v.chosen].X, at.Points[v.chosen].Y, true
	}
	return 0, 0, false
}

// helpsKeys says what the keys do with the player that is chosen.
func (p *Page) helpsKeys() string {
	return words.T("The arrow keys move the mark to where the feet of %s are, with Shift 10 pixels; Enter puts the player there.", p.session.Lesson().NameOf(game.Players[p.view.feet.player]))
}

// OnFeet is where the mark of the feet is in the window, in device pixels.
func (p *Page) onFeet() (px canvas.Px, ok bool) {
	if p.view.feet == nil {
		return canvas.Px{}, false
	}
	corner, k := fyne.CurrentApp().Driver().AbsolutePositionForObject(p.view), p.view.scale()
	at := p.view.sign().At
	return canvas.Px{X: at.X + float64(corner.X)*k, Y: at.Y + float64(corner.Y)*k}, true
}
