package handout

import (
	"context"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

func conesTitle() string { return words.T("Cone sheet") }

func conesAbout() string {
	return words.T("Every place measured from the lines, with a court to scale: put the cones out and walk it.")
}

// coneSheet is every place of every play.
func coneSheet(ctx context.Context, b *book, j job) error {
	for i, p := range j.plays {
		if err := ctx.Err(); err != nil {
			return err
		}
		c := &coneList{book: b, play: p}
		c.spots, c.events = spotsOf(p.rally)
		c.print()
		j.progress(i+1, len(j.plays))
	}
	return nil
}

// spot is a place where a player is at one or more events.
type spot struct {
	number int
	player game.Player
	place  court.Point
}

// samePlace is how near two places are that get one cone: half an inch, to
// which the measures are rounded.
var samePlace = units.Inches(0.5)

// when is one event: which cone each player is at, by game.Player.
type when struct {
	event rally.Event
	at    [4]int
}

// spotsOf are the places of all players at all events, player by player.
func spotsOf(r *rally.Rally) (all []spot, events []when) {
	for _, e := range r.Events {
		if e.Reached && e.Name.Moment != lesson.Net {
			events = append(events, when{event: e})
		}
	}
	for _, id := range game.Players {
		first := len(all)
		for i, w := range events {
			at := r.At(w.event.At).Players[id].Run.Place
			k := first
			for k < len(all) && all[k].place.Distance(at) >= samePlace {
				k++
			}
			if k == len(all) {
				all = append(all, spot{k + 1, id, at})
			}
			events[i].at[id] = k + 1
		}
	}
	return all, events
}

// coneList is the cone sheet of one play.
type coneList struct {
	*book
	play   solved
	spots  []spot
	events []when
	shown  court.Rect
}

// scales are those that a court may be drawn to, the largest first.
var scales = []float64{125, 150, 200, 250, 300, 400, 500, 750, 1000, 2000}

// footPoints is the length of a foot on paper at a scale, in points.
func footPoints(scale float64) float64 { return points(units.Feet(1).Metres()) / scale }

// scale is the largest at which the court fits a room.
func (c *coneList) scale(width, height float64) float64 {
	for _, s := range scales {
		if float64(c.shown.Width())*footPoints(s) <= width && float64(c.shown.Height())*footPoints(s) <= height {
			return s
		}
	}
	return scales[len(scales)-1]
}

// coneRoom is what is shown beyond the court and beyond the outermost cone.
const coneRoom units.Feet = 2

func (c *coneList) print() {
	c.shown = court.Bounds.Grow(3)
	for _, s := range c.spots {
		at := court.RectOf(s.place, s.place).Grow(coneRoom)
		c.shown = court.RectOf(court.Pt(min(c.shown.Min.X, at.Min.X), min(c.shown.Min.Y, at.Min.Y)), court.Pt(max(c.shown.Max.X, at.Max.X), max(c.shown.Max.Y, at.Max.Y)))
	}
	h := c.headOf(c.play.rally)
	l := c.leaf(h)
	l.top = l.block(l.left, l.top-4, c.lines(c.name(), words.ConesMeasured(), l.right-l.left, quietStyle, 0), quietStyle) + 6
	x := c.court(l)
	c.list(l, x, h)
}

func (c *coneList) name() string { return words.T("Play %d", c.play.number) }

// court draws the court to scale at the left and gives where the room beside it begins.
func (c *coneList) court(l *leaf) float64 {
	scale := c.scale((l.right-l.left)*0.5, l.room(l.top)-scaleRoom-c.tableHeight())
	foot := footPoints(scale)
	w, h := float64(c.shown.Width())*foot, float64(c.shown.Height())*foot
	view := canvas.Fit(c.shown, canvas.Upright, canvas.Px{}, canvas.Px{X: w, Y: h})
	at := compose.Layout{Width: int(w), Height: int(h), PxPerPoint: 1, Court: view}
	cones := make([]compose.Cone, len(c.spots))
	for i, s := range c.spots {
		cones[i] = compose.Cone{Number: s.number, Place: s.place, Team: s.player.Team()}
	}
	pic := compose.Of(c.play.rally, c.shown, canvas.Upright)
	l.pictures = append(l.pictures, picture{pic.Cones(at, cones), canvas.Px{X: l.left, Y: l.top}})
	c.bar(l, l.top+h+scaleRoom/2, scale)
	c.table(l, l.top+h+scaleRoom, w)
	return l.left + w + gutter
}

// scaleRoom is the height of the bar that shows the scale.
const scaleRoom = 26.0

// bar is 10 ft and 3 m at a scale.
func (c *coneList) bar(l *leaf, y, scale float64) {
	end := l.left + 10*footPoints(scale)
	l.line(l.left, y, end, y, 1.2)
	for i := 0; i <= 10; i += 5 {
		x := l.left + float64(i)*footPoints(scale)
		l.line(x, y-3, x, y+3, 1.2)
	}
	l.text(end+6, y+3, canvas.Start, words.T("10 ft, scale 1:%s", strconv.FormatFloat(scale, 'f', -1, 64)), quietStyle)
}

// Rows of the table of events.
const (
	tableRow  = 13.0
	tableHead = 15.0
)

func (c *coneList) tableHeight() float64 { return tableHead + tableRow*float64(len(c.events)) }

// table says which cone each player is at when.
func (c *coneList) table(l *leaf, y, width float64) {
	first := c.eventWidth(width)
	column := (width - first) / 4
	middle := func(id game.Player) float64 { return l.left + first + column*(float64(id)+0.5) }
	for _, id := range game.Players {
		name := c.lesson.NameOf(id)
		if boldStyle.width(name) > column-2 {
			name = c.lesson.Player(id).Letters() // as on the disc; the list has the name
		}
		l.text(middle(id), y+9, canvas.Centre, name, boldStyle)
	}
	y += tableHead
	for _, w := range c.events {
		l.line(l.left, y-2, l.left+width, y-2, 0.4)
		l.text(l.left, y+9, canvas.Start, c.fit(c.name(), words.EventName(w.event.Name), first, bodyStyle), bodyStyle)
		for _, id := range game.Players {
			l.text(middle(id), y+9, canvas.Centre, strconv.Itoa(w.at[id]), boldStyle)
		}
		y += tableRow
	}
}

// eventWidth is the width of the column with the events' names in a table: that of
// the longest, within bounds that leave room for the players.
func (c *coneList) eventWidth(width float64) float64 {
	const least, most = 0.44, 0.62
	longest := 0.0
	for _, w := range c.events {
		longest = max(longest, bodyStyle.width(words.EventName(w.event.Name)))
	}
	return min(max(longest+2, width*least), width*most)
}

// entry is one cone in words.
type entry struct {
	spot  spot
	lines []string // the measure
	quiet []string // the same in metres
}

const entryGap = 3.0

func (e entry) height() float64 {
	return float64(len(e.lines))*bodyStyle.lead + float64(len(e.quiet))*quietStyle.lead + entryGap
}

// list writes the cones, player by player, beside the court and on pages of two
// columns after it.
func (c *coneList) list(l *leaf, x float64, h head) {
	y, right := l.top, l.right
	var last *game.Player
	for _, s := range c.spots {
		e := c.entry(s, right-x)
		need := e.height()
		if last == nil || *last != s.player {
			need += headStyle.lead
		}
		if l.room(y) < need {
			l, x, right, y = c.next(l, x, right, h)
			e = c.entry(s, right-x)
			last = nil
		}
		if last == nil || *last != s.player {
			y = l.block(x, y, []string{c.fit(c.name(), c.lesson.NameOf(s.player), right-x, headStyle)}, headStyle)
			last = &s.player
		}
		y = c.write(l, x, y, e)
	}
}

// next is the next column: beside the last one, or on a new page.
func (c *coneList) next(l *leaf, x, right float64, h head) (*leaf, float64, float64, float64) {
	middle := (l.left + l.right + gutter) / 2
	if right < l.right {
		return l, middle, l.right, l.top
	}
	l = c.leaf(h)
	return l, l.left, middle - gutter, l.top
}

func (c *coneList) entry(s spot, width float64) entry {
	room := width - badgeWidth - 2
	return entry{
		spot:  s,
		lines: c.lines(c.name(), words.Cone(s.player.Team(), s.place), room, bodyStyle, 0),
		quiet: []string{words.ConeMetres(s.player.Team(), s.place)},
	}
}

func (c *coneList) write(l *leaf, x, y float64, e entry) float64 {
	l.badge(x+7, y+6, strconv.Itoa(e.spot.number))
	below := l.block(x+badgeWidth+2, y, e.lines, bodyStyle)
	return l.block(x+badgeWidth+2, below, e.quiet, quietStyle) + entryGap
}
