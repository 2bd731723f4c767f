package page

import (
	"html/template"
	"slices"
	"strconv"
	"strings"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/export/still"
	"homeside/model/advice"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Scale of the drawing: units of the SVG, which a screen then fits to itself.
const (
	pxPerFoot  = 10
	pxPerPoint = 1.25 // as a phone's width of 360 points shows some 46 ft
	feetRound  = 4    // ft of paper and gaps beside the surface
	footPoints = 46   // of the layout's caption, which the page says itself
)

// stage is a play's drawing.
type stage struct {
	lesson lesson.Lesson
	rally  *rally.Rally
	drawn  compose.Picture
	night  compose.Picture // the same in the dark
	layout compose.Layout
	cross  []advice.Approach // where partners have to agree who goes in front
}

func newStage(l lesson.Lesson, r *rally.Rally) stage {
	surface, rise := l.Venue.Surface(), compose.RiseOf(r)
	width := int(float64(surface.Width()+rise+feetRound) * pxPerFoot)
	height := int(float64(surface.Height()+2)*pxPerFoot + footPoints*pxPerPoint)
	p := compose.Of(r, surface, canvas.Upright)
	p.Show.NoGhosts = true
	s := stage{lesson: l, rally: r, layout: compose.ForWindow(width, height, canvas.Upright, surface, rise, pxPerPoint), cross: advice.PathsCross(r)}
	for _, a := range s.cross {
		p.Findings = append(p.Findings, a.Finding())
	}
	s.drawn, s.night = p, p
	s.night.Look = &look.Night
	return s
}

// picture is a play's SVG: parts that the script moves and shows.
type picture struct {
	Number        int
	Title         string
	Width, Height int
	Static        template.HTML
	Parts         []part
}

// part is a group of the drawing that is moved, turned or shown by its name.
type part struct {
	Name  string
	Class string
	Body  template.HTML
}

func (s stage) picture(f *still.Fragments, number int) picture {
	d := drawing{f: f, stage: s}
	height := int(s.layout.Caption.Min.Y)
	p := picture{Number: number, Title: s.rally.Play.Title, Width: s.layout.Width, Height: height}
	p.Static = d.part("", scenes{s.drawn.StaticIn(s.layout), s.night.StaticIn(s.layout)}, func(canvas.Info) bool { return true }).Body
	p.Parts = d.moving()
	return p
}

// drawing makes parts of a stage.
type drawing struct {
	f     *still.Fragments
	stage stage
}

// scenes are one moment by day and in the dark.
type scenes struct{ day, night *canvas.Scene }

func (d drawing) part(name string, s scenes, want func(canvas.Info) bool) part {
	return part{Name: name, Body: template.HTML(d.f.Draw(s.day, s.night, want))} // of our own writer, which escapes labels
}

func (d drawing) at(t units.Seconds) scenes {
	s := d.stage
	return scenes{s.drawn.MovingIn(s.layout, t), s.night.MovingIn(s.layout, t)}
}

// moving are the parts that move, drawn as at the start, from the ground up.
func (d drawing) moving() []part {
	var all []part
	for i := range d.stage.rally.Strokes {
		all = append(all, d.shot(i)...)
	}
	start := d.at(d.stage.rally.From)
	all = append(all, d.part("shadow", start, is(compose.CourtPanel, "shadow")))
	for _, id := range game.Players {
		all = append(all, d.player(start, id)...)
	}
	all = append(all, d.part("ball", start, is(compose.CourtPanel, "ball")), d.part("high", start, is(compose.HeightPanel, "ball")))
	return append(append(all, d.live()...), d.crossings()...)
}

// crossings are the signs where paths cross, with their numbers from 1.
func (d drawing) crossings() []part {
	var all []part
	for i, a := range d.stage.cross {
		sign := "finding." + strconv.Itoa(i+1)
		all = append(all, d.part("cross"+strconv.Itoa(i), d.at(a.When), is(compose.CourtPanel, sign, sign+".number")))
	}
	return all
}

// shot is what is shown while a shot is in play: its path, its flight from the
// side with its figures.
func (d drawing) shot(i int) []part {
	at := d.at(d.stage.rally.Strokes[i].At)
	name := "shot" + strconv.Itoa(i)
	path := d.part(name, at, is(compose.CourtPanel, "ball.now"))
	side := d.part(name+"s", at, func(info canvas.Info) bool {
		return info.Panel == compose.HeightPanel && info.ID != "ball" && info.ID != compose.ApexHandle
	})
	return []part{path, side}
}

// player is the disc, which stays upright, over the paddle and the notch, which
// turn.
func (d drawing) player(start scenes, id game.Player) []part {
	shape := compose.PlayerShape(id)
	turns := []string{shape + ".paddle", shape + ".notch"}
	return []part{
		d.part(id.String()+"r", start, is(compose.CourtPanel, shape+".ring")),
		d.part(id.String()+"t", start, is(compose.CourtPanel, turns...)),
		d.part(id.String(), start, is(compose.CourtPanel, shape, shape+".initials")),
	}
}

func is(panel string, ids ...string) func(canvas.Info) bool {
	return func(info canvas.Info) bool { return info.Panel == panel && slices.Contains(ids, info.ID) }
}

// live are the marks and signals, each drawn as when it begins.
func (d drawing) live() []part {
	r := d.stage.rally
	var all []part
	for _, l := range d.stage.lives() {
		name := l.Part
		dot := strings.Replace(name, "-", ".", 1)
		all = append(all, d.part(name, d.at(max(l.From, r.From)), func(info canvas.Info) bool {
			return info.Panel == compose.CourtPanel && (info.ID == dot || strings.HasPrefix(info.ID, dot+"."))
		}))
	}
	return all
}

// ballRadius in the drawing's units at the ground.
const ballRadius = float64(look.BallRadius) * pxPerPoint
