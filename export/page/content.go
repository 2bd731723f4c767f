package page

import (
	"math"
	"slices"
	"strconv"

	"homeside/canvas/compose"
	"homeside/export/captions"
	"homeside/export/sound"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// content is what the script reads: a play's lists are flat, for their size.
type content struct {
	Say   texts              `json:"say"`
	Beeps map[string]float64 `json:"hz"`
	Signs map[string]string  `json:"signs"` // SVG of each sign, made here
	Means map[string]string  `json:"means"` // of each sign at first: stay, switch, fake
	Plays []play             `json:"plays"`
}

type play struct {
	Title     string    `json:"title"`
	Situation string    `json:"situation"`
	From      float64   `json:"from"`
	To        float64   `json:"to"`
	Stopped   float64   `json:"stopped"`
	Events    []event   `json:"events"`
	Lines     []line    `json:"captions"`
	Goes      []line    `json:"goes"`
	Beeps     []beep    `json:"beeps"`
	Crossings []crossed `json:"crossings"`
	People    []person  `json:"players"`
	Ball      []float64 `json:"ball"` // t, x, y, height in ft, for each sample
	Shots     []float64 `json:"shots"`
	Lives     []live    `json:"lives"`
	Scale     scale     `json:"scale"`
}

type event struct {
	T    float64 `json:"t"`
	Name string  `json:"name"`
	Text string  `json:"text"`
}

type line struct {
	From float64 `json:"from"`
	To   float64 `json:"to"`
	Text string  `json:"text"`
}

type beep struct {
	T    float64 `json:"t"`
	Kind string  `json:"kind"`
}

// crossed is a moment at which partners have to agree who goes in front.
type crossed struct {
	T    float64 `json:"t"`
	Text string  `json:"text"`
}

type person struct {
	ID   string    `json:"id"`
	Name string    `json:"name"`
	Way  []float64 `json:"way"` // t, x, y in ft, facing in degrees, for each sample
}

// live is a mark or a signal: the part shown from one moment to another, moved
// with its giver.
type live struct {
	Part  string        `json:"part"`
	Giver string        `json:"giver,omitempty"`
	From  units.Seconds `json:"from"`
	To    units.Seconds `json:"to"`
}

// scale is how feet become units of the drawing.
type scale struct {
	X      float64 `json:"x"` // of the middle of the net
	Y      float64 `json:"y"`
	Foot   float64 `json:"foot"`
	RiseX  float64 `json:"riseX"` // of the ground in the height strip
	Ball   float64 `json:"ball"`  // radius
	Grows  float64 `json:"grows"` // of the radius, a foot of height
	Falls  float64 `json:"falls"` // of the shadow to the right and down, a foot of height
	MostFt float64 `json:"mostFt"`
}

func (s stage) play() play {
	r := s.rally
	told := captions.Of(s.lesson, r)
	return play{
		Title: r.Play.Title, Situation: words.Situation(s.lesson, r.Play), From: at(r.From), To: at(r.To), Stopped: at(r.Stopped()),
		Events: s.events(), Lines: linesOf(told.Cues), Goes: linesOf(told.Events), Beeps: beepsOf(r), Crossings: s.crossed(),
		People: s.people(), Ball: s.ball(), Shots: s.shots(), Lives: s.lives(), Scale: s.scale(),
	}
}

// at is a time to a hundredth of a millisecond, in which the fastest ball goes
// a hundredth of an inch.
func at(t units.Seconds) float64 { return round(float64(t), 1e5) }

func round(v, per float64) float64 { return math.Round(v*per) / per }

func linesOf(lines []captions.Line) []line {
	all := []line{}
	for _, l := range lines {
		all = append(all, line{at(l.From), at(l.To), l.Text})
	}
	return all
}

// events are the moments that a step goes to: the start, each that comes to
// pass, and the end.
func (s stage) events() []event {
	r := s.rally
	all := []event{{at(r.From), "start", words.T("Before the serve")}}
	for _, e := range r.Events {
		if e.Reached {
			all = append(all, event{at(e.At), e.Name.String(), words.EventLine(s.lesson, r, e)})
		}
	}
	return all
}

func beepsOf(r *rally.Rally) []beep {
	all := []beep{}
	for _, b := range sound.Of(r).Beeps {
		all = append(all, beep{at(b.At), b.Kind.String()})
	}
	return all
}

func (s stage) crossed() []crossed {
	all := []crossed{}
	for _, a := range s.cross {
		all = append(all, crossed{at(a.When), words.PathsCross(s.lesson, a)})
	}
	return all
}

func pitches() map[string]float64 {
	all := map[string]float64{}
	for _, k := range sound.Kinds() {
		all[k.String()] = k.Pitch()
	}
	return all
}

// moments are where samples have to be: every event, and where a leg begins or
// ends, since between them motion is smooth.
func (s stage) moments() []units.Seconds {
	r := s.rally
	all := []units.Seconds{r.From, r.To, r.Stopped()}
	for _, e := range r.Events {
		all = append(all, e.At)
	}
	for _, t := range r.Tracks {
		for _, leg := range t.Legs {
			all = append(all, leg.From, leg.To)
		}
	}
	all = slices.DeleteFunc(all, func(t units.Seconds) bool { return t < r.From || t > r.To })
	slices.Sort(all)
	return slices.Compact(all)
}

func (s stage) people() []person {
	all := make([]person, 0, len(game.Players))
	for _, id := range game.Players {
		way := along(s.moments(), func(t units.Seconds) Sample {
			pose := s.rally.At(t).Players[id].Run
			return Sample{T: t, Place: pose.Place, Facing: pose.Facing}
		})
		p := person{ID: id.String(), Name: s.lesson.NameOf(id)}
		for _, a := range way {
			p.Way = append(p.Way, at(a.T), feet(a.Place.X), feet(a.Place.Y), round(float64(a.Facing), 10))
		}
		all = append(all, p)
	}
	return all
}

// feet is a length to the thousandth of a foot.
func feet(f units.Feet) float64 { return round(float64(f), 1000) }

func (s stage) ball() []float64 {
	var all []float64
	for _, a := range along(s.moments(), s.ballAt) {
		all = append(all, at(a.T), feet(a.Place.X), feet(a.Place.Y), feet(a.Height))
	}
	return all
}

func (s stage) ballAt(t units.Seconds) Sample {
	b := s.rally.BallAt(t)
	return Sample{T: t, Place: b.Ground(), Height: b.Height().Feet()}
}

// shots are when each shot that comes to pass is struck.
func (s stage) shots() []float64 {
	all := []float64{}
	for _, st := range s.rally.Strokes {
		if s.rally.Reached(st.At) {
			all = append(all, at(st.At))
		}
	}
	return all
}

// lives are the play's signals and marks.
func (s stage) lives() []live {
	r := s.rally
	all := []live{}
	for i, c := range r.Play.Cues {
		if c.Kind == lesson.Signal {
			all = append(all, live{"signal-" + strconv.Itoa(i), c.Giver.String(), r.TimeAt(c.Span.From), r.TimeAt(c.Span.To)})
		}
	}
	for i, m := range r.Play.Marks {
		from, to := r.TimeAt(m.Span.From), r.TimeAt(m.Span.To)
		if m.Kind == lesson.ObstacleMark {
			from, to = r.From, r.To
		}
		all = append(all, live{"mark-" + strconv.Itoa(i), "", from, to})
	}
	return all
}

func (s stage) scale() scale {
	origin := s.layout.Court.ToPx(court.Point{})
	rise := s.layout.Rise.ToPx(court.Point{})
	return scale{
		X: origin.X, Y: origin.Y, Foot: s.layout.Court.PxPerFoot, RiseX: rise.X,
		Ball: ballRadius, Grows: compose.BallGrows, Falls: compose.ShadowFall * pxPerPoint, MostFt: compose.MostRise,
	}
}
