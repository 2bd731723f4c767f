package handout

import (
	"slices"
	"strings"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export/pdf"
	"homeside/model/advice"
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/words"
)

// edge is what every page leaves free round the edges: printers reach 4 to 6 mm,
// and a punched hole needs more.
const edge = 14.0 // mm

// book is a sheet's pages under construction.
type book struct {
	paper  Paper
	lesson lesson.Lesson
	sheet  string // its title
	leaves []*leaf
	notes  []string // what had to be shortened, once each
}

// head is what stands over a page.
type head struct {
	title, sentence string
	warnings        []string // framed, under the sentence
}

// headOf is the head of a page about a play: it warns where paths cross.
func (b *book) headOf(r *rally.Rally) head {
	h := head{title: r.Play.Title, sentence: words.Situation(b.lesson, r.Play)}
	for _, a := range advice.PathsCross(r) {
		h.warnings = append(h.warnings, words.PathsCrossAt(b.lesson, a))
	}
	return h
}

// note keeps something to tell whoever asked for the sheet.
func (b *book) note(text string) {
	if !slices.Contains(b.notes, text) {
		b.notes = append(b.notes, text)
	}
}

// lines breaks a text to a width, at most so many lines (0 for all). What has
// to go is marked, and noted under a name for what the text is.
func (b *book) lines(what, text string, width float64, s style, most int) []string {
	lines := compose.Wrap(text, width, canvas.Points(s.size), s.bold)
	if most > 0 && len(lines) > most {
		last := lines[most-1] + " " + lines[most] // more than a line holds, so that the cut is marked
		lines = append(lines[:most-1], compose.Shorten(last, width, canvas.Points(s.size), s.bold))
	}
	if strings.Join(lines, " ") != strings.Join(strings.Fields(text), " ") {
		b.note(words.T("%s: shortened to fit, marked with …", what))
	}
	return lines
}

// fit is a text on one line.
func (b *book) fit(what, text string, width float64, s style) string {
	return strings.Join(b.lines(what, text, width, s, 1), "")
}

// leaf begins a page with its head and foot.
func (b *book) leaf(h head) *leaf {
	size := b.paper.size()
	l := &leaf{words: canvas.Panel{Name: "words", View: canvas.View{PxPerFoot: 1}}, left: mm(edge), right: size.Width - mm(edge), top: mm(edge), bottom: size.Height - mm(edge)}
	b.foot(l)
	b.head(l, h)
	b.leaves = append(b.leaves, l)
	return l
}

// Rows of a page's head at most.
const (
	titleRows    = 2
	sentenceRows = 4
)

func (b *book) head(l *leaf, h head) {
	width := l.right - l.left
	kick := b.sheet
	l.text(l.left, l.top+kickStyle.size, canvas.Start, kick, kickStyle)
	room := width - kickStyle.width(kick) - 20
	l.text(l.right, l.top+kickStyle.size, canvas.Finish, b.fit(words.T("The lesson's title"), b.lesson.Title, room, quietStyle), quietStyle)
	y := l.top + kickStyle.lead + 4
	y = l.block(l.left, y, b.lines(words.T("The play's title"), h.title, width, titleStyle, titleRows), titleStyle)
	y = l.block(l.left, y+1, b.lines(words.T("The score"), h.sentence, width, leadStyle, sentenceRows), leadStyle)
	for _, text := range h.warnings {
		y = b.warning(l, y+5, text)
	}
	l.line(l.left, y+3, l.right, y+3, 0.8)
	l.top = y + 11
}

// Of a warning's frame in points.
const (
	warningPad  = 4.0
	warningSign = 24.0 // the width kept for the sign
)

// warning sets a framed text with the sign of a caution, and gives the height below.
func (b *book) warning(l *leaf, y float64, text string) float64 {
	lines := b.lines(words.T("The cautions"), text, l.right-l.left-warningSign-2*warningPad, boldStyle, 3)
	bottom := y + 2*warningPad + max(float64(len(lines)), 1.5)*boldStyle.lead
	l.box(l.left, y, l.right, bottom, canvas.Style{Stroke: ink, Width: canvas.Pts(1.4)})
	sign := compose.FindingSign(nil, finding.Caution, "!", int(warningSign), int(bottom-y), 1)
	l.pictures = append(l.pictures, picture{sign, canvas.Px{X: l.left, Y: y}})
	l.block(l.left+warningSign, (y+bottom-float64(len(lines))*boldStyle.lead)/2, lines, boldStyle)
	return bottom
}

// numberRoom is kept free for the page's number.
const numberRoom = 90.0

// foot sets the cautions, where the figures come from, whose names are invented,
// and leaves a place for the page's number.
func (b *book) foot(l *leaf) {
	width := l.right - l.left
	cautions := b.lines(words.T("The cautions"), strings.Join(words.Cautions(), " "), width, footStyle, 0)
	from := b.lines(words.T("The lesson's notes"), words.Invented(b.lesson), width-numberRoom, smallStyle, 2)
	from = append(from, b.lines(words.T("Where the figures come from"), words.FiguresFrom(), width-numberRoom, smallStyle, 0)...)
	height := float64(len(cautions))*footStyle.lead + 4 + float64(len(from))*smallStyle.lead
	y := l.bottom - height
	l.pageNumber = pos(l.right, l.bottom-smallStyle.lead+smallStyle.size)
	l.bottom = y - 10
	l.line(l.left, y-5, l.right, y-5, 0.8)
	y = l.block(l.left, y, cautions, footStyle)
	l.block(l.left, y+4, from, smallStyle)
}

// print draws all pages.
func (b *book) print(title string) *pdf.Document {
	d := pdf.New(title)
	size := b.paper.size()
	for i, l := range b.leaves {
		d.AddPage(size)
		for _, p := range l.pictures {
			d.Draw(p.scene, p.at, 1)
		}
		l.text(float64(l.pageNumber.Right), float64(l.pageNumber.Down), canvas.Finish, words.T("page %d of %d", i+1, len(b.leaves)), style{size: 9, colour: ink})
		d.Draw(&canvas.Scene{Width: int(size.Width), Height: int(size.Height), PxPerPoint: 1, Panels: []canvas.Panel{l.words}}, canvas.Px{}, 1)
	}
	return d
}
