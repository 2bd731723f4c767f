package compose

import (
	"fmt"
	"strconv"
	"strings"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Grips are the handles laid over a picture for a hand, and what else shows
// what it does. The zero value draws nothing.
type Grips struct {
	Picked []edit.Part
	Hover  edit.Part   // under the pointer
	Band   *court.Rect // drawn round what is to be picked
	Guides []Guide
}

// Guide is a line that shows what a place has snapped to.
type Guide struct{ From, To court.Point }

// Sizes of the handles in points.
const (
	gripRadius   canvas.Points = 4
	ringRadius   canvas.Points = 15 // round a player who is picked
	faceDistance canvas.Points = 25 // from the player to the handle that turns
)

// gripPrefix begins the IDs of handles.
const gripPrefix = "grip."

// gripNames are the handles' words in their IDs.
var gripNames = map[edit.PartKind]string{
	edit.KeyframePart: "keyframe", edit.BendPart: "bend", edit.FacingPart: "face", edit.AimPart: "aim", edit.TipPart: "tip",
}

// gripID is the ID of a part's handle.
func gripID(a edit.Part) string {
	return fmt.Sprintf("%s%s.%v.%d", gripPrefix, gripNames[a.Kind], a.Player, a.Index)
}

// PartOfShape is the part of the play that a shape of the picture shows or
// holds; false for shapes that a hand has no use for.
func (p Picture) PartOfShape(id string) (edit.Part, bool) {
	if who, ok := PlayerOfShape(id); ok {
		return edit.Part{Kind: edit.PlayerPart, Player: who}, true
	}
	words := strings.Split(id, ".")
	switch {
	case words[0] == "mark" && len(words) > 1:
		i, err := strconv.Atoi(words[1])
		return edit.Part{Kind: edit.MarkPart, Index: i}, err == nil
	case words[0] == "bounce" && len(words) == 2:
		i, err := lesson.ParseShot(words[1])
		return edit.Part{Kind: edit.AimPart, Index: i}, err == nil
	case words[0] == "run" && len(words) == 3:
		return p.runPart(words[1], words[2])
	case words[0] == "grip" && len(words) == 4:
		return gripPart(words)
	}
	return edit.Part{}, false
}

func gripPart(words []string) (edit.Part, bool) {
	who, err := game.ParsePlayer(words[2])
	i, bad := strconv.Atoi(words[3])
	for kind, name := range gripNames {
		if name == words[1] {
			return edit.Part{Kind: kind, Player: who, Index: i}, err == nil && bad == nil
		}
	}
	return edit.Part{}, false
}

// runPart is the run that a shape draws: run i of a player's track.
func (p Picture) runPart(player, number string) (edit.Part, bool) {
	who, err := game.ParsePlayer(player)
	i, bad := strconv.Atoi(number)
	if err != nil || bad != nil || i < 0 || i+1 >= len(p.Rally.Tracks[who].Stops) {
		return edit.Part{}, false
	}
	return edit.Part{Kind: edit.RunPart, Player: who, Index: p.Rally.Tracks[who].Stops[i+1].Number()}, true
}

// Grips adds handles to a scene of a moment: of the players, runs and marks that
// are picked, and of what is under the pointer.
func (p Picture) Grips(s *canvas.Scene, h Grips, t units.Seconds) {
	onCourt(s, func(g *canvas.Panel) {
		g2 := gripper{p, g, p.Rally.At(t), s.PxPerPoint, map[string]bool{}}
		for _, guide := range h.Guides {
			g2.guide(guide)
		}
		for _, a := range h.Picked {
			g2.picked(a)
		}
		g2.hover(h.Hover)
		if h.Band != nil {
			g2.band(*h.Band)
		}
	})
}

// gripper draws handles, each once.
type gripper struct {
	p Picture
	g *canvas.Panel
	f rally.Frame

	pxPerPoint float64
	drawn      map[string]bool
}

// add adds a shape unless one with its ID is there.
func (g gripper) add(s canvas.Shape) {
	if !g.drawn[s.ID] {
		g.drawn[s.ID] = true
		s.Layer = canvas.Labels
		g.g.Add(s)
	}
}

func (g gripper) style() canvas.Style {
	return canvas.Style{Fill: look.Sky, Stroke: g.p.look().Ink, Width: canvas.Pts(look.Outline)}
}

// accent is a colour that stands out from the court in every look.
func (g gripper) accent() colour { return g.p.look().Teams[court.Near].Run }

// picked draws what shows that a part is picked, and its handles.
func (g gripper) picked(a edit.Part) {
	switch a.Kind {
	case edit.PlayerPart:
		g.ring(a.Player, true)
		g.facing(a.Player)
		g.track(a.Player)
	case edit.KeyframePart:
		g.track(a.Player)
		g.keyframe(a.Player, a.Index, true)
	case edit.RunPart:
		g.glow(a)
		g.track(a.Player)
	case edit.AimPart:
		g.aim(a.Index)
	case edit.MarkPart:
		g.mark(a.Index, true)
	}
}

// hover draws what shows that a part is under the pointer.
func (g gripper) hover(a edit.Part) {
	switch a.Kind {
	case edit.PlayerPart, edit.FacingPart:
		g.ring(a.Player, false)
		g.facing(a.Player)
	case edit.KeyframePart:
		g.keyframe(a.Player, a.Index, true)
	case edit.RunPart, edit.BendPart:
		g.glow(a)
		g.bend(a.Player, a.Index)
	case edit.AimPart:
		g.aim(a.Index)
	case edit.MarkPart, edit.TipPart:
		g.mark(a.Index, false)
	}
}

// ring is a circle round a player: full for one who is picked.
func (g gripper) ring(id game.Player, picked bool) {
	style := canvas.Style{Stroke: g.accent(), Width: canvas.Pts(2.2)}
	if !picked {
		style.Width = canvas.Pts(1.2)
	}
	g.add(canvas.Shape{
		ID: PlayerShape(id) + ".picked", Label: words.T("%s is picked", g.p.Rally.NameOf(id)),
		Path: canvas.Circle(canvas.On(g.f.Players[id].Drawn.Place), canvas.Pts(ringRadius)), Style: style,
	})
}

// facing is the handle ahead of a player that turns them.
func (g gripper) facing(id game.Player) {
	pose := g.f.Players[id].Drawn
	at := canvas.On(pose.Place).Along(court.Direction(pose.Facing), canvas.Pts(faceDistance))
	g.add(canvas.Shape{
		ID: gripID(edit.Part{Kind: edit.FacingPart, Player: id}), Label: words.T("drag to turn %s", g.p.Rally.NameOf(id)),
		Path: canvas.Circle(at, canvas.Pts(gripRadius)), Style: g.style(),
	})
}

// track draws the handles of a player's keyframes and runs.
func (g gripper) track(id game.Player) {
	t := g.p.Rally.Tracks[id]
	for i, stop := range t.Stops {
		g.keyframe(id, stop.Number(), false)
		if i > 0 {
			g.bend(id, stop.Number())
		}
	}
}

// atPlayer is how near a player, in points, other handles are left out: the
// player is the handle there. Drawn larger, the court keeps them apart.
const atPlayer canvas.Points = 13

// covered says whether a place lies under a player's disc.
func (g gripper) covered(id game.Player, at court.Point) bool {
	d := at.Distance(g.f.Players[id].Drawn.Place)
	return float64(d)*g.g.View.PxPerFoot < float64(atPlayer)*g.pxPerPoint
}

// keyframe is a square at a keyframe's place, filled where it is picked; a place
// that a hit implies is a smaller one.
func (g gripper) keyframe(id game.Player, number int, picked bool) {
	t := g.p.Rally.Tracks[id]
	i := t.StopOf(number)
	if i < 0 || !picked && g.covered(id, t.Stops[i].Keyframe.Place) {
		return
	}
	a := edit.Part{Kind: edit.KeyframePart, Player: id, Index: number}
	half, style := gripRadius, g.style()
	if !picked {
		style.Fill = g.p.look().Plate
	}
	if number < 0 {
		half *= 0.75
	}
	name := gripID(a)
	if picked {
		g.remove(name)
	}
	g.add(canvas.Shape{
		ID: name, Label: words.T("a place of %s", g.p.Rally.NameOf(id)),
		Path: boxAbout(canvas.On(t.Stops[i].Keyframe.Place), -half, -half, half, half), Style: style,
	})
}

// remove takes a handle out that is to be drawn another way.
func (g gripper) remove(id string) {
	if !g.drawn[id] {
		return
	}
	delete(g.drawn, id)
	for i := range g.g.Shapes {
		if g.g.Shapes[i].ID == id {
			g.g.Shapes = append(g.g.Shapes[:i], g.g.Shapes[i+1:]...)
			return
		}
	}
}

// bend is the round handle in the middle of a run.
func (g gripper) bend(id game.Player, number int) {
	run, ok := g.run(id, number)
	if !ok {
		return
	}
	from, to := run.Way.Ends()
	middle := from.Add(to).Times(0.25).Add(run.Way.Handle().Times(0.5))
	if g.covered(id, middle) {
		return
	}
	style := g.style()
	if !run.Way.Bent() {
		style.Fill = g.p.look().Plate
	}
	g.add(canvas.Shape{
		ID: gripID(edit.Part{Kind: edit.BendPart, Player: id, Index: number}), Label: words.T("drag to bend the run of %s", g.p.Rally.NameOf(id)),
		Path: canvas.Circle(canvas.On(middle), canvas.Pts(gripRadius)), Style: style,
	})
}

// run is the run to a keyframe, if it is long enough to be drawn.
func (g gripper) run(id game.Player, number int) (rally.Run, bool) {
	t := g.p.Rally.Tracks[id]
	i := t.StopOf(number)
	if i < 1 || t.Runs[i-1].Way.Length() < shortRun {
		return rally.Run{}, false
	}
	return t.Runs[i-1], true
}

// glow is a broad pale line over a run.
func (g gripper) glow(a edit.Part) {
	run, ok := g.run(a.Player, a.Index)
	if !ok {
		return
	}
	pale := look.Sky
	pale.A = 0x90
	g.add(canvas.Shape{
		ID: fmt.Sprintf("glow.%v.%d", a.Player, a.Index), Path: wayPath(run.Way),
		Style: canvas.Style{Stroke: pale, Width: canvas.Pts(7), Round: true},
	})
}

// aim is a ring with a cross where a shot is meant to land.
func (g gripper) aim(shot int) {
	if shot >= len(g.p.Rally.Play.Shots) {
		return
	}
	at := canvas.On(g.p.Rally.Play.Shots[shot].Aim)
	const r, out = 7, 11
	path := canvas.Circle(at, canvas.Pts(r)).
		Move(at.Shift(-out, 0)).Line(at.Shift(out, 0)).
		Move(at.Shift(0, -out)).Line(at.Shift(0, out))
	g.add(canvas.Shape{
		ID: gripID(edit.Part{Kind: edit.AimPart, Index: shot}), Label: words.OfShot(words.Text("aim of %s: drag to move it"), shot),
		Path: path, Style: canvas.Style{Stroke: g.accent(), Width: canvas.Pts(1.6)},
	})
}

// mark is a dashed outline round a mark and, on one that is picked, the handle
// of its tip.
func (g gripper) mark(i int, picked bool) {
	if i >= len(g.p.Rally.Play.Marks) {
		return
	}
	m := g.p.Rally.Play.Marks[i]
	tip := m.Place
	if m.Kind.HasTip() {
		tip = m.Tip
	}
	r := court.RectOf(m.Place, tip)
	const room = 11
	at := func(x, y feet, right, down canvas.Points) canvas.Pos {
		return canvas.On(court.Pt(x, y)).Along(court.Pt(1, 0), canvas.Pts(right)).Along(court.Pt(0, 1), canvas.Pts(down))
	}
	g.add(canvas.Shape{
		ID: fmt.Sprintf("outline.%d", i), Label: words.T("a mark that is picked"),
		Path: canvas.Path{}.Move(at(r.Min.X, r.Min.Y, -room, -room)).Line(at(r.Max.X, r.Min.Y, room, -room)).
			Line(at(r.Max.X, r.Max.Y, room, room)).Line(at(r.Min.X, r.Max.Y, -room, room)).Close(),
		Style: canvas.Style{Stroke: g.accent(), Width: canvas.Pts(1.2), Dash: []canvas.Points{4, 3}},
	})
	if m.Kind.HasTip() {
		g.add(canvas.Shape{
			ID: gripID(edit.Part{Kind: edit.TipPart, Index: i}), Label: words.T("drag to change the mark"),
			Path: canvas.Circle(canvas.On(m.Tip), canvas.Pts(gripRadius)), Style: g.style(),
		})
	}
}

// guide is a thin dashed line over the court.
func (g gripper) guide(guide Guide) {
	g.add(canvas.Shape{
		ID: fmt.Sprintf("guide.%d", len(g.drawn)), Label: words.T("snapped to this"),
		Path:  canvas.Polyline(guide.From, guide.To),
		Style: canvas.Style{Stroke: g.p.look().Part, Width: canvas.Pts(1.8), Dash: []canvas.Points{6, 3}},
	})
}

func (g gripper) band(r court.Rect) {
	pale := look.Sky
	pale.A = 0x30
	g.add(canvas.Shape{
		ID: "band", Label: words.T("what is in here is picked"),
		Path: canvas.Box(r), Style: canvas.Style{Fill: pale, Stroke: g.accent(), Width: canvas.Pts(1)},
	})
}
