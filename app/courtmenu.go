package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// courtMenu shows what can be done with a part of the play, at a place of the
// window.
func (e *Editor) courtMenu(at fyne.Position, a edit.Part, p court.Point) {
	r := e.session.Current()
	if r == nil || e.win.Canvas().Overlays().Top() != nil {
		return
	}
	e.session.Pause()
	var items []*fyne.MenuItem
	switch a.Kind {
	case edit.PlayerPart, edit.FacingPart:
		items = e.playerItems(r, a.Player)
	case edit.KeyframePart:
		items = e.keyframeItems(r, a)
	case edit.RunPart, edit.BendPart:
		items = e.runItems(r, a)
	case edit.AimPart:
		items = e.shotItems(r, a.Index)
	case edit.MarkPart, edit.TipPart:
		items = e.markItems(a.Index)
	default:
		items = e.emptyItems()
	}
	menu := widget.NewPopUpMenu(fyne.NewMenu("", items...), e.win.Canvas())
	menu.ShowAtPosition(at)
	e.trace.say("menu %s", partNames[a.Kind])
	for i, m := range items {
		e.trace.say("item %q %v %d", m.Label, m.Disabled, i)
	}
}

// partNames name the parts in the trace.
var partNames = map[edit.PartKind]string{
	edit.NoPart: "court", edit.PlayerPart: "player", edit.FacingPart: "player", edit.KeyframePart: "keyframe", edit.RunPart: "run",
	edit.BendPart: "run", edit.AimPart: "shot", edit.MarkPart: "mark", edit.TipPart: "mark",
}

// unless is an item that is greyed out.
func unless(off bool, m *fyne.MenuItem) *fyne.MenuItem {
	m.Disabled = off
	return m
}

func (e *Editor) seek(t units.Seconds) func() { return func() { e.session.Seek(t) } }

func (e *Editor) playerItems(r *rally.Rally, id game.Player) []*fyne.MenuItem {
	now, name := e.session.Now(), e.session.Lesson().NameOf(id)
	_, here := session.StopAt(r, id, now)
	ball := r.BallAt(now).Ground()
	return []*fyne.MenuItem{
		unless(here, e.item(words.T("Add a place here, now"), func() { e.addPlace(id, now) }, nil)),
		unless(!here, e.item(words.T("Delete the place here"), e.deletePicked, nil)),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Face the net"), func() { e.face(id, id.Team().Facing()) }, nil),
		e.item(words.T("Face the ball"), func() {
			if d, ok := court.FacingTo(r.At(now).Players[id].Drawn.Place, ball); ok {
				e.face(id, d)
			}
		}, nil),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Copy %s's places", name), func() { e.copyParts(e.placesOf(id)) }, nil),
		e.pasteItem(),
	}
}

// placesOf are all keyframes of a player.
func (e *Editor) placesOf(id game.Player) []edit.Part {
	p, _ := e.session.Play()
	parts := make([]edit.Part, len(p.Tracks[id]))
	for i := range parts {
		parts[i] = edit.Part{Kind: edit.KeyframePart, Player: id, Index: i}
	}
	return parts
}

func (e *Editor) face(id game.Player, d units.Degrees) {
	if g, ok := e.session.Grasp(edit.Part{Kind: edit.FacingPart, Player: id}); ok {
		e.session.Do(words.T("turn %s", e.session.Lesson().NameOf(id)), g.Facing(d))
	}
}

func (e *Editor) keyframeItems(r *rally.Rally, a edit.Part) []*fyne.MenuItem {
	t := r.Tracks[a.Player]
	i := t.StopOf(a.Index)
	if i < 0 {
		return e.emptyItems()
	}
	stop := t.Stops[i]
	return []*fyne.MenuItem{
		e.item(words.T("Show this moment (%s)", words.Seconds(stop.At)), e.seek(stop.At), nil),
		unless(a.Index < 0, e.throughItem(a, stop.Keyframe.Through)),
		fyne.NewMenuItemSeparator(),
		unless(a.Index < 0, e.item(words.T("Copy"), e.copyPicked, nil)),
		unless(a.Index < 0, e.item(words.T("Delete this place"), e.deletePicked, nil)),
	}
}

// throughItem says that a player need not stop at a keyframe.
func (e *Editor) throughItem(a edit.Part, through bool) *fyne.MenuItem {
	m := e.item(words.T("Runs on through it"), func() {
		p, _ := e.session.Play()
		e.session.ReplacePlay(words.T("run through a place"), edit.PassThrough(p, a.Player, a.Index, !through))
	}, nil)
	m.Checked = through
	return m
}

func (e *Editor) runItems(r *rally.Rally, a edit.Part) []*fyne.MenuItem {
	run, ok := session.RunOf(r, a)
	if !ok {
		return e.emptyItems()
	}
	name := e.session.Lesson().NameOf(a.Player)
	return []*fyne.MenuItem{
		unless(run.Way.Bent(), e.item(words.T("Bend to the left"), func() { e.bend(a, run, -1) }, nil)),
		unless(run.Way.Bent(), e.item(words.T("Bend to the right"), func() { e.bend(a, run, 1) }, nil)),
		unless(!run.Way.Bent(), e.item(words.T("Straighten"), func() { e.straighten(a) }, nil)),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Add a place halfway"), func() { e.addPlace(a.Player, (run.From+run.To)/2) }, nil),
		e.item(words.T("Show where it starts (%s)", words.Seconds(run.From)), e.seek(run.From), nil),
		e.item(words.T("Show where it ends (%s)", words.Seconds(run.To)), e.seek(run.To), nil),
		fyne.NewMenuItemSeparator(),
		unless(a.Index < 0, e.item(words.T("Delete this run"), func() {
			e.session.Delete(words.T("delete a run of %s", name), edit.Part{Kind: edit.RunPart, Player: a.Player, Index: a.Index})
		}, nil)),
	}
}

// bendShare is how far beside its line a run is bent from the menu, as a share
// of its length.
const bendShare = 0.2

func (e *Editor) bend(a edit.Part, run rally.Run, right float64) {
	from, to := run.Way.Ends()
	way := to.Sub(from)
	via := from.Toward(to, 0.5).Add(court.Pt(way.Y, -way.X).Times(bendShare * right))
	a.Kind = edit.BendPart
	if g, ok := e.session.Grasp(a); ok {
		e.session.Do(words.T("bend a run of %s", e.session.Lesson().NameOf(a.Player)), g.Bent(via))
	}
}

func (e *Editor) straighten(a edit.Part) {
	a.Kind = edit.BendPart
	if g, ok := e.session.Grasp(a); ok {
		e.session.Do(words.T("straighten a run of %s", e.session.Lesson().NameOf(a.Player)), g.Straight())
	}
}

func (e *Editor) shotItems(r *rally.Rally, i int) []*fyne.MenuItem {
	s, last := r.Strokes[i], len(r.Strokes)-1
	partner := s.By.Partner()
	return []*fyne.MenuItem{
		e.item(words.T("Show the contact (%s)", words.Seconds(s.At)), e.seek(s.At), nil),
		e.item(words.T("Show the bounce (%s)", words.Seconds(s.At+s.Planned.Duration)), e.seek(s.At+s.Planned.Duration), nil),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Aim deep"), func() { e.aim(i, deepAim) }, nil),
		e.item(words.T("Aim short"), func() { e.aim(i, shortAim) }, nil),
		e.item(words.T("Hit by %s", r.NameOf(partner)), func() { e.hitBy(i, partner) }, nil),
		fyne.NewMenuItemSeparator(),
		unless(i < last, e.item(words.T("Add a shot"), e.addShot, nil)),
		unless(i == last, e.item(words.T("Delete the shots after this one"), func() { e.cutShots(i + 1) }, nil)),
		unless(i == 0, e.item(words.T("Delete this shot and those after it"), func() { e.cutShots(i) }, nil)),
	}
}

// addShot adds the shot that usually follows and shows it.
func (e *Editor) addShot() {
	e.court.Cancel()
	if !e.session.AddShot(words.T("add a shot")) {
		e.say(words.T("This play has no room for another shot."))
	}
}

func (e *Editor) cutShots(n int) {
	e.court.Cancel()
	e.session.CutShots(words.T("delete shots"), n)
}

func (e *Editor) hitBy(i int, by game.Player) {
	p, _ := e.session.Play()
	e.session.ReplacePlay(words.T("change who hits"), edit.HitBy(p, i, by))
}

// How far from the net the menu aims: deep is 3 ft inside the baseline, short in
// the middle of the kitchen (our choice).
const (
	deepAim  = court.Baseline - 3
	shortAim = court.Kitchen / 2
)

// aim moves a shot's aim along the court.
func (e *Editor) aim(i int, depth units.Feet) {
	p, _ := e.session.Play()
	to := p.Shots[i].Aim
	to.Y = depth * p.Shots[i].By.Team().Other().Sign()
	e.session.ReplacePlay(words.AimStep(i), edit.AimAt(p, i, to))
}

func (e *Editor) markItems(i int) []*fyne.MenuItem {
	return []*fyne.MenuItem{
		e.item(words.T("Edit this mark…"), func() { e.askMark(i) }, nil),
		e.item(words.T("Copy"), e.copyPicked, nil),
		e.item(words.T("Delete this mark"), func() {
			e.session.Delete(words.T("delete a mark"), edit.Part{Kind: edit.MarkPart, Index: i})
		}, nil),
	}
}

func (e *Editor) emptyItems() []*fyne.MenuItem {
	items := []*fyne.MenuItem{e.markMenu(), e.pasteItem(), e.item(words.T("Pick all players"), e.pickAll, nil), fyne.NewMenuItemSeparator()}
	items = append(items, e.transformItems()...)
	return append(items, fyne.NewMenuItemSeparator(), e.item(words.T("Fit the court"), e.court.Fit, nil))
}
