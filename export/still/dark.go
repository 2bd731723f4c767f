package still

import (
	"image/color"
	"slices"
	"strconv"
	"strings"

	"homeside/canvas"
)

// hue is what an element is painted with.
type hue struct{ fill, stroke color.NRGBA }

// inks is a Surface that notes what the shapes of a scene are painted with.
type inks struct{ all []hue }

var _ canvas.Surface = (*inks)(nil)

// Path implements canvas.Surface.
func (s *inks) Path(_ canvas.Info, _ []canvas.PxStep, style canvas.PxStyle) {
	s.all = append(s.all, hue{style.Fill, style.Stroke})
}

// Text implements canvas.Surface.
func (s *inks) Text(_ canvas.Info, t canvas.PxText) {
	s.all = append(s.all, hue{fill: t.Colour})
}

// Image implements canvas.Surface.
func (s *inks) Image(canvas.Info, canvas.PxImage) {}

// dark gives elements classes by which a style sheet paints them anew. Its zero
// value gives none.
type dark struct {
	next   []hue // of the elements to come; nil where nobody asks
	on     bool
	styles []string // by number of class
	unlike bool     // there were more elements than inks, or fewer
}

func (d *dark) begin(next []hue) { d.next, d.on = next, true }

// class is the attribute of the next element, which is painted so by day; empty
// if it is painted alike in the dark.
func (d *dark) class(day hue) string {
	if !d.on {
		return ""
	}
	if len(d.next) == 0 {
		d.unlike = true
		return ""
	}
	now := d.next[0]
	d.next = d.next[1:]
	style := declared("fill", day.fill, now.fill) + declared("stroke", day.stroke, now.stroke)
	if style == "" {
		return ""
	}
	i := slices.Index(d.styles, style)
	if i < 0 {
		i = len(d.styles)
		d.styles = append(d.styles, style)
	}
	return ` class="` + darkClass(i) + `"`
}

func darkClass(i int) string { return "d" + strconv.Itoa(i) }

// declared is what a style sheet says of a colour that is another in the dark.
func declared(property string, day, now color.NRGBA) string {
	if day == now {
		return ""
	}
	if now.A == 0 {
		return property + ":none;"
	}
	out := property + ":" + hex(now) + ";"
	if day.A < 255 || now.A < 255 {
		out += property + "-opacity:" + opacity(now) + ";"
	}
	return out
}

func (d *dark) rules() string {
	var b strings.Builder
	for i, style := range d.styles {
		b.WriteString("." + darkClass(i) + "{" + strings.TrimSuffix(style, ";") + "}\n")
	}
	return b.String()
}
