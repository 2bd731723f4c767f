package compose

import (
	"fmt"
	"math"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// HeightPanel is the name of the height strip's panel. Its y is the court's, its
// x the height, toward -x where the court lies, so that up is up the page.
const HeightPanel = "height"

// ApexHandle is the ID of the handle that raises and lowers the shot in play.
const ApexHandle = "apex.handle"

// Heights shown by the strip.
const (
	leastRise units.Feet = 12
	riseStep  units.Feet = 4 // the strip grows in steps, so that it rests while a hand moves the apex
	riseRoom  units.Feet = 1 // above the highest ball
)

// RiseOf is the height that the strip has to show for a rally.
func RiseOf(r *rally.Rally) units.Feet {
	top := leastRise
	for _, s := range r.Strokes {
		top = max(top, s.Planned.Apex.State.Height().Feet()+riseRoom)
	}
	return leastRise + riseStep*units.Feet(math.Ceil(float64((top-leastRise)/riseStep)))
}

// HeightAt is the height under a pixel of the strip.
func (l Layout) HeightAt(px canvas.Px) units.Feet { return l.up() * l.Rise.ToCourt(px).X }

// ApexPx is where the apex handle of a shot is drawn.
func (l Layout) ApexPx(r *rally.Rally, shot int) canvas.Px {
	top := r.Strokes[shot].Planned.Apex.State
	return l.Rise.ToPx(court.Pt(l.up()*top.Height().Feet(), top.Ground().Y))
}

// up is the sign of the height on the strip's x: to the right of an upright
// court, up the page over a lying one.
func (l Layout) up() units.Feet {
	if (l.Court.Turn == canvas.Lying) != (l.Court.End == court.Far) {
		return -1
	}
	return 1
}

// strip holds what the height strip is drawn with.
type strip struct {
	p  Picture
	l  Layout
	lk *look.Look
}

func (s strip) at(y, z units.Feet) court.Point { return court.Pt(s.l.up()*z, y) }

// heightStatic is the strip without the ball: ground, net in profile, lines of
// height, and the flights dotted.
func (p Picture) heightStatic(l Layout) canvas.Panel {
	s := strip{p, l, p.look()}
	g := canvas.Panel{Name: HeightPanel, View: l.Rise, Clip: l.Clip}
	surface := p.surface()
	long := surface.Height() / 2
	s.box(&g, "surface", words.T("playing surface from the side"), -long, long, s.lk.Surface)
	s.box(&g, "court", words.T("court from the side"), -court.Baseline, court.Baseline, s.lk.Court)
	s.box(&g, "kitchen", words.T("kitchen from the side"), -court.Kitchen, court.Kitchen, s.lk.Kitchen)
	s.line(&g, "ground", "ground", canvas.Polyline(s.at(-long, 0), s.at(long, 0)), canvas.Style{Stroke: s.lk.Line, Width: canvas.Pts(look.Outline)})
	s.rules(&g)
	s.line(&g, "net", words.T("net in profile, 34 in at its middle"), canvas.Polyline(s.at(0, 0), s.at(0, court.NetAtCentre)), canvas.Style{Stroke: s.lk.Net, Width: canvas.Pts(2.6)})
	for i := range p.Rally.Strokes {
		s.flight(&g, "flight.", i, faint(s.lk.Quiet))
	}
	return g
}

func (s strip) box(g *canvas.Panel, id, label string, from, to units.Feet, c colour) {
	g.Add(area(id, label, court.RectOf(s.at(from, 0), s.at(to, s.l.RiseTop)), c))
}

func (s strip) line(g *canvas.Panel, id, label string, path canvas.Path, style canvas.Style) {
	g.Add(canvas.Shape{ID: id, Label: label, Layer: canvas.NetLayer, Path: path, Style: style})
}

// ruleStep is the height between two rules: 4 ft or 1 m.
func ruleStep() units.Feet {
	if words.Measured() == words.Metric {
		return units.Metres(1).Feet()
	}
	return riseStep
}

// rules are thin lines of height with their figures.
func (s strip) rules(g *canvas.Panel) {
	end := max(s.p.surface().Max.Y, -s.p.surface().Min.Y)
	foot := s.l.Shown.Min.Y // where the strip has its lower end
	if s.l.end == court.Far {
		foot = s.l.Shown.Max.Y
	}
	for i, z := 1, ruleStep(); z < s.l.RiseTop; i, z = i+1, z+ruleStep() {
		id := fmt.Sprintf("rule.%.0f", float64(z))
		g.Add(canvas.Shape{
			ID: id, Layer: canvas.Lines, Path: canvas.Polyline(s.at(-end, z), s.at(end, z)),
			Style: canvas.Style{Stroke: s.lk.Quiet, Width: canvas.Pts(0.4), Dash: []canvas.Points{2, 3}},
		})
		if i%2 == 1 && s.crowded() {
			continue
		}
		g.Add(canvas.Shape{
			ID: id + ".text", Layer: canvas.Labels, Label: words.T("%s high", words.Length(z)),
			Text: &canvas.Text{At: canvas.On(s.at(foot, z)).Shift(3, -3), Text: words.Whole(z), Size: look.LabelSize * 0.85, Align: canvas.Start, Colour: s.lk.Quiet},
		})
	}
}

// crowded says whether the figures of neighbouring rules would touch one another.
func (s strip) crowded() bool {
	step := float64(ruleStep()) * s.l.Rise.PxPerFoot / s.l.PxPerPoint
	return s.l.Court.Turn == canvas.Upright && step < 24
}

// flight is one stroke in profile, as far as it is played.
func (s strip) flight(g *canvas.Panel, prefix string, i int, style canvas.Style) {
	r := s.p.Rally
	st := r.Strokes[i]
	if !r.Reached(st.At) {
		return
	}
	until := min(st.At+st.Met, r.Stopped())
	n := max(int((until-st.At)/pathStep), 1)
	points := make([]court.Point, 0, n+1)
	for k := range n + 1 {
		b := r.BallAt(st.At + (until-st.At)*units.Seconds(k)/units.Seconds(n))
		points = append(points, s.at(b.Ground().Y, b.Height().Feet()))
	}
	name := lesson.ShotName(i)
	g.Add(canvas.Shape{ID: prefix + name, Layer: canvas.BallPath, Label: words.OfShot(words.Text("flight of %s from the side"), i), Path: canvas.Polyline(points...), Style: style})
}

// heightMoving is the ball in the strip and the figures of the shot in play:
// its apex with the handle, and its height over the net.
func (p Picture) heightMoving(l Layout, f rally.Frame) canvas.Panel {
	s := strip{p, l, p.look()}
	g := canvas.Panel{Name: HeightPanel, View: l.Rise, Clip: l.Clip}
	i := p.Rally.ShotAt(f.T)
	s.flight(&g, "now.", i, dotted(s.lk.Ink))
	s.apex(&g, i)
	s.clearance(&g, i)
	g.Add(canvas.Shape{
		ID: "ball", Layer: canvas.BallLayer, Label: words.T("ball, %s high", words.Length(f.Ball.Height().Feet())),
		Path:  canvas.Circle(canvas.On(s.at(f.Ball.Ground().Y, f.Ball.Height().Feet())), canvas.Pts(look.BallRadius)),
		Style: canvas.Style{Fill: s.lk.Ball, Stroke: s.lk.Rim, Width: canvas.Pts(look.Outline)},
	})
	return g
}

func (s strip) apex(g *canvas.Panel, i int) {
	top := s.p.Rally.Strokes[i].Planned.Apex.State
	if y := top.Ground().Y; s.l.Clip != (canvas.Clip{}) && (y < s.l.Shown.Min.Y || y > s.l.Shown.Max.Y) {
		return // over the half that is not shown
	}
	at := canvas.On(s.at(top.Ground().Y, top.Height().Feet()))
	const r = 4
	diamond := canvas.Path{}.Move(at.Shift(-r, 0)).Line(at.Shift(0, -r)).Line(at.Shift(r, 0)).Line(at.Shift(0, r)).Close()
	g.Add(canvas.Shape{
		ID: ApexHandle, Layer: canvas.Marks, Label: words.OfShot(words.Text("top of %s: drag to raise or lower it"), i),
		Path: diamond, Style: canvas.Style{Fill: s.lk.Handle, Stroke: s.lk.Rim, Width: canvas.Pts(look.Outline)},
	})
	s.figure(g, "apex", at.Shift(0, s.outward(i, 14)), words.Length(top.Height().Feet()))
}

// outward is a way on the paper from the net past the apex of a shot, so that
// the apex's figure and the net's, which goes the other way, never meet.
func (s strip) outward(i int, by canvas.Points) canvas.Points {
	own := s.p.Rally.Strokes[i].Planned.Apex.State.At.Y < 0 == (s.l.end == court.Near)
	if own && s.l.Court.Turn == canvas.Upright {
		return by
	}
	return -by
}

// lyingAside is how far beside an upright net its figures stand, in points.
const lyingAside canvas.Points = 52

// clearance is the height of the ball over the net where it passes.
func (s strip) clearance(g *canvas.Panel, i int) {
	net := s.p.Rally.Strokes[i].Planned.Net
	if !net.Reached {
		return
	}
	ball := net.State.Height().Feet()
	top := s.p.Rally.NetTop(i)
	from, to := s.at(0, min(top, ball)), s.at(0, max(top, ball))
	s.line(g, "clearance", "", canvas.Polyline(from, to), canvas.Style{Stroke: s.lk.Ink, Width: canvas.Pts(look.Outline)})
	at := canvas.On(s.at(0, (top+ball)/2))
	if s.l.Court.Turn == canvas.Lying {
		at = at.Shift(lyingAside, -20) // beside the net, which stands upright there
	}
	s.figure(g, "clearance", at.Shift(0, -s.outward(i, 13)), words.OverNet(ball, top))
	s.figure(g, "times", at.Shift(0, -s.outward(i, 28)), words.TimesNet(ball, top))
}

// figure is a tag kept inside the strip.
func (s strip) figure(g *canvas.Panel, name string, at canvas.Pos, text string) {
	if s.p.Show.NoFigures {
		return
	}
	px := s.l.Rise.PxPerFoot / s.l.PxPerPoint
	half := canvas.Points(look.Width(text, true))*look.LabelSize/2 + 4
	if s.l.Court.Turn == canvas.Upright {
		x := canvas.Points(float64(at.X*s.l.up()) * px)
		end := canvas.Points(float64(s.l.RiseTop) * px)
		at = at.Shift(max(half, min(x, end-half))-x, 0) // a strip too narrow for it is left away from the court
	}
	s.p.tag(g, name+".text", s.clipped(at), 0, text)
}

// clipped moves a tag up or down into what is shown of half a court.
func (s strip) clipped(at canvas.Pos) canvas.Pos {
	c := s.l.Clip
	if c == (canvas.Clip{}) {
		return at
	}
	_, high := tagSize("")
	pt := s.l.PxPerPoint
	down := s.l.Rise.ToPx(court.Pt(at.X, at.Y)).Y/pt + float64(at.Down)
	low, most := c.Min.Y/pt+float64(high)/2, c.Max.Y/pt-float64(high)/2
	return at.Shift(0, canvas.Points(min(max(down, low), most)-down))
}
