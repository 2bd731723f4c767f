package gesture

import (
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// Keys are held while the pointer moves.
type Keys struct {
	Add  bool // adds to what is picked
	Free bool // suspends snapping
}

// Hand is what the pointer does on the court: it picks, moves what is picked,
// bends runs, turns players, draws a band round several and places new marks.
// The zero value waits for Press.
type Hand struct {
	Snapping Snapping
	session  *session.Session
	held     edit.Part // what was pressed
	grasp    session.Grasp
	pull     Pull
	keys     Keys
	guides   []Guide
	at       court.Point // the place being dragged, snapped
	band     band
	mark     *lesson.Mark // that is being placed
}

// Press takes hold of what is under the pointer at p, or starts a band where
// there is nothing.
func (h *Hand) Press(s *session.Session, a edit.Part, p court.Point, k Keys) {
	h.Cancel()
	h.session, h.held, h.keys = s, a, k
	switch a.Kind {
	case edit.NoPart:
		s.Pause()
		h.band = band{down: true, from: p, to: p}
	case edit.BendPart:
		h.press(p, h.bend, a)
	case edit.FacingPart:
		h.press(p, h.face, a)
	case edit.TipPart:
		h.press(p, h.tip, a)
	default:
		h.pressPart(s, a, p, k)
	}
}

// pressPart picks a part and starts to move all that is picked with it.
func (h *Hand) pressPart(s *session.Session, a edit.Part, p court.Point, k Keys) {
	if k.Add {
		s.PickAlso(a)
		return
	}
	if !s.IsPicked(a) {
		s.Pick(a)
	}
	h.press(p, h.move(p), append([]edit.Part{a}, s.Picked()...)...)
}

// press grasps parts and shows what becomes of them.
func (h *Hand) press(p court.Point, show func(court.Point) lesson.Lesson, parts ...edit.Part) {
	g, ok := h.session.Grasp(parts...)
	if !ok {
		return
	}
	h.grasp = g
	h.pull.Press(h.session, p, show)
}

// move shows what is held moved with the pointer, which took hold at p. What was
// pressed snaps, the others keep their places beside it.
func (h *Hand) move(p court.Point) func(court.Point) lesson.Lesson {
	return func(to court.Point) lesson.Lesson {
		start := h.start()
		h.at = start.Add(to.Sub(p))
		h.guides = nil
		if !h.keys.Free {
			h.at, h.guides = h.Snapping.Place(h.at, h.partner())
		}
		return h.grasp.Shifted(h.at.Sub(start))
	}
}

// start is the place of what was pressed before it moved: of a run its end.
func (h *Hand) start() court.Point {
	a, p := h.grasp.Parts()[0], h.grasp.Play()
	switch a.Kind {
	case edit.AimPart:
		return p.Shots[a.Index].Aim
	case edit.MarkPart:
		return p.Marks[a.Index].Place
	}
	return p.Tracks[a.Player][a.Index].Place
}

// partner is where the partner of the player held is at the same time; nil for
// what is no player's, and where the partner is held too.
func (h *Hand) partner() *court.Point {
	a := h.grasp.Parts()[0]
	if a.Kind != edit.KeyframePart && a.Kind != edit.RunPart {
		return nil
	}
	for _, other := range h.grasp.Parts() {
		if other.Kind == edit.KeyframePart && other.Player == a.Player.Partner() {
			return nil
		}
	}
	return new(h.grasp.PlaceOf(a.Player.Partner(), h.grasp.TimeOf(0)))
}

// straightWithin is how near the middle of a straight run its handle is let go
// for the run to become straight.
const straightWithin units.Feet = 0.5

func (h *Hand) bend(to court.Point) lesson.Lesson {
	h.at = to
	a := h.grasp.Parts()[0]
	track := h.grasp.Play().Tracks[a.Player]
	from := h.startOfRun(a)
	if middle := from.Toward(track[a.Index].Place, 0.5); !h.keys.Free && middle.Distance(to) < straightWithin {
		h.at = middle
		return h.grasp.Straight()
	}
	return h.grasp.Bent(to)
}

// startOfRun is where the run to a keyframe starts.
func (h *Hand) startOfRun(a edit.Part) court.Point {
	if run, ok := session.RunOf(h.session.Current(), h.held); ok {
		from, _ := run.Way.Ends()
		return from
	}
	return h.grasp.Play().Tracks[a.Player][max(a.Index-1, 0)].Place
}

func (h *Hand) face(to court.Point) lesson.Lesson {
	a := h.grasp.Parts()[0]
	k := h.grasp.Play().Tracks[a.Player][a.Index]
	d, ok := court.FacingTo(k.Place, to)
	if !ok {
		d = k.Facing
	}
	if !h.keys.Free {
		d = wholeTurn(d)
	}
	h.at = k.Place
	return h.grasp.Facing(d)
}

// wholeTurn is a facing to whole steps of 5 degrees.
func wholeTurn(d units.Degrees) units.Degrees {
	const step = 5
	return (units.Degrees(int(d.Normal()/step+0.5)) * step).Normal()
}

func (h *Hand) tip(to court.Point) lesson.Lesson {
	h.snapTo(to)
	return h.grasp.Tip(h.at)
}

// snapTo takes a place as it snaps to lines and half feet.
func (h *Hand) snapTo(p court.Point) {
	h.at, h.guides = p, nil
	if !h.keys.Free {
		h.at, h.guides = h.Snapping.Place(p, nil)
	}
}

// Place starts a new mark with the pointer at p: one with a tip is dragged out,
// any other stands where it is let go.
func (h *Hand) Place(s *session.Session, m lesson.Mark, p court.Point, k Keys) {
	h.Cancel()
	h.session, h.keys = s, k
	h.snapTo(p)
	m.Place, m.Tip = h.at, h.at
	h.mark = &m
	s.Pause()
	s.Preview(s.WithMark(m))
}

// Placing says whether a new mark is under the hand.
func (h *Hand) Placing() bool { return h.mark != nil }

// Move follows the pointer.
func (h *Hand) Move(p court.Point, k Keys) {
	h.keys = k
	switch {
	case h.mark != nil && p.Finite():
		h.snapTo(p)
		if h.mark.Tip = h.at; !h.mark.Kind.HasTip() {
			h.mark.Place = h.at
		}
		h.session.Preview(h.session.WithMark(*h.mark))
	case h.band.down && p.Finite():
		h.band.to = p
	default:
		h.pull.Move(p)
	}
}

// Release ends the gesture: a move, bend or turn is one step, a band picks what
// it holds, a click picks what was pressed.
func (h *Hand) Release() {
	h.pull.end()
	switch {
	case h.mark != nil:
		h.releaseMark()
	case h.band.down:
		h.releaseBand()
	case h.pull.Moving():
		picked := h.session.Picked()
		g := h.grasp
		h.pull.Release(h.name())
		h.session.Repick(picked, g)
	case h.pull.Down():
		h.pull.Release("")
		h.click()
	}
	h.reset()
}

// click on one of several that are picked picks it alone.
func (h *Hand) click() {
	switch h.held.Kind {
	case edit.BendPart, edit.FacingPart, edit.TipPart:
	default:
		h.session.Pick(h.held)
	}
}

func (h *Hand) reset() { *h = Hand{Snapping: h.Snapping} }

// leastTip is the least length of what is dragged out: a click gives usualTip.
const (
	leastTip units.Feet = 0.5
	usualTip units.Feet = 4
)

// releaseMark leaves the new mark as one step and picks it. A press without a
// drag gives a mark with a tip its usual size.
func (h *Hand) releaseMark() {
	m := *h.mark
	if m.Kind.HasTip() && m.Place.Distance(m.Tip) < leastTip {
		m.Tip = m.Place.Add(court.Pt(usualTip, 0))
	}
	h.session.Cancel()
	h.session.AddMark(words.AddMark(m.Kind), m)
}

// name is what the step is called.
func (h *Hand) name() string {
	who := h.session.Lesson().NameOf(h.held.Player)
	parts := h.grasp.Parts()
	switch {
	case h.held.Kind == edit.BendPart:
		return words.T("bend a run of %s", who)
	case h.held.Kind == edit.FacingPart:
		return words.T("turn %s", who)
	case h.held.Kind == edit.TipPart:
		return words.T("change a mark")
	case len(parts) > 1:
		return words.T("move %d things", len(parts))
	}
	return NameOfMove(h.session.Lesson(), h.held)
}

// NameOfMove is what a step is called that moves one part.
func NameOfMove(l lesson.Lesson, a edit.Part) string {
	switch a.Kind {
	case edit.AimPart:
		return words.AimStep(a.Index)
	case edit.MarkPart:
		return words.T("move a mark")
	case edit.RunPart:
		return words.T("move a run of %s", l.NameOf(a.Player))
	}
	return words.T("move %s", l.NameOf(a.Player))
}

// Down says whether a gesture is under way.
func (h *Hand) Down() bool { return h.pull.Down() || h.band.down || h.mark != nil }

// Moving is what is being dragged, and where to; false before the pointer moves
// and for a band. A new mark is a MarkPart.
func (h *Hand) Moving() (edit.Part, court.Point, bool) {
	if h.mark != nil {
		return edit.Part{Kind: edit.MarkPart}, h.at, true
	}
	return h.held, h.at, h.pull.Moving()
}

// Guides show what the place being dragged has snapped to.
func (h *Hand) Guides() []Guide { return h.guides }

// Cancel ends the gesture and puts everything back.
func (h *Hand) Cancel() {
	if h.mark != nil {
		h.session.Cancel()
	}
	h.pull.Cancel()
	h.reset()
}

// team is the end whose lines a place is measured from.
func team(a edit.Part, at court.Point) court.End {
	switch a.Kind {
	case edit.PlayerPart, edit.KeyframePart, edit.RunPart:
		return a.Player.Team()
	}
	if at.Y > 0 {
		return court.Far
	}
	return court.Near
}

// Measured is the end whose lines the place being dragged is measured from.
func (h *Hand) Measured() court.End { return team(h.held, h.at) }
