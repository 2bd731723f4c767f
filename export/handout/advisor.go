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

// chartHeight is that of the chart in points.
const chartHeight = 220.0

func (s advisor) print() error {
	l := s.leaf(head{s.play.rally.Play.Title, words.Situation(s.lesson, s.play.rally.Play)})
	width := l.right - l.left
	who := s.play.rally.NameOf(s.play.rally.Strokes[1].By)
	answer, err := s.ask.Answer(s.depth, s.apex)
	if err != nil {
		return err
	}
	y := l.block(l.left, l.top, s.lines(s.name(), words.Struck(s.lesson, 1, s.play.rally.Strokes[1].By), width, headStyle, 1), headStyle)
	y = l.block(l.left, y, s.lines(s.name(), words.ReturnAdvice(answer, who, words.AllNumbers), width, bodyStyle, 6), bodyStyle) + 8
	y = l.block(l.left, y, s.lines(s.name(), words.ChartTitle(who), width, headStyle, 2), headStyle) + 2
	if err := s.chart(l, y, width); err != nil {
		return err
	}
	y += chartHeight + 6
	y = l.block(l.left, y, s.lines(s.name(), words.ChartReads(), width, quietStyle, 3), quietStyle) + 10
	s.table(l, y, width)
	return nil
}

func (s advisor) name() string { return words.T("Play %d", s.play.number) }

func (s advisor) chart(l *leaf, y, width float64) error {
	c, err := s.ask.Chart(nil, nil)
	if err != nil {
		return err
	}
	chart := compose.MarginsOf(c, s.depth, s.apex)
	chart.Width, chart.Height, chart.PxPerPoint = int(width), chartHeight, 1
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

// table says how high a return of each depth has to be for whom.
func (s advisor) table(l *leaf, y, width float64) {
	y = l.block(l.left, y, s.lines(s.name(), words.HeightsTitle(), width, headStyle, 2), headStyle)
	y = l.block(l.left, y, s.lines(s.name(), words.HeightsRead(s.ask.Start.Distance(s.ask.Target), advice.MostApex), width, quietStyle, 3), quietStyle) + 4
	first := width * 0.34
	column := (width - first) / float64(len(depths))
	at := func(i int) float64 { return l.left + first + column*(float64(i)+0.5) }
	l.text(l.left, y+9, canvas.Start, words.T("lands inside the baseline by"), boldStyle)
	for i, d := range depths {
		l.text(at(i), y+9, canvas.Centre, words.FeetInches(d), boldStyle)
	}
	y += tableHead
	people, usual := s.movers()
	for i, m := range append(people, usual...) {
		thick := 0.4
		if i == len(people) {
			thick = 1.2
		}
		l.line(l.left, y-2, l.right, y-2, thick)
		l.text(l.left, y+9, canvas.Start, s.fit(s.name(), m.name, first-4, bodyStyle), bodyStyle)
		s.heights(l, y, m, at)
		y += tableRow + 1
	}
}

// heights are a row's cells; what is too much to ask has a grey ground as well.
func (s advisor) heights(l *leaf, y float64, m mover, at func(int) float64) {
	ask := s.ask
	ask.Pace = m.pace
	half := (at(1)-at(0))/2 - 1
	for i, d := range depths {
		apex, ok := ask.Needed(d)
		if ok && apex <= advice.MostApex {
			l.text(at(i), y+9, canvas.Centre, words.FeetInches(apex), bodyStyle)
			continue
		}
		l.box(at(i)-half, y-1, at(i)+half, y+tableRow-2, canvas.Style{Fill: look.Daylight.Surface})
		l.text(at(i), y+9, canvas.Centre, words.T("do not stack"), quietStyle)
	}
}
