package rally

import (
	"slices"
	"sort"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// Implied is the keyframe number of a place that the lesson does not state: a
// hitter without a keyframe at the contact stands so that the ball is on the
// forehand side.
const Implied = -1

// Stop is a keyframe with its time.
type Stop struct {
	At       units.Seconds
	Keyframe lesson.Keyframe
	Index    int  // in the play's track, or Implied
	Clamped  bool // moved after the stop before it: list order wins

	Late units.Seconds // how much later than At the player gets there as run; 0 on time
}

// Run is the way from one stop to the next.
type Run struct {
	From, To    units.Seconds // leaves, arrives
	Way         court.Curve
	Start, Stop units.Degrees // facings
	Index       int           // the keyframe it leads to, or Implied
}

// Track is a player's rally as drawn and as run. It has at least one stop, and
// a run and a leg between every two.
type Track struct {
	Stops []Stop
	Runs  []Run // as drawn
	Legs  []Leg // as run
}

// Pose is where a player is and looks.
type Pose struct {
	Place  court.Point
	Facing units.Degrees
	Speed  units.MetresPerSecond
}

// solveTrack puts times to a player's keyframes and draws the runs between.
func (r *Rally) solveTrack(id game.Player) Track {
	t := Track{Stops: r.stops(id)}
	for i := 1; i < len(t.Stops); i++ {
		t.Runs = append(t.Runs, r.run(t.Stops[i-1], t.Stops[i]))
	}
	return t
}

func (r *Rally) stops(id game.Player) []Stop {
	track := r.Play.Tracks[id]
	stops := make([]Stop, 0, len(track)+len(r.Strokes))
	for i, k := range track {
		stops = append(stops, Stop{At: r.TimeAt(k.At), Keyframe: k, Index: i})
	}
	keepOrder(stops)
	for i, s := range r.Strokes {
		if s.By == id && !slices.ContainsFunc(track, func(k lesson.Keyframe) bool { return k.At == lesson.At(lesson.ContactOf(i)) }) {
			stops = insert(stops, r.implied(id, i))
		}
	}
	return stops
}

// keepOrder moves every stop that comes before the one listed ahead of it.
func keepOrder(stops []Stop) {
	for i := 1; i < len(stops); i++ {
		if stops[i].At < stops[i-1].At {
			stops[i].At, stops[i].Clamped = stops[i-1].At, true
		}
	}
}

func insert(stops []Stop, s Stop) []Stop {
	i := sort.Search(len(stops), func(i int) bool { return stops[i].At > s.At })
	return slices.Insert(stops, i, s)
}

// implied is where a hitter stands when the lesson does not say: facing the
// net, the ball 2 ft to the forehand side; at the serve, where the ball's place
// follows from the server's, still there.
func (r *Rally) implied(id game.Player, shot int) Stop {
	s := r.Strokes[shot]
	if shot == 0 {
		k := r.Play.AtServe(id)
		return Stop{At: s.At, Keyframe: lesson.Keyframe{At: lesson.At(lesson.ContactOf(0)), Place: k.Place, Facing: k.Facing}, Index: Implied}
	}
	facing := id.Team().Facing()
	aside := r.Player(id).Hand.Forehand(facing).Times(float64(PaddleSide))
	k := lesson.Keyframe{
		At:     lesson.At(lesson.ContactOf(shot)),
		Place:  flightGround(s.From).Sub(aside),
		Facing: facing,
	}
	return Stop{At: s.At, Keyframe: k, Index: Implied}
}

func (r *Rally) run(a, b Stop) Run {
	leave := a.At
	if b.Keyframe.Leave != nil {
		leave = min(max(leave, r.TimeAt(*b.Keyframe.Leave)), b.At)
	}
	way := court.StraightCurve(a.Keyframe.Place, b.Keyframe.Place)
	if b.Keyframe.Via != nil {
		way = court.BentCurve(a.Keyframe.Place, *b.Keyframe.Via, b.Keyframe.Place)
	}
	return Run{leave, b.At, way, a.Keyframe.Facing, b.Keyframe.Facing, b.Index}
}

// At is where the player is at time t as drawn: at the first place before the
// first stop, at the last after the last.
func (t Track) At(at units.Seconds) Pose {
	i := sort.Search(len(t.Runs), func(i int) bool { return t.Runs[i].To > at })
	if i == len(t.Runs) {
		return standing(t.Stops[i].Keyframe)
	}
	if at <= t.Runs[i].From {
		return standing(t.Stops[i].Keyframe)
	}
	return t.Runs[i].at(at)
}

func standing(k lesson.Keyframe) Pose { return Pose{Place: k.Place, Facing: k.Facing.Normal()} }

// at is a moment within the run, in minimum-jerk time (Flash and Hogan 1985).
func (r Run) at(t units.Seconds) Pose {
	span := r.To - r.From
	u := float64((t - r.From) / span)
	share := movement.MinimumJerk(u)
	speed := float64(r.Way.Length().Metres()) * movement.MinimumJerkRate(u) / float64(span)
	return Pose{r.Way.At(share), turn(r.Start, r.Stop, share), units.MetresPerSecond(speed)}
}

// halfTurn keeps a half turn clockwise whatever the rounding.
const halfTurn units.Degrees = 180 + 1e-6

// turn goes from one facing to another the shorter way round, half round clockwise.
func turn(a, b units.Degrees, share float64) units.Degrees {
	d := (b - a).Normal()
	if d > halfTurn {
		d -= 360
	}
	return (a + d*units.Degrees(share)).Normal()
}
