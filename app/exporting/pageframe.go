package exporting

import (
	"homeside/export"
	"homeside/model/units"
	"homeside/words"
)

// showFrame shows the frame at the moment of the slider, or the words.
func (g *Page) showFrame() {
	o := g.chosenOutput()
	opt := g.choice.options(o, g.subject)
	isText := o.Kind == Words && o.Ext != ".wav"
	visible(g.textBox, isText)
	visible(g.frame.Box, !isText)
	visible(g.moment, o.Kind <= Clip)
	visible(g.clock, o.Kind <= Clip)
	visible(g.dashes, o.Kind == Clip)
	g.frame.Safe = o.Kind == Clip
	if !g.ready {
		g.frame.Show(nil, export.Ground{}, opt.Width, opt.Height, 0)
		return
	}
	if isText {
		g.text.SetText(preview(o, g.subject, opt))
		return
	}
	from, to := g.subject.Source.Span()
	g.moment.Min, g.moment.Max = float64(from), max(float64(to), float64(from)+0.01)
	at := min(max(g.subject.At, from), to)
	g.moment.Value = float64(at)
	g.moment.Refresh()
	g.tellTime()
	g.frame.Show(g.subject.Source, opt.Ground, opt.Width, opt.Height, at)
}

// seek shows another moment; a still is of the moment shown.
func (g *Page) seek(v float64) {
	g.subject.At = units.Seconds(v)
	g.frame.Seek(g.subject.At)
	g.tellTime()
}

// tellTime says where in the clip the frame shown is.
func (g *Page) tellTime() {
	from, to := g.subject.Source.Span()
	g.clock.SetText(words.ClipTime(units.Seconds(g.moment.Value)-from, to-from))
}
