package handout

import (
	"context"
	"strconv"
	"strings"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export/captions"
	"homeside/model/advice"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

func storyboardTitle() string { return words.T("Storyboard") }

func storyboardAbout() string {
	return words.T("A court for every event: what is said, who moves and how far.")
}

// storyboard is a court for every event of every play.
func storyboard(ctx context.Context, b *book, j job) error {
	for i, p := range j.plays {
		if err := ctx.Err(); err != nil {
			return err
		}
		newStory(b, p).print()
		j.progress(i+1, len(j.plays))
	}
	return nil
}

// moment is one picture of a story.
type moment struct {
	since, at units.Seconds
	title     string
	said      []string // captions and signals that begin here
	moves     []string
}

// story is the storyboard of one play. Its courts lie: so most of them fit on a
// page.
type story struct {
	*book
	play    solved
	moments []moment
	columns int
	scale   float64 // of discs and words on a court, of a phone's
	width   float64 // of a column
	shown   court.Rect
}

func newStory(b *book, p solved) *story {
	s := &story{book: b, play: p, columns: 3, scale: 0.7}
	s.moments = momentsOf(b.lesson, p.rally)
	s.shown = extentOf(p.rally)
	if len(s.moments) <= 6 { // two columns of three fill a page
		s.columns, s.scale = 2, 0.9
	}
	return s
}

// momentsOf are the contacts and bounces that come to pass, and the end.
func momentsOf(l lesson.Lesson, r *rally.Rally) []moment {
	var all []moment
	since := r.From
	for _, e := range r.Events {
		if !e.Reached || e.Name.Moment == lesson.Net {
			continue
		}
		m := moment{since: since, at: e.At, title: eventTitle(l, r, e)}
		for _, id := range game.Players {
			if _, length := compose.Ran(r, id, since, e.At); length >= units.Inches(0.5) {
				m.moves = append(m.moves, words.Moves(l, id, length))
			}
		}
		all = append(all, m)
		since = e.At
	}
	for _, c := range captions.Of(l, r).Cues {
		at := 0
		for i, m := range all {
			if m.at <= c.From {
				at = i
			}
		}
		all[at].said = append(all[at].said, c.Text)
	}
	return all
}

// eventTitle says what happens: "Serve by Tobin".
func eventTitle(l lesson.Lesson, r *rally.Rally, e rally.Event) string {
	switch e.Name.Moment {
	case lesson.Contact:
		return words.Struck(l, e.Name.Shot, r.Strokes[e.Name.Shot].By)
	case lesson.Bounce:
		return strings.TrimRight(words.Bounces(e.Name.Shot), ".")
	}
	if r.Stopped() < r.To {
		return words.IntoNet()
	}
	return words.T("The end")
}

// Round the court and round whoever stands beyond it, in feet.
const (
	runOff units.Feet = 3.5
	beside units.Feet = 2.5
)

// extentOf is what of the court's axes has to be seen of a rally at its events:
// the court and some run-off, and whoever stands farther out.
func extentOf(r *rally.Rally) court.Rect {
	seen := court.Bounds.Grow(runOff)
	for _, e := range r.Events {
		for _, p := range r.At(e.At).Players {
			at := court.RectOf(p.Run.Place, p.Run.Place).Grow(beside)
			seen = court.RectOf(court.Pt(min(seen.Min.X, at.Min.X), min(seen.Min.Y, at.Min.Y)), court.Pt(max(seen.Max.X, at.Max.X), max(seen.Max.Y, at.Max.Y)))
		}
	}
	return seen
}

// Parts of a storyboard in points.
const (
	gutter     = 14.0
	rowGap     = 12.0
	leastCourt = 64.0 // the height of a court
	cellTop    = 5.0
	badgeWidth = 18.0
	clockWidth = 40.0
)

func (s *story) print() {
	h := s.headOf(s.play.rally)
	l := s.leaf(h)
	s.width = (l.right - l.left - gutter*float64(s.columns-1)) / float64(s.columns)
	legend := s.lines(s.name(), words.StoryLegend(), l.right-l.left, quietStyle, 0)
	l.top = l.block(l.left, l.top-4, legend, quietStyle) + 6
	room := l.room(l.top)
	rows := s.rows(room)
	courtHeight := s.courtHeight(room, rows)
	y := l.top
	for i, r := range rows {
		if height := r.height + courtHeight; i > 0 && l.room(y) < height {
			l = s.leaf(h)
			y = l.top
		}
		for k, c := range r.cells {
			s.cell(l, s.column(l, k), y, courtHeight, c)
		}
		if free := s.columns - len(r.cells); free > 0 {
			s.notes(l, s.column(l, len(r.cells)), y, l.right, y+min(r.height+courtHeight, l.room(y)))
		}
		y += r.height + courtHeight + rowGap
	}
}

func (s *story) name() string { return words.T("Play %d", s.play.number) }

// column is where a column begins.
func (s *story) column(l *leaf, k int) float64 { return l.left + float64(k)*(s.width+gutter) }

// row is one row of courts; cell is what stands below one of them.
type row struct {
	cells  []cell
	height float64 // of the words
}

type cell struct {
	number             int
	moment             moment
	title, said, moves []string
}

func (c cell) height() float64 {
	return cellTop + float64(len(c.title))*boldStyle.lead + float64(len(c.said))*bodyStyle.lead + float64(len(c.moves))*quietStyle.lead + 5
}

// rows breaks the words; the most that a cell's may take is the page's room less
// the least court.
func (s *story) rows(room float64) []row {
	var rows []row
	for i, m := range s.moments {
		if i%s.columns == 0 {
			rows = append(rows, row{})
		}
		c := s.words(i, m, room-leastCourt)
		r := &rows[len(rows)-1]
		r.cells = append(r.cells, c)
		r.height = max(r.height, c.height())
	}
	return rows
}

// words are a cell's words within a height: the caption gives way.
func (s *story) words(i int, m moment, height float64) cell {
	what := words.T("Play %d, picture %d", s.play.number, i+1)
	c := cell{number: i + 1, moment: m}
	c.title = s.lines(what, m.title, s.width-badgeWidth-clockWidth, boldStyle, 3)
	c.moves = s.packed(what, m.moves)
	left := int((height - c.height()) / bodyStyle.lead)
	for _, text := range m.said {
		lines := s.lines(what, text, s.width, bodyStyle, max(left, 1))
		c.said = append(c.said, lines...)
		if left -= len(lines); left < 1 {
			s.note(words.T("%s: shortened to fit, marked with …", what))
			break
		}
	}
	return c
}

// packed sets as many parts on a line as fit, each whole.
func (s *story) packed(what string, parts []string) []string {
	if len(parts) == 0 {
		return []string{words.T("Nobody moves.")}
	}
	const between = " · "
	var lines []string
	for _, part := range parts {
		part = s.fit(what, part, s.width, quietStyle)
		n := len(lines)
		if n > 0 && quietStyle.width(lines[n-1]+between+part) <= s.width {
			lines[n-1] += between + part
		} else {
			lines = append(lines, part)
		}
	}
	return lines
}

// courtHeight is the height at which all rows fill one page, or where that would
// be too small the widest that a column holds.
func (s *story) courtHeight(room float64, rows []row) float64 {
	used, most := -rowGap, 0.0
	for _, r := range rows {
		used += r.height + rowGap
		most = max(most, r.height)
	}
	widest := s.width * float64(s.shown.Width()/s.shown.Height())
	if h := (room - used) / float64(len(rows)); h >= min(leastCourt, widest) {
		return min(h, widest)
	}
	return min(widest, max(room-most, leastCourt))
}

func (s *story) cell(l *leaf, x, y, courtHeight float64, c cell) {
	pic := compose.Of(s.play.rally, s.shown, canvas.Lying)
	for _, a := range advice.PathsCross(s.play.rally) {
		pic.Findings = append(pic.Findings, a.Finding())
	}
	at := compose.Layout{Width: int(s.width), Height: int(courtHeight), PxPerPoint: s.scale, Court: canvas.Fit(s.shown, canvas.Lying, canvas.Px{}, canvas.Px{X: s.width, Y: courtHeight})}
	l.pictures = append(l.pictures, picture{pic.Step(at, c.moment.since, c.moment.at), canvas.Px{X: x, Y: y}})
	y += courtHeight + cellTop
	l.badge(x+7, y+6, strconv.Itoa(c.number))
	l.text(x+s.width, y+quietStyle.size, canvas.Finish, words.Seconds(c.moment.at), quietStyle)
	y = l.block(x+badgeWidth, y, c.title, boldStyle) + 2
	y = l.block(x, y, c.said, bodyStyle)
	l.block(x, y, c.moves, quietStyle)
}

// notes fills a place where no court is with the play's own notes, and lines to
// write on.
func (s *story) notes(l *leaf, x, y, right, bottom float64) {
	y = l.block(x, y, []string{words.T("Notes")}, boldStyle)
	if text := s.play.rally.Play.Notes; text != "" {
		y = l.block(x, y, s.lines(s.name(), text, right-x, bodyStyle, max(int((bottom-y)/bodyStyle.lead), 1)), bodyStyle)
	}
	const apart = 20
	for y += apart; y < bottom; y += apart {
		l.line(x, y, right, y, 0.4, 1, 2)
	}
}
