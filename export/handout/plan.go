package handout

import (
	"context"
	"slices"
	"strings"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export/captions"
	"homeside/model/advice"
	"homeside/model/finding"
	"homeside/model/flight"
	"homeside/model/rules"
	"homeside/model/units"
	"homeside/words"
)

func planTitle() string { return words.T("Lesson plan") }

func planAbout() string {
	return words.T("A course for ten students: walk, shadow, fed ball, live, with rotation, feeders, times and equipment.")
}

// planSheet is a page for each session, and one for each play in it.
func planSheet(ctx context.Context, b *book, j job) error {
	all := sessionsOf(j.plays)
	done := 0
	for i, s := range all {
		newCourse(b, i+1, len(all), s).print()
		for _, d := range s.plays {
			if err := ctx.Err(); err != nil {
				return err
			}
			(&practice{book: b, drill: d}).print()
			done++
			j.progress(done, len(j.plays))
		}
	}
	return nil
}

// course is the page of one session.
type course struct {
	*book
	number, of int
	session    session
	leaf       *leaf
	y          float64
}

func newCourse(b *book, number, of int, s session) *course {
	return &course{book: b, number: number, of: of, session: s}
}

func (c *course) head() head {
	title := c.lesson.Title
	if title == "" {
		title = words.T("Lesson plan")
	}
	if c.of > 1 {
		title = words.T("%s, session %d of %d", title, c.number, c.of)
	}
	return head{title: title, sentence: words.CourseTime(len(c.session.plays), c.session.total(), students)}
}

func (c *course) print() {
	c.leaf = c.book.leaf(c.head())
	c.y = c.leaf.top
	c.timetable()
	c.rotation()
	c.equipment()
	c.courts()
}

// courts shows the session's plays, two to a row, where the page has room.
func (c *course) courts() {
	const (
		columns = 2
		height  = 132.0
		title   = 2
	)
	l := c.leaf
	width := (l.right - l.left - gutter) / columns
	c.y += 10
	for i, d := range c.session.plays {
		if i%columns == 0 && i > 0 {
			c.y += height
		}
		if l.room(c.y) < height {
			return // every play has a page of its own
		}
		x := l.left + float64(i%columns)*(width+gutter)
		l.pictures = append(l.pictures, playPictures(d.solved, canvas.Px{X: x, Y: c.y}, width, height-title*boldStyle.lead-8, 0.7)...)
		name := c.lines(words.T("Play %d", d.number), words.T("Play %d: %s", d.number, d.rally.Play.Title), width, boldStyle, title)
		l.block(x, c.y+height-title*boldStyle.lead-4, name, boldStyle)
	}
}

// section begins a part of the page, on a new one if it would not fit.
func (c *course) section(title string, height float64) {
	if c.leaf.room(c.y) < height+headStyle.lead {
		c.leaf = c.book.leaf(c.head())
		c.y = c.leaf.top
	}
	c.y = c.leaf.block(c.leaf.left, c.y, []string{title}, headStyle) + 2
}

// line is a row of a table: what is left, what is right of it, what is at the end.
func (c *course) line(left, middle, end string, s style) {
	l := c.leaf
	const first, last = 46, 50
	lines := c.lines(words.T("The timetable"), middle, l.right-l.left-first-last, s, 2)
	if l.room(c.y) < float64(len(lines))*s.lead {
		c.leaf = c.book.leaf(c.head())
		l, c.y = c.leaf, c.leaf.top
	}
	l.text(l.left, c.y+s.size, canvas.Start, left, s)
	below := l.block(l.left+first, c.y, lines, s)
	l.text(l.right, c.y+s.size, canvas.Finish, end, s)
	c.y = below + 1
}

// timetable is what is done when. The times at the right sum up to the last line.
func (c *course) timetable() {
	c.section(words.T("Timetable (minutes:seconds)"), 60)
	at := units.Seconds(0)
	add := func(what string, t units.Seconds) {
		c.line(words.Clock(at), what, words.Clock(t), bodyStyle)
		at += t
	}
	add(words.T("Warm-up, and the cautions at the foot read aloud"), warmUp)
	for _, d := range c.session.plays {
		c.line("", words.T("Play %d: %s", d.number, d.rally.Play.Title), "", boldStyle)
		for _, s := range d.stages {
			add(words.Stage(int(s.kind))+": "+words.StageTimes(rounds, reps, s.once, s.slow), s.total)
		}
	}
	add(words.T("Wrap-up: each pair says what it will do at even and at odd"), wrapUp)
	c.leaf.line(c.leaf.left, c.y, c.leaf.right, c.y, 0.6)
	c.y += 2
	c.line("", words.T("Together"), words.Clock(at), boldStyle)
	c.y += 8
}

// rotation is which pair does what in which round.
func (c *course) rotation() {
	c.section(words.T("Rotation: ten students in five pairs, one court"), tableHead+rounds*tableRow+40)
	l := c.leaf
	intro := c.lines(words.T("The rotation"), words.RotationReads(rounds), l.right-l.left, quietStyle, 0)
	c.y = l.block(l.left, c.y, intro, quietStyle) + 3
	first := 60.0
	column := (l.right - l.left - first) / rounds
	at := func(pair int) float64 { return l.left + first + column*(float64(pair)+0.5) }
	for pair := range rounds {
		l.text(at(pair), c.y+9, canvas.Centre, words.PairLetter(pair), boldStyle)
	}
	c.y += tableHead
	for round := range rounds {
		l.line(l.left, c.y-2, l.right, c.y-2, 0.4)
		l.text(l.left, c.y+9, canvas.Start, words.T("Round %d", round+1), bodyStyle)
		for pair := range rounds {
			l.text(at(pair), c.y+9, canvas.Centre, c.fit(words.T("The rotation"), words.Role(roleOf(pair, round)), column-4, bodyStyle), bodyStyle)
		}
		c.y += tableRow
	}
	c.y += 10
}

func (c *course) equipment() {
	cones, need := 0, 0
	for _, d := range c.session.plays {
		spots, _ := spotsOf(d.rally)
		cones, need = max(cones, len(spots)), max(need, balls(d.rally.Play))
	}
	l := c.leaf
	text := c.lines(words.T("The equipment"), words.Equipment(students, need, cones), l.right-l.left, bodyStyle, 0)
	c.section(words.T("Equipment"), float64(len(text))*bodyStyle.lead)
	c.y = c.leaf.block(c.leaf.left, c.y, text, bodyStyle)
}

// practice is the page of one play, or several where there is much to say.
type practice struct {
	*book
	drill drill
	leaf  *leaf
	y     float64
}

func (p *practice) name() string { return words.T("Play %d", p.drill.number) }

// turn begins a page.
func (p *practice) turn() {
	p.leaf = p.book.leaf(p.headOf(p.drill.rally))
	p.y = p.leaf.top
}

// pictureHeight is that of a play's court in points.
const pictureHeight = 170.0

func (p *practice) print() {
	p.turn()
	p.court()
	for _, part := range []struct {
		title string
		items []string
	}{
		{words.T("Say"), p.points()},
		{words.T("Four steps"), p.steps()},
		{words.T("Feeders"), p.feeds()},
		{words.T("Watch for"), p.watch()},
	} {
		p.part(part.title, part.items)
	}
}

// court draws the play at the head of its page.
func (p *practice) court() {
	l := p.leaf
	l.pictures = append(l.pictures, playPictures(p.drill.solved, canvas.Px{X: l.left, Y: p.y}, l.right-l.left, pictureHeight, 0.9)...)
	p.y += pictureHeight + 10
}

// playPictures is a whole play as it stands before the serve, its court lying.
func playPictures(p solved, corner canvas.Px, width, height, scale float64) (all []picture) {
	shown := extentOf(p.rally)
	view := canvas.Fit(shown, canvas.Lying, canvas.Px{}, canvas.Px{X: width, Y: height})
	at := compose.Layout{Width: int(width), Height: int(height), PxPerPoint: scale, Court: view}
	pic := compose.Of(p.rally, shown, canvas.Lying)
	for _, s := range []*canvas.Scene{pic.StaticIn(at), pic.MovingIn(at, p.rally.From)} {
		all = append(all, picture{s, corner})
	}
	return all
}

// part is a heading with items, each behind a dash.
func (p *practice) part(title string, items []string) {
	const (
		indent   = 10
		mostRows = 30 // of an item: a page's worth with room to spare
	)
	for i, item := range items {
		lines := p.lines(p.name(), item, p.leaf.right-p.leaf.left-indent, bodyStyle, mostRows)
		if p.leaf.room(p.y) < headStyle.lead+float64(len(lines))*bodyStyle.lead {
			p.turn()
		}
		if i == 0 {
			p.y = p.leaf.block(p.leaf.left, p.y, []string{title}, headStyle)
		}
		p.leaf.text(p.leaf.left, p.y+bodyStyle.size, canvas.Start, "–", bodyStyle)
		p.y = p.leaf.block(p.leaf.left+indent, p.y, lines, bodyStyle) + 1
	}
	p.y += 6
}

// points are what the coach says: the play's captions and signals.
func (p *practice) points() (said []string) {
	for _, c := range captions.Of(p.lesson, p.drill.rally).Cues {
		said = append(said, c.Text)
	}
	return said
}

// steps are the four stages with what is done in them.
func (p *practice) steps() (all []string) {
	for _, s := range p.drill.stages {
		all = append(all, words.Stage(int(s.kind))+", "+words.Clock(s.total)+": "+words.StageDoes(int(s.kind), s.slow))
	}
	return all
}

// feeds are where each ball comes from and where it lands.
func (p *practice) feeds() (all []string) {
	r := p.drill.rally
	for i, s := range r.Strokes {
		if !r.Reached(s.At) {
			break
		}
		from, end := s.By.Team(), s.By.Team().Other()
		start, land := (flight.State{At: s.From}).Ground(), s.Planned.End.Ground()
		all = append(all, words.Feed(p.lesson, i, s.By, words.Cone(from, start), words.Cone(end, land), s.Planned.Apex.State.Height().Feet()))
	}
	return all
}

// mostWatched is how many findings stand on a page, the worst first.
const mostWatched = 5

// watch is what the rules and the legs find in the play.
func (p *practice) watch() (all []string) {
	r := p.drill.rally
	found := slices.Concat(rules.Check(r, p.lesson), advice.Check(r))
	finding.Sort(found)
	for _, f := range found {
		text := words.Check(f, p.lesson)
		if !slices.Contains(all, text) && len(all) < mostWatched {
			all = append(all, text)
		}
	}
	if n := strings.TrimSpace(r.Play.Notes); n != "" {
		all = append([]string{n}, all...)
	}
	return all
}
