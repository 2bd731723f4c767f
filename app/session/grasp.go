package session

import (
	"slices"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Grasp is parts of the play shown taken hold of: the play as it is saved, with
// a keyframe for everything held that had none. It gives lessons to preview and
// keeps none.
type Grasp struct {
	lesson lesson.Lesson
	index  int
	play   lesson.Play
	parts  []edit.Part // keyframes instead of players
	times  []units.Seconds
	rally  *rally.Rally
}

// Grasp takes hold of parts at the moment shown; false if the play has none of
// them or cannot be solved. A player held gets a keyframe at the moment, a place
// that only follows from a hit becomes a stated one.
func (s *Session) Grasp(parts ...edit.Part) (Grasp, bool) {
	l := s.history.Lesson()
	if s.play >= len(l.Plays) {
		return Grasp{}, false
	}
	r, err := rally.Solve(l, s.play)
	if err != nil {
		return Grasp{}, false
	}
	g := Grasp{lesson: l, index: s.play, play: l.Plays[s.play], rally: r}
	for _, a := range parts {
		g.take(a, s.now)
	}
	return g, len(g.parts) > 0
}

// take adds a part. Keyframes that come in move the numbers of the later ones.
func (g *Grasp) take(a edit.Part, now units.Seconds) {
	if !Exists(g.rally, a) {
		return
	}
	at := now
	switch {
	case a.Kind == edit.AimPart || a.Kind == edit.MarkPart || a.Kind == edit.TipPart:
		g.add(a, now)
		return
	case a.Kind != edit.PlayerPart && a.Kind != edit.FacingPart:
		track := g.rally.Tracks[a.Player]
		at = track.Stops[track.StopOf(a.Index)].At
		a.Index = g.countInserted(a)
	}
	if a.Kind == edit.PlayerPart || a.Kind == edit.FacingPart || a.Index < 0 {
		before := len(g.play.Tracks[a.Player])
		g.play, a.Index = g.state(a.Player, at)
		if len(g.play.Tracks[a.Player]) > before {
			g.renumber(a.Player, a.Index)
		}
	}
	if a.Kind == edit.PlayerPart {
		a.Kind = edit.KeyframePart
	}
	g.add(a, at)
}

func (g *Grasp) add(a edit.Part, at units.Seconds) {
	if !slices.Contains(g.parts, a) {
		g.parts, g.times = append(g.parts, a), append(g.times, at)
	}
}

// countInserted is the present number of a keyframe that the rally knows by
// another: those that came in before it are counted.
func (g *Grasp) countInserted(a edit.Part) int {
	if a.Index < 0 {
		return a.Index
	}
	k := g.rally.Play.Tracks[a.Player][a.Index]
	for i := a.Index; i < len(g.play.Tracks[a.Player]); i++ {
		if g.play.Tracks[a.Player][i] == k {
			return i
		}
	}
	return a.Index
}

// state is the play with a keyframe of a player at a time, and its number.
func (g *Grasp) state(id game.Player, at units.Seconds) (lesson.Play, int) {
	r, err := rally.Solve(edit.ReplacePlay(g.lesson, g.index, g.play), g.index)
	if err != nil {
		return g.play, g.play.ServeIndex(id)
	}
	return stated(r, g.play, id, at)
}

// renumber counts a keyframe that came in before those held.
func (g *Grasp) renumber(id game.Player, inserted int) {
	for i, a := range g.parts {
		if a.Player == id && a.Kind != edit.AimPart && a.Kind != edit.MarkPart && a.Kind != edit.TipPart && a.Index >= inserted {
			g.parts[i].Index++
		}
	}
}

// Parts are what is held, keyframes instead of players.
func (g Grasp) Parts() []edit.Part { return g.parts }

// Play is the play as it is held, before anything moves.
func (g Grasp) Play() lesson.Play { return g.play }

// TimeOf is when part i of Parts is where it is held.
func (g Grasp) TimeOf(i int) units.Seconds { return g.times[i] }

// PlaceOf is where a player is drawn at a time, before anything moves.
func (g Grasp) PlaceOf(id game.Player, t units.Seconds) court.Point {
	return g.rally.Tracks[id].At(t).Place
}

// Shifted is the lesson with all that is held moved together.
func (g Grasp) Shifted(by court.Point) lesson.Lesson {
	return g.with(edit.Shift(g.play, g.parts, by))
}

// Bent is the lesson with the run held led through a point.
func (g Grasp) Bent(via court.Point) lesson.Lesson {
	return g.with(edit.Bend(g.play, g.parts[0].Player, g.parts[0].Index, via))
}

// Straight is the lesson with the run held straight.
func (g Grasp) Straight() lesson.Lesson {
	return g.with(edit.Straighten(g.play, g.parts[0].Player, g.parts[0].Index))
}

// Facing is the lesson with the player held looking another way.
func (g Grasp) Facing(d units.Degrees) lesson.Lesson {
	return g.with(edit.Face(g.play, g.parts[0].Player, g.parts[0].Index, d))
}

// Tip is the lesson with the tip held at another place.
func (g Grasp) Tip(at court.Point) lesson.Lesson {
	return g.with(edit.MoveTip(g.play, g.parts[0].Index, at))
}

func (g Grasp) with(p lesson.Play) lesson.Lesson { return edit.ReplacePlay(g.lesson, g.index, p) }
