package film

import (
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/lesson"
)

// Sizes of a card's words: the heading in ems of captions, tried from the largest
// until it takes no more than the rows and the room that there are.
var headingSizes = [...]float64{2.2, 1.8, 1.5, 1.2, 1}

const (
	headingRows = 4
	cardRows    = 6
	ruleHigh    = 0.16 // the line below a heading, in ems of captions
	ruleWide    = 3.5
	ruleRoom    = 1.5
	cardPad     = 0.8 // the room on the plate above and below the words

	headingShare = 0.6 // of the height that a heading takes at most
)

// card draws a page of words: on a plate across the picture, so that it can be read
// over footage as well, where the picture's ground is transparent.
func (f *Film) card(s *canvas.Scene, c lesson.Card) {
	safe, em := Safe(s.Width, s.Height), CaptionEm(s.Width, s.Height)
	b := f.board(s, "card")
	if logo := f.logoArea(safe, s.Width, s.Height); !logo.Empty() {
		safe = less(safe, []compose.Area{logo}, em/4, false)
		safe.Min.Y, safe.Max.Y = safe.Min.Y+em*cardPad, safe.Max.Y-em*cardPad
	}
	size, heading := fitHeading(c.Heading, safe, em)
	high := size * lead * float64(len(heading))
	room := safe.Height() - high - em*ruleRoom
	text := wrapped(c.Text, safe.Width(), em, false, min(cardRows, int(room/(em*lead))))
	both := len(heading) > 0 && len(text) > 0
	if both {
		high += em * ruleRoom
	}
	high += em * lead * float64(len(text))
	x, y := (safe.Min.X+safe.Max.X)/2, (float64(s.Height)-high)/2
	y = max(min(y, safe.Max.Y-high), safe.Min.Y)
	if high > 0 {
		b.plate("plate", compose.Area{Min: canvas.Px{Y: y - em*cardPad}, Max: canvas.Px{X: float64(s.Width), Y: y + high + em*cardPad}})
	}
	b.lines("heading", x, y, heading, typeface{size, true, canvas.Centre, b.look.Ink})
	y += size * lead * float64(len(heading))
	if both {
		rule := compose.Area{Min: canvas.Px{X: x - em*ruleWide/2, Y: y + em*0.55}, Max: canvas.Px{X: x + em*ruleWide/2, Y: y + em*(0.55+ruleHigh)}}
		b.box("rule", rule, b.look.Teams[0].Disc)
		y += em * ruleRoom
	}
	b.lines("text", x, y, text, typeface{em, false, canvas.Centre, b.look.Ink})
	s.Panels = append(s.Panels, b.panel)
}

// fitHeading is the largest size at which a heading has room, and its lines.
func fitHeading(text string, safe compose.Area, em float64) (size float64, lines []string) {
	for _, k := range headingSizes {
		size = k * em
		lines = wrapped(text, safe.Width(), size, true, headingRows+1)
		if len(lines) <= headingRows && size*lead*float64(len(lines)) <= safe.Height()*headingShare {
			return size, lines
		}
	}
	return size, wrapped(text, safe.Width(), size, true, min(headingRows, int(safe.Height()*headingShare/(size*lead))))
}
