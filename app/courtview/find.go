package courtview

import (
	"strconv"

	"fyne.io/fyne/v2"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/pick"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// reach is how far beside a thing, in points, the pointer still takes hold.
const reach = 5

// toPx is a position in the widget in device pixels.
func (v *View) toPx(p fyne.Position) canvas.Px {
	k := v.scale(v.layout.Width)
	return canvas.Px{X: float64(p.X) * k, Y: float64(p.Y) * k}
}

// toCourt is the point of the court under the pointer, or under the feet of the
// player it holds.
func (v *View) toCourt(p fyne.Position) court.Point {
	px := v.toPx(p)
	return v.layout.Court.ToCourt(canvas.Px{X: px.X + v.hold.X, Y: px.Y + v.hold.Y})
}

// feetFrom is from a pixel where a player is held to where the player stands: in
// perspective the court seen beside a head is far behind it. From straight above
// a player is moved by the way the pointer goes on the court.
func (v *View) feetFrom(px canvas.Px, at court.Point) canvas.Px {
	if !v.layout.Court.Lens.On() {
		return canvas.Px{}
	}
	feet := v.layout.Court.ToPx(at)
	return canvas.Px{X: feet.X - px.X, Y: feet.Y - px.Y}
}

// partAt is the part of the play under a position; nothing where there is none.
// Handles, players and marks lie over runs and bounces; these lie over a zone or
// a highlight, which would else hide all that is in it.
func (v *View) partAt(at fyne.Position) edit.Part {
	if v.session.Current() == nil || v.frames == nil {
		return edit.Part{}
	}
	a := v.pick(v.moving(), at)
	if a.Kind != edit.NoPart && !v.isArea(a) {
		return a
	}
	if under := v.pick(v.still, at); under.Kind != edit.NoPart {
		return under
	}
	return a
}

// pick is the topmost part that a scene shows at a position.
func (v *View) pick(s *canvas.Scene, at fyne.Position) edit.Part {
	id, _ := pick.At(s, v.toPx(at), reach*v.layout.PxPerPoint, func(id string) bool {
		_, ok := v.picture.PartOfShape(id)
		return ok
	})
	a, _ := v.picture.PartOfShape(id)
	return a
}

// isArea says whether a part is a mark that covers a stretch of the court.
func (v *View) isArea(a edit.Part) bool {
	p, ok := v.session.Play()
	if !ok || a.Kind != edit.MarkPart || !a.In(p) {
		return false
	}
	k := p.Marks[a.Index].Kind
	return k == lesson.ZoneMark || k == lesson.HighlightMark
}

// moving is what is drawn over the still part at the moment shown.
func (v *View) moving() *canvas.Scene {
	scene := v.picture.MovingIn(v.layout, v.session.Now())
	v.picture.Grips(scene, v.grips(), v.session.Now())
	return scene
}

// grips are the handles to draw: none while a play runs.
func (v *View) grips() compose.Grips {
	if v.session.Playing() {
		return compose.Grips{}
	}
	h := compose.Grips{Picked: v.session.Picked(), Hover: v.hover}
	if r, ok := v.hand.Band(); ok {
		h.Band = &r
	}
	for _, g := range v.hand.Guides() {
		h.Guides = append(h.Guides, compose.Guide{From: g.From, To: g.To})
	}
	return h
}

// addHands adds handles and the read-outs of what is being dragged.
func (v *View) addHands(s *canvas.Scene) {
	v.picture.Grips(s, v.grips(), v.session.Now())
	if a, at, ok := v.hand.Moving(); ok && a.Kind != edit.BendPart && a.Kind != edit.FacingPart {
		v.picture.MeasureAt(s, v.hand.Measured(), at)
	}
}

// onApex says whether a pixel is on the apex handle.
func (v *View) onApex(px canvas.Px) bool {
	r := v.session.Current()
	if r == nil || v.layout.RiseTop <= 0 {
		return false
	}
	scene := v.picture.MovingIn(v.layout, v.session.Now())
	_, ok := pick.At(scene, px, reach*v.layout.PxPerPoint, func(id string) bool { return id == compose.ApexHandle })
	return ok
}

// bodyHigh is the height at which a figure that stands is taken hold of; from
// straight above it does not show.
const bodyHigh units.Feet = 3.6

// Pointer is where in the window the pointer was last seen over the view, in the
// toolkit's units.
func (v *View) Pointer() fyne.Position {
	return fyne.CurrentApp().Driver().AbsolutePositionForObject(v).Add(v.pointer)
}

// OnScreen is where things are in the window, in device pixels: each player by
// name, the apex handle as "apex", every aim as "aim0" and so on, the middles of
// runs as "bend.near1.0" with the number of the run, marks as "mark0", and two
// points of the court, "origin" and "corner", for its scale.
func (v *View) OnScreen() map[string]canvas.Px {
	out := map[string]canvas.Px{}
	r := v.session.Current()
	if r == nil {
		return out
	}
	corner := fyne.CurrentApp().Driver().AbsolutePositionForObject(v)
	k := v.scale(v.layout.Width)
	put := func(name string, px canvas.Px) {
		out[name] = canvas.Px{X: px.X + float64(corner.X)*k, Y: px.Y + float64(corner.Y)*k}
	}
	on := func(name string, p court.Point) { put(name, v.layout.Court.ToPx(p)) }
	for id, p := range r.At(v.session.Now()).Players {
		put(game.Player(id).String(), v.layout.Court.VecToPx(canvas.Above(p.Drawn.Place, bodyHigh)))
		for i, run := range r.Tracks[id].Runs {
			from, to := run.Way.Ends()
			on("bend."+game.Player(id).String()+"."+strconv.Itoa(i), from.Add(to).Times(0.25).Add(run.Way.Handle().Times(0.5)))
		}
	}
	for i, s := range r.Play.Shots {
		on("aim"+strconv.Itoa(i), s.Aim)
	}
	for i, m := range r.Play.Marks {
		on("mark"+strconv.Itoa(i), m.Place)
	}
	on("origin", court.Point{})
	on("corner", court.Bounds.Max)
	put("apex", v.layout.ApexPx(r, r.ShotAt(v.session.Now())))
	return out
}

// Way is the way on the court that goes right and up on the screen, a unit long
// for a way of one: along an axis of the court.
func (v *View) Way(right, up float64) court.Point {
	o := v.layout.Court.ToCourt(canvas.Px{})
	d := v.layout.Court.ToCourt(canvas.Px{X: right, Y: -up}).Sub(o)
	if d.X*d.X > d.Y*d.Y {
		d.Y = 0
	} else {
		d.X = 0
	}
	d, _ = d.Unit()
	return d
}
