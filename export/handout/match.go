package handout

import (
	"context"
	"errors"
	"fmt"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/plan"
	"homeside/model/rally"
	"homeside/model/roster"
	"homeside/words"
)

func matchTitle() string { return words.T("Match cards") }

func matchAbout() string {
	return words.T("A card for each pair that folds to pocket size: where each stands at an even and an odd score, and the signals.")
}

// A card is as wide as a visiting card and folds to the height of one: two
// columns and two rows fit on both papers.
const (
	cardWidthMM  = 89.0
	cardHeightMM = 97.0
	cardsOnPage  = 4
)

// matchCards are cards for pairs, four on a page.
func matchCards(ctx context.Context, b *book, j job) error {
	cards, err := cardsOf(ctx, b.lesson, j)
	if err != nil {
		return err
	}
	for len(cards) <= cardsOnPage/2 { // then each partner has one
		cards = append(cards, cards...)
	}
	h := head{title: words.T("Cards for the pocket"), sentence: words.CardsFold()}
	var l *leaf
	width := mm(cardWidthMM)
	height := 0.0
	for i, c := range cards {
		if i%cardsOnPage == 0 {
			l = b.leaf(h)
			l.left = (l.left + l.right - 2*width) / 2
			height = min(mm(cardHeightMM), l.room(l.top)/2)
		}
		x, y := l.left+float64(i%2)*width, l.top+float64(i%cardsOnPage/2)*height
		c.print(b, l, x, y, height)
	}
	return nil
}

// card is a pair's game on a card.
type card struct {
	pair   plan.Pair
	rows   []cardRow
	refuse string // why there is no plan for the pair; empty if there is one
}

// cardRow is a situation of the game.
type cardRow struct {
	plan.Row
	rally *rally.Rally // what the pair then does
}

func cardsOf(ctx context.Context, l lesson.Lesson, j job) ([]card, error) {
	pairs, starters := j.pairs, []int{}
	if pairs == nil {
		for _, e := range court.Ends {
			pairs = append(pairs, roster.PairOf(l, e))
			starters = append(starters, l.Team(e).StarterOf(e).Number())
		}
	}
	var cards []card
	for i, p := range pairs {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		starter := 1
		if i < len(starters) {
			starter = starters[i]
		}
		c, err := cardOf(l, p, starter)
		if err != nil {
			return nil, err
		}
		cards = append(cards, c)
		j.progress(i+1, len(pairs))
	}
	return cards, nil
}

// cardOf plans the pair's game against nobody in particular: full stacking, since
// a card tells where to stand and not whether it is worth it.
func cardOf(l lesson.Lesson, p roster.Pair, starter int) (card, error) {
	l.Teams[court.Far] = lesson.Team{} // Teams is an array: l is a copy
	l = p.In(l, court.Near)
	l.Teams[court.Near].Starter = starter
	l.Match = lesson.Match{}
	c := card{pair: plan.Pair{Lesson: l, Team: court.Near, Policy: plan.Full()}}
	start, err := l.Settings().Start()
	if err != nil {
		return card{}, err
	}
	seen := drawings{}
	planned, err := plan.Of(start, c.pair, plan.Chances{0.5, 0.5}, seen) // the chances matter to no card
	switch {
	case errors.Is(err, plan.ErrWants):
		c.refuse = words.CardClash(p)
		return c, nil
	case err != nil:
		return card{}, fmt.Errorf("a card for %s: %w", words.Pair(p), err)
	}
	for _, r := range planned.Rows {
		c.rows = append(c.rows, cardRow{r, seen[drawing{r.Serving, r.Lead, r.From, r.Formation}]})
	}
	return c, nil
}

// drawing is what decides where a pair stands.
type drawing struct {
	serving bool
	lead    game.Player
	from    court.Side
	what    lesson.Formation
}

// drawings are plays written for a pair's situations. They tell what a formation
// costs, and are drawn.
type drawings map[drawing]*rally.Rally

// Effort implements plan.Efforts.
func (d drawings) Effort(p plan.Pair, s game.State, f lesson.Formation) (plan.Effort, error) {
	sit := formation.Situation{Lesson: p.At(s), State: s, Team: p.Team}
	w, err := formation.Write(sit, f)
	if err != nil {
		return plan.Effort{}, fmt.Errorf("%v at %v: %w", f, s.Call(), err)
	}
	d[drawing{sit.Serves(), sit.Lead(), s.SideOf(sit.Lead()), f}] = w.Rally
	var e plan.Effort
	for _, m := range w.Margins {
		if e.Margin == nil || m < *e.Margin {
			e.Margin = &m
		}
	}
	return e, nil
}

// Parts of a card in points.
const (
	cardPad     = 7.0
	cardHead    = 14.0
	parityWidth = 32.0
	glyphWidth  = 46.0
	glyphScale  = 0.52 // of discs and words, of a phone's
	fullRows    = 4    // of a half, that have a picture
)

func (c card) print(b *book, l *leaf, x, y, h float64) {
	w := mm(cardWidthMM)
	l.box(x, y, x+w, y+h, canvas.Style{Stroke: ink, Width: canvas.Pts(0.8)})
	l.line(x, y+h/2, x+w, y+h/2, 0.7, 4, 3)
	name := words.PairTitle(roster.PairOf(c.pair.Lesson, court.Near))
	if c.refuse != "" {
		l.block(x+cardPad, y+cardPad, b.lines(name, name, w-2*cardPad, headStyle, 2), headStyle)
		l.block(x+cardPad, y+h/2+cardPad, b.lines(name, c.refuse, w-2*cardPad, bodyStyle, 9), bodyStyle)
		b.note(c.refuse)
		return
	}
	c.half(b, l, x, y, h/2, true, name)
	c.half(b, l, x, y+h/2, h/2, false, name)
}

// half is one face of the folded card.
func (c card) half(b *book, l *leaf, x, y, h float64, serving bool, name string) {
	w, bottom := mm(cardWidthMM)-2*cardPad, y+h-4
	x += cardPad
	title, foot := words.T("We receive"), words.CardSignals(c.pair.Lesson.Team(court.Near).Signs)
	if serving {
		starter := c.pair.Lesson.Team(court.Near).StarterOf(court.Near)
		title, foot = words.T("We serve"), words.CardStarter(c.pair.Lesson.NameOf, starter)
		if bodyStyle.width(foot) > w {
			foot = words.CardStarter(c.initials, starter)
		}
	}
	l.text(x, y+14, canvas.Start, title, headStyle)
	room := w - headStyle.width(title) - 12
	l.text(x+w, y+14, canvas.Finish, b.fit(name, name, room, quietStyle), quietStyle)
	l.text(x, bottom-2, canvas.Start, b.fit(name, foot, w, bodyStyle), bodyStyle)
	top := y + cardHead + 4
	rows := c.of(serving)
	each := (bottom - bodyStyle.lead - top) / float64(max(len(rows), fullRows))
	for i, r := range rows {
		c.row(b, l, x, top+float64(i)*each, w, each, r, len(rows) <= fullRows)
	}
}

// initials are a player's, as on the pictures.
func (c card) initials(id game.Player) string { return c.pair.Lesson.Player(id).Letters() }

// of are the situations of serving or receiving.
func (c card) of(serving bool) (rows []cardRow) {
	for _, r := range c.rows {
		if r.Serving == serving {
			rows = append(rows, r)
		}
	}
	return rows
}

// row is a line of the card, with a picture where there is room.
func (c card) row(b *book, l *leaf, x, y, w, h float64, r cardRow, pictured bool) {
	what := words.PairTitle(roster.PairOf(c.pair.Lesson, court.Near))
	l.line(x, y, x+w, y, 0.4)
	left := x + parityWidth + glyphWidth + 5
	room := x + w - left
	if !pictured {
		c.compact(b, l, x, y, w, r)
		return
	}
	does, ends := words.CardRow(c.pair.Lesson.NameOf, r.Row)
	if boldStyle.width(does) > room || bodyStyle.width(ends) > room {
		does, ends = words.CardRow(c.initials, r.Row)
	}
	l.text(x, y+h/2+3.5, canvas.Start, words.ParityShort(r.Score), boldStyle)
	if r.rally != nil {
		c.glyph(l, x+parityWidth, y+1.5, h-3, r)
	}
	l.text(left, y+10, canvas.Start, b.fit(what, does, room, boldStyle), boldStyle)
	l.text(left, y+21, canvas.Start, b.fit(what, ends, room, bodyStyle), bodyStyle)
}

// compact is a row without a picture, on one line.
func (c card) compact(b *book, l *leaf, x, y, w float64, r cardRow) {
	var text string
	for _, name := range []words.Naming{c.pair.Lesson.NameOf, c.initials} {
		does, ends := words.CardRow(name, r.Row)
		if text = words.ParityShort(r.Score) + " " + does + "; " + ends; bodyStyle.width(text) <= w {
			break
		}
	}
	l.text(x, y+10, canvas.Start, b.fit(words.PairTitle(roster.PairOf(c.pair.Lesson, court.Near)), text, w, bodyStyle), bodyStyle)
}

// glyph is a small picture of where the pair stands and goes: on the serve the
// baseline until the return bounces, on the return the whole half.
func (c card) glyph(l *leaf, x, y, h float64, r cardRow) {
	shown, end := court.RectOf(court.Pt(-15, -29), court.Pt(15, -3)), r.rally.To
	if r.Serving {
		shown = court.RectOf(court.Pt(-11, -27), court.Pt(11, -16))
		end = r.rally.TimeAt(lesson.At(lesson.Event{Shot: 1, Moment: lesson.Bounce}))
	}
	view := canvas.Fit(shown, canvas.Upright, canvas.Px{}, canvas.Px{X: glyphWidth, Y: h})
	at := compose.Layout{Width: glyphWidth, Height: int(h), PxPerPoint: glyphScale, Court: view}
	pic := compose.Of(r.rally, shown, canvas.Upright)
	l.pictures = append(l.pictures, picture{pic.Places(at, court.Near, 0, end), canvas.Px{X: x, Y: y}})
}
