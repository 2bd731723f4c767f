package handout

import (
	"context"
	"errors"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/model/advice"
	"homeside/model/game"
	"homeside/model/movement"
	"homeside/model/units"
	"homeside/words"
)

func advisorTitle() string { return words.T("Return advisor") }

func advisorAbout() string {
	return words.T("How much time a return buys, and how high and deep each player has to hit it.")
}

// ErrNoReturn marks plays of which none has a return to advise on.
var ErrNoReturn = errors.New("none of the plays has a return")

// advisorSheet is a page for each play with a return.
func advisorSheet(ctx context.Context, b *book, j job) error {
	for i, p := range j.plays {
		if err := ctx.Err(); err != nil {
			return err
		}
		if a, depth, apex, ok := advice.AdvisorOf(p.rally); ok {
			s := advisor{b, p, a, depth, apex}
			if err := s.print(); err != nil {
				return err
			}
		}
		j.progress(i+1, len(j.plays))
	}
	if len(b.leaves) == 0 {
		return ErrNoReturn
	}
	return nil
}

// advisor is the page of one play's return.
type advisor struct {
	*book
	play        solved
	ask         advice.Advisor
	depth, apex units.Feet // of the play's return
}

// The heights of the chart in points: the table below it comes first.
const (
	leastChart = 120.0
	mostChart  = 240.0
)

func (s advisor) print() error {
	h := s.headOf(s.play.rally)
	l := s.leaf(h)
	width := l.right - l.left
	who := s.play.rally.NameOf(s.play.rally.Strokes[1].By)
	answer, err := s.ask.Answer(s.depth, s.apex)
	if err != nil {
		return err
	}
	y := l.block(l.left, l.top, s.lines(s.name(), words.Struck(s.lesson, 1, s.play.rally.Strokes[1].By), width, headStyle, 1), headStyle)
	y = l.block(l.left, y, s.lines(s.name(), words.ReturnAdvice(answer, who, words.AllNumbers), width, bodyStyle, 6), bodyStyle) + 8
	y = l.block(l.left, y, s.lines(s.name(), words.ChartTitle(who), width, headStyle, 2), headStyle) + 2
	reads := s.lines(s.name(), words.ChartReads(), width, quietStyle, 3)
	height := l.room(y) - 16 - float64(len(reads))*quietStyle.lead
	if below := height - s.tableHeight(width); below >= leastChart {
		height = below // else the table goes to the next page
	}
	height = min(height, mostChart)
	if err := s.chart(l, y, width, height); err != nil {
		return err
	}
	y += height + 6
	y = l.block(l.left, y, reads, quietStyle) + 10
	if l.room(y) < s.tableHeight(width) {
		l = s.leaf(h)
		y = l.top
	}
	s.table(l, y, width)
	return nil
}

func (s advisor) name() string { return words.T("Play %d", s.play.number) }

func (s advisor) chart(l *leaf, y, width, height float64) error {
	c, err := s.ask.Chart(nil, nil)
	if err != nil {
		return err
	}
	chart := compose.MarginsOf(c, s.depth, s.apex)
	chart.Width, chart.Height, chart.PxPerPoint = int(width), int(height), 1
	l.pictures = append(l.pictures, picture{chart.Scene(), canvas.Px{X: l.left, Y: y}})
	return nil
}

// depths are the columns of the table: how far inside the baseline a return lands.
var depths = []units.Feet{1, 3, 6, 10, 14}

// mover is a row of the table.
type mover struct {
	name string
	pace movement.Pace
}

// movers are the players with their own paces, then the usual paces.
func (s advisor) movers() (people, usual []mover) {
	for _, id := range game.Players {
		p := s.play.rally.Player(id)
		people = append(people, mover{s.play.rally.NameOf(id), p.Legs()})
	}
	for _, p := range movement.Presets {
		usual = append(usual, mover{words.PaceName(p), p.Pace})
	}
	return people, usual
}

// intro is what stands over the table.
func (s advisor) intro(width float64) []string {
	return s.lines(s.name(), words.HeightsRead(s.ask.Start.Distance(s.ask.Target), advice.MostApex), width, quietStyle, 3)
}

func (s advisor) tableHeight(width float64) float64 {
	rows := len(game.Players) + len(movement.Presets)
	return headStyle.lead + float64(len(s.intro(width)))*quietStyle.lead + 4 + tableHead + (tableRow+1)*float64(rows)
}

// table says how high a return of each depth has to be for whom.
func (s advisor) table(l *leaf, y, width float64) {
	y = l.block(l.left, y, s.lines(s.name(), words.HeightsTitle(), width, headStyle, 1), headStyle)
	y = l.block(l.left, y, s.intro(width), quietStyle) + 4
	first := width * 0.34
	column := (width - first) / float64(len(depths))
	at := func(i int) float64 { return l.left + first + column*(float64(i)+0.5) }
	l.text(l.left, y+9, canvas.Start, words.T("lands inside the baseline by"), boldStyle)
	for i, d := range depths {
		l.text(at(i), y+9, canvas.Centre, words.FeetInches(d), boldStyle)
	}
	y += tableHead
	people, usual := s.movers()
	known := map[movement.Pace][]string{}
	for i, m := range append(people, usual...) {
		thick := 0.4
		if i == len(people) {
			thick = 1.2
		}
		l.line(l.left, y-2, l.right, y-2, thick)
		l.text(l.left, y+9, canvas.Start, s.fit(s.name(), m.name, first-4, bodyStyle), bodyStyle)
		if known[m.pace] == nil {
			known[m.pace] = s.heights(m.pace)
		}
		heightCells(l, y, known[m.pace], at)
		y += tableRow + 1
	}
}

// heights are how high a return of each depth has to be for a pace; empty where
// that is too much to ask.
func (s advisor) heights(pace movement.Pace) []string {
	ask := s.ask
	ask.Pace = pace
	all := make([]string, len(depths))
	for i, d := range depths {
		if apex, ok := ask.Needed(d); ok && apex <= advice.MostApex {
			all[i] = words.FeetInches(apex)
		}
	}
	return all
}

// heightCells are a row's cells; what is too much to ask has a grey ground as well.
func heightCells(l *leaf, y float64, heights []string, at func(int) float64) {
	half := (at(1)-at(0))/2 - 1
	for i, height := range heights {
		if height != "" {
			l.text(at(i), y+9, canvas.Centre, height, bodyStyle)
			continue
		}
		l.box(at(i)-half, y-1, at(i)+half, y+tableRow-2, canvas.Style{Fill: look.Daylight.Surface})
		l.text(at(i), y+9, canvas.Centre, words.T("do not stack"), quietStyle)
	}
}
