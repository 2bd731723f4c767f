package compose

import (
	"fmt"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/game"
	"homeside/model/units"
	"homeside/words"
)

// crossHalf is half the width of the cross where the ball is struck.
const crossHalf canvas.Points = 5

// How far outside the court the line of words stands: behind the baseline, or
// beside it where the court lies.
const (
	wordsBehind feet = 6.5
	wordsBeside feet = 3
)

// coverLead is from one line of words to the next.
const coverLead canvas.Points = 16

// Cover adds a team's cover to a scene: the open cells hatched, lines of equal
// margin with their figures, the largest open disc, where the ball is struck, and
// the shares in words behind the team's baseline. Nothing hangs on a colour: open court is
// hatched, and lines are dashed where the pair is late. The zero Map adds nothing.
func (p Picture) Cover(s *canvas.Scene, c cover.Map) {
	if c.Len() == 0 {
		return
	}
	onCourt(s, func(g *canvas.Panel) {
		room := roomOn(s, g, c.Team())
		for _, who := range c.Strike.Players {
			room.takeDisc(who.Place)
		}
		for _, at := range p.crossed(c) {
			room.crossDisc(at)
		}
		open := func(i int) bool { return !c.Covered(i) }
		p.hatch(g, "cover.open", words.T("open court: %s", percent(1-c.Share())), c.Team(), open, rising)
		p.openDisc(g, c, room)
		p.margins(g, c, room)
		p.contact(g, c.Strike.From)
		p.coverWords(s, g, c.Team(), words.T("%s in time, %s forehand", percent(c.Share()), percent(c.ShareForehand())), p.middle(c))
	})
}

// CoverDifference adds what changes between two maps, on the court of the later
// one: cells gained hatched one way, cells lost hatched crosswise, and their shares.
func (p Picture) CoverDifference(s *canvas.Scene, d cover.Difference) {
	if d.Len() == 0 {
		return
	}
	team := d.After.Team()
	onCourt(s, func(g *canvas.Panel) {
		for _, c := range []struct {
			change cover.Change
			leans  []lean
		}{{cover.Gained, []lean{rising}}, {cover.Lost, []lean{rising, falling}}} {
			is := func(i int) bool { return d.Change(i) == c.change }
			name, text := "cover."+c.change.String(), words.Name(c.change)+" "+percent(d.Share(c.change))
			p.hatch(g, name, text, team, is, c.leans...)
			if at, ok := midst(team, is); ok {
				p.tag(g, name+".text", canvas.On(at), 0, text)
			}
		}
		p.coverWords(s, g, team, words.T("%s, then %s in time", percent(d.Before.Share()), percent(d.After.Share())))
	})
}

// onCourt draws on the panel with the court.
func onCourt(s *canvas.Scene, draw func(*canvas.Panel)) {
	for i := range s.Panels {
		if s.Panels[i].Name == CourtPanel {
			draw(&s.Panels[i])
		}
	}
}

func percent(share float64) string { return fmt.Sprintf("%.0f %%", 100*share) }

// coverWords are lines behind a team's baseline; one long line would not fit there.
func (p Picture) coverWords(s *canvas.Scene, g *canvas.Panel, team court.End, lines ...string) {
	at := court.OwnPoint(team, 0, court.Baseline+wordsBehind)
	if p.Turn == canvas.Lying {
		at = court.Pt(court.HalfWidth+wordsBeside, court.Half(team).Centre().Y)
	}
	_, high := tagSize("")
	above := canvas.Points(len(lines)-1) / 2 * coverLead // of the first line over the middle
	y, half := g.View.ToPx(at).Y/s.PxPerPoint, float64(above+high/2)
	held := max(half, min(y, float64(s.Height)/s.PxPerPoint-half)) // within a small picture
	for i, text := range lines {
		p.tag(g, fmt.Sprintf("cover.text.%d", i), canvas.On(at), canvas.Points(held-y)+canvas.Points(i)*coverLead-above, text)
	}
}

// middle says who takes the middle; a picture without a rally knows no names.
func (p Picture) middle(c cover.Map) string {
	owner, one := c.MiddleOwner()
	switch {
	case !one:
		return words.T("the middle shared")
	case p.Rally == nil:
		return words.T("the middle %s's", owner)
	}
	return words.T("the middle %s's", p.Rally.NameOf(owner))
}

// openDisc draws the largest open disc with its size; nothing if all is covered.
func (p Picture) openDisc(g *canvas.Panel, c cover.Map, room *labelRoom) {
	d, ok := c.Open()
	if !ok {
		return
	}
	text := words.T("open %s", words.Length(2*d.Radius))
	g.Add(canvas.Shape{
		ID: "cover.disc", Label: words.T("largest open disc, %s across", words.Length(2*d.Radius)), Layer: canvas.Runs,
		Path:  canvas.Circle(canvas.On(d.Centre), canvas.Ft(d.Radius)),
		Style: canvas.Style{Stroke: p.look().Ink, Width: canvas.Pts(look.Outline), Dash: []canvas.Points{6, 4}},
	})
	_, high := tagSize(text)
	if at, ok := room.about(d.Centre, d.Radius+feet(high)*room.perPoint, text); ok {
		p.tag(g, "cover.disc.text", canvas.On(at), 0, text)
	}
}

// crossedStep is how often it is asked where the pair is while the ball comes.
const crossedStep units.Seconds = 0.2

// crossed are the places of the pair from the strike until the next one: the cover
// stands on the court as long.
func (p Picture) crossed(c cover.Map) (places []court.Point) {
	if p.Rally == nil {
		return nil
	}
	for i, st := range p.Rally.Strokes {
		if st.By.Team() == c.Team() || p.Rally.At(st.At).Ball.Ground() != c.Strike.From {
			continue
		}
		to := p.Rally.To
		if i+1 < len(p.Rally.Strokes) {
			to = p.Rally.Strokes[i+1].At
		}
		for t := st.At; t <= to; t += crossedStep {
			f := p.Rally.At(t)
			for number := range c.Strike.Players {
				places = append(places, f.Players[game.PlayerOf(c.Team(), number+1)].Run.Place)
			}
		}
	}
	return places
}

// contact is a cross where the opponent strikes.
func (p Picture) contact(g *canvas.Panel, at court.Point) {
	q := canvas.On(at)
	g.Add(canvas.Shape{
		ID: "cover.contact", Label: words.T("the ball is struck here"), Layer: canvas.Runs,
		Path: canvas.Path{}.Move(q.Shift(-crossHalf, -crossHalf)).Line(q.Shift(crossHalf, crossHalf)).
			Move(q.Shift(-crossHalf, crossHalf)).Line(q.Shift(crossHalf, -crossHalf)),
		Style: canvas.Style{Stroke: p.look().Ink, Width: canvas.Pts(look.Outline), Round: true},
	})
}
