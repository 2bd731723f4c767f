package compose

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Sizes of a standing figure in feet: an adult of middle height, drawn as signs
// draw people. Hands and paddle are larger than to scale, so that they are seen
// from the baseline.
const (
	tall       feet = 5.9
	headRadius feet = 0.44
	headHigh   feet = 5.25 // its middle
	shoulder   feet = 0.72 // from the spine
	shoulderUp feet = 4.45
	waist      feet = 0.5
	hipUp      feet = 2.75
	hip        feet = 0.3
	limbWide   feet = 0.36
	legWide    feet = 0.46
	armLong    feet = 1.9 // how far arm and paddle reach aside
	outlined   feet = 0.035
	lettersUp  feet = 3.62
	lettersEm  feet = 0.78
	palm       feet = 0.34
	fingerWide feet = 0.15
)

// figure is one player who stands in the court, drawn as seen by a camera.
type figure struct {
	p            Picture
	cam          canvas.Camera
	id           game.Player
	pose         rally.Pose
	ahead, right court.Point
	name         string
	parts        []part
}

// part is a piece of a figure; nearer ones are drawn over it.
type part struct {
	depth  feet
	shapes []canvas.Shape
}

// figure draws a player with a shadow, limbs, shirt with initials, head with cap, and paddle.
func (p Picture) figure(g *canvas.Panel, l Layout, f rally.Frame, id game.Player) {
	pose := f.Players[id].Run
	if !pose.Place.Finite() || l.Camera.Depth(canvas.Above(pose.Place, 0)) <= 0 {
		return
	}
	fig := figure{p: p, cam: l.Camera, id: id, pose: pose, ahead: court.Direction(pose.Facing), right: court.RightOf(pose.Facing), name: PlayerShape(id)}
	g.Add(canvas.Shape{
		ID: fig.name + ".shadow", Layer: canvas.Lines, Path: canvas.Circle(canvas.On(pose.Place), canvas.Ft(1)), Style: canvas.Style{Fill: p.look().Shadow},
	})
	fig.legs(f.T)
	fig.shirt()
	fig.head()
	fig.paddleArm()
	fig.otherArm(f)
	slices.SortStableFunc(fig.parts, func(a, b part) int { return cmp.Compare(b.depth, a.depth) })
	for _, part := range fig.parts {
		g.Add(part.shapes...)
	}
}

// at is a place on the figure: so far to its right, ahead of it and up.
func (f *figure) at(right, ahead, up feet) canvas.Vec {
	return canvas.Above(f.pose.Place.Add(f.right.Times(float64(right))).Add(f.ahead.Times(float64(ahead))), up)
}

func (f *figure) team() look.TeamLook { return f.p.look().Teams[f.id.Team()] }

// side is +1 if the paddle is in the right hand.
func (f *figure) side() feet {
	if f.p.Rally.Player(f.id).Hand == lesson.LeftHanded {
		return -1
	}
	return 1
}

// limb adds a rounded bar through places, its depth that of its farthest or
// nearest end as bias says.
func (f *figure) limb(id string, wide feet, fill colour, bias feet, at ...canvas.Vec) {
	depth := feet(0)
	for _, v := range at {
		depth += f.cam.Depth(v) / feet(len(at))
	}
	line := canvas.Style{Stroke: f.p.look().Ink, Width: canvas.Ft(wide + 2*outlined), Round: true}
	inner := canvas.Style{Stroke: fill, Width: canvas.Ft(wide), Round: true}
	f.parts = append(f.parts, part{depth + bias, []canvas.Shape{
		{ID: f.name + id + ".edge", Layer: canvas.Players, Path: inSpace(at...), Style: line},
		{ID: f.name + id, Layer: canvas.Players, Path: inSpace(at...), Style: inner},
	}})
}

// Steps of one who runs: how many a second at full stretch, how long and how
// high. They show that someone runs, not how.
const (
	stepsASecond         = 1.7
	stepLong     feet    = 0.9
	stepHigh     feet    = 0.5
	fullStretch  float64 = 4 // m/s
)

// legs stand as wide as the feet do, and step along the way they run.
func (f *figure) legs(t units.Seconds) {
	way := f.way(t)
	stretch := min(float64(f.pose.Speed)/fullStretch, 1)
	turn := 2 * math.Pi * stepsASecond * float64(t)
	for _, s := range []feet{-1, 1} {
		swing := math.Sin(turn) * stretch * float64(s)
		lift := feet(max(math.Cos(turn)*float64(s), 0)*stretch) * stepHigh
		foot := f.at(s*rally.FootAside, 0, 0.2+lift).Add(canvas.Above(way.Times(swing*float64(stepLong)), 0))
		knee := f.at(s*rally.FootAside*0.85, 0.25, 1.5+lift/2).Add(canvas.Above(way.Times(swing*float64(stepLong)/2), 0))
		f.limb(fmt.Sprintf(".leg%+.0f", float64(s)), legWide, f.p.look().Quiet, 0.1, f.at(s*hip, 0, hipUp), knee, foot)
	}
}

// way is the direction a player moves in; zero for one who stands.
func (f *figure) way(t units.Seconds) court.Point {
	const step units.Seconds = 0.02
	track := f.p.Rally.Tracks[f.id]
	dir, _ := track.RunAt(t + step).Place.Sub(track.RunAt(t - step).Place).Unit()
	return dir
}

// shirt is the body with the initials on chest and back. The team that is told
// apart by a ring from above wears a stripe.
func (f *figure) shirt() {
	square := math.Abs(f.facing()) // 1 from the front and from behind, 0 from the side
	narrow := feet(0.62 + 0.38*square)
	middle := f.at(0, 0, 0)
	on := func(x, up feet) canvas.Pos { return canvas.At(f.cam.Facing(middle, x*narrow, up)) }
	team, lk := f.team(), f.p.look()
	path := canvas.Path{}.Move(on(-waist, hipUp-0.3)).Line(on(-shoulder, shoulderUp-0.15)).
		Curve(on(-shoulder, shoulderUp+0.15), on(-shoulder*0.7, shoulderUp+0.3), on(-shoulder*0.4, shoulderUp+0.35)).
		Line(on(shoulder*0.4, shoulderUp+0.35)).
		Curve(on(shoulder*0.7, shoulderUp+0.3), on(shoulder, shoulderUp+0.15), on(shoulder, shoulderUp-0.15)).
		Line(on(waist, hipUp-0.3)).Close()
	who := f.p.Rally.Player(f.id)
	shapes := []canvas.Shape{{
		ID: f.name, Layer: canvas.Players, Label: fmt.Sprintf("%s, %v", who.Name, f.id), Path: path,
		Style: canvas.Style{Fill: team.Disc, Stroke: lk.Ink, Width: canvas.Ft(2 * outlined), Round: true},
	}}
	if team.Ring {
		shapes = append(shapes, canvas.Shape{
			ID: f.name + ".stripe", Layer: canvas.Players, Style: canvas.Style{Fill: lk.Plate, Stroke: lk.Ink, Width: canvas.Ft(outlined)},
			Path: canvas.Path{}.Move(on(-waist, hipUp-0.3)).Line(on(-waist*1.04, hipUp+0.05)).Line(on(waist*1.04, hipUp+0.05)).Line(on(waist, hipUp-0.3)).Close(),
		})
	}
	size := lettersEm
	if len([]rune(who.Letters())) > 2 {
		size *= 0.75
	}
	shapes = append(shapes, canvas.Shape{
		ID: f.name + ".initials", Layer: canvas.Players,
		Text: &canvas.Text{At: on(0, lettersUp), Text: who.Letters(), SizeFt: size * narrow, Bold: true, Colour: team.Letter},
	})
	f.parts = append(f.parts, part{f.cam.Depth(middle), shapes})
}

// facing is 1 for a figure that looks at the camera, -1 for one that looks away.
func (f *figure) facing() float64 {
	to, ok := f.cam.Eye.Ground().Sub(f.pose.Place).Unit()
	if !ok {
		return -1
	}
	return float64(to.X*f.ahead.X + to.Y*f.ahead.Y)
}

// head is a head with a cap whose peak points where the player looks.
func (f *figure) head() {
	lk, team := f.p.look(), f.team()
	middle := f.at(0, 0, headHigh)
	f.parts = append(f.parts, part{f.cam.Depth(middle) - 0.05, []canvas.Shape{{
		ID: f.name + ".head", Layer: canvas.Players, Path: disc(f.cam, middle, headRadius),
		Style: canvas.Style{Fill: lk.Plate, Stroke: lk.Ink, Width: canvas.Ft(2 * outlined)},
	}, {
		ID: f.name + ".cap", Layer: canvas.Players, Path: f.cap(middle),
		Style: canvas.Style{Fill: team.Run, Stroke: lk.Ink, Width: canvas.Ft(2 * outlined), Round: true},
	}}})
	f.limb(".peak", 0.14, team.Run, -0.1, f.at(-0.2, 0.25, headHigh+0.06), f.at(-0.13, 0.72, headHigh), f.at(0.13, 0.72, headHigh), f.at(0.2, 0.25, headHigh+0.06))
	if f.facing() > 0.2 {
		f.eyes()
	}
}

// cap is the upper part of the head, more of it seen from behind.
func (f *figure) cap(middle canvas.Vec) canvas.Path {
	brim := max(0.12-1.4*max(-f.facing(), 0), -1) // of the radius above the middle: hair and cap from behind
	var path canvas.Path
	const n = 14
	from := math.Asin(brim)
	for i := range n + 1 {
		a := from + (math.Pi-2*from)*float64(i)/n
		at := canvas.At(f.cam.Facing(middle, feet(math.Cos(a))*headRadius, feet(math.Sin(a))*headRadius))
		if i == 0 {
			path = path.Move(at)
		} else {
			path = path.Line(at)
		}
	}
	return path.Close()
}

func (f *figure) eyes() {
	for _, s := range []feet{-1, 1} {
		at := f.at(s*0.15, 0.4, headHigh-0.1)
		f.parts = append(f.parts, part{f.cam.Depth(at), []canvas.Shape{{
			ID: fmt.Sprintf("%s.eye%+.0f", f.name, float64(s)), Layer: canvas.Players, Path: disc(f.cam, at, 0.06), Style: canvas.Style{Fill: f.p.look().Ink},
		}}})
	}
}

// paddleArm holds the paddle up in front of the shoulder on the paddle's side.
func (f *figure) paddleArm() {
	s, lk := f.side(), f.p.look()
	elbow, hand := f.at(s*1.05, 0.2, 3.45), f.at(s*1.2, 0.95, 3.35)
	f.limb(".paddlearm", limbWide, f.team().Disc, 0, f.at(s*shoulder, 0, shoulderUp), elbow, hand)
	blade := f.at(s*1.3, 1.25, 4.15)
	depth := f.cam.Depth(blade)
	style := canvas.Style{Fill: lk.Surface, Stroke: lk.Ink, Width: canvas.Ft(2 * outlined), Round: true}
	f.parts = append(f.parts, part{depth, []canvas.Shape{
		{ID: f.name + ".handle", Layer: canvas.Players, Path: inSpace(hand, blade), Style: canvas.Style{Stroke: lk.Ink, Width: canvas.Ft(0.16), Round: true}},
		{ID: f.name + ".paddle", Layer: canvas.Players, Label: words.Paddle(f.p.Rally.Player(f.id)), Path: f.blade(blade), Style: style},
	}})
}

// blade is a paddle's face, rounded, held upright before the camera.
func (f *figure) blade(at canvas.Vec) canvas.Path {
	const w, h, r = 0.34, 0.5, 0.2 // halves, and the corners' radius
	on := func(x, y feet) canvas.Pos { return canvas.At(f.cam.Facing(at, x, y)) }
	return canvas.Path{}.Move(on(-w, -h+r)).Line(on(-w, h-r)).Curve(on(-w, h), on(-w, h), on(-w+r, h)).
		Line(on(w-r, h)).Curve(on(w, h), on(w, h), on(w, h-r)).Line(on(w, -h+r)).Curve(on(w, -h), on(w, -h), on(w-r, -h)).
		Line(on(-w+r, -h)).Curve(on(-w, -h), on(-w, -h), on(-w, -h+r)).Close()
}

// otherArm is held ready, or behind the back of one who gives a signal.
func (f *figure) otherArm(frame rally.Frame) {
	s := -f.side()
	from := f.at(s*shoulder, 0, shoulderUp)
	i, ok := f.p.signalOf(frame, f.id)
	if !ok {
		f.limb(".arm", limbWide, f.team().Disc, 0, from, f.at(s*1, 0.15, 3.45), f.at(s*0.75, 0.95, 3.5))
		return
	}
	hand := f.hand()
	f.limb(".arm", limbWide, f.team().Disc, 0, from, f.at(s*1.15, -0.3, 3.5), hand)
	f.sign(i, hand)
}

// hand is where a hand is behind the back.
func (f *figure) hand() canvas.Vec { return f.at(-f.side()*0.25, -0.7, 3.1) }

// sign is the hand of a signal.
func (f *figure) sign(i int, at canvas.Vec) {
	lk, c := f.p.look(), f.p.Rally.Play.Cues[i]
	name := "signal." + strconv.Itoa(i)
	style := canvas.Style{Fill: lk.Plate, Stroke: lk.Ink, Width: canvas.Ft(2 * outlined), Round: true}
	var shapes []canvas.Shape
	if n := f.p.fingersOf(c); n > 0 {
		for _, wide := range []struct {
			id   string
			wide feet
			ink  colour
		}{{".edge", fingerWide + 2*outlined, lk.Ink}, {".fingers", fingerWide, lk.Plate}} {
			shapes = append(shapes, canvas.Shape{
				ID: name + wide.id, Layer: canvas.Players, Path: f.fingersAt(at, n), Style: canvas.Style{Stroke: wide.ink, Width: canvas.Ft(wide.wide), Round: true},
			})
		}
	}
	shapes = append(shapes, canvas.Shape{ID: name, Layer: canvas.Players, Label: words.T("signal: %s", words.Name(c.Meaning)), Path: disc(f.cam, at, palm), Style: style})
	f.parts = append(f.parts, part{f.cam.Depth(at) + 0.01*f.away(), shapes})
}

// away is 1 for a figure seen from behind and -1 from the front.
func (f *figure) away() feet {
	if f.facing() < 0 {
		return -1
	}
	return 1
}

// fingersAt are n fingers spread from a palm, downward and aside.
func (f *figure) fingersAt(at canvas.Vec, n int) canvas.Path {
	var path canvas.Path
	for i := range n {
		a := (-90 + fingerAngle(i, n, 38)) * math.Pi / 180
		x, y := feet(math.Cos(a)), feet(math.Sin(a))
		path = path.Move(canvas.At(f.cam.Facing(at, x*palm, y*palm))).Line(canvas.At(f.cam.Facing(at, x*palm*2.1, y*palm*2.1)))
	}
	return path
}

// signalOf is the live signal that a player gives, as its number among the cues.
func (p Picture) signalOf(f rally.Frame, id game.Player) (int, bool) {
	for _, i := range f.Cues {
		if c := p.Rally.Play.Cues[i]; c.Kind == lesson.Signal && c.Giver == id {
			return i, true
		}
	}
	return 0, false
}

// meanings are the words of live signals that the camera can see, and the readers' answers.
func (p Picture) meanings(g *canvas.Panel, l Layout, f rally.Frame) {
	for _, i := range f.Cues {
		c := p.Rally.Play.Cues[i]
		if c.Kind != lesson.Signal {
			continue
		}
		name := "signal." + strconv.Itoa(i)
		giver := figure{p: p, cam: l.Camera, id: c.Giver, pose: f.Players[c.Giver].Run}
		giver.ahead, giver.right = court.Direction(giver.pose.Facing), court.RightOf(giver.pose.Facing)
		if giver.facing() < 0 {
			p.tag(g, name+".meaning", canvas.At(giver.at(0, 0, tall)), -8, words.Name(c.Meaning))
		}
		if c.Text != "" {
			p.tag(g, name+".answer", canvas.At(canvas.Above(f.Players[c.Reader].Run.Place, tall)), -8, c.Text)
		}
	}
}
