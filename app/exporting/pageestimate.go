package exporting

import (
	"homeside/export"
	"homeside/model/units"
	"homeside/words"
)

// remeasure estimates the export again, in the background.
func (g *Page) remeasure() {
	g.measuring()
	g.estimate.SetText("")
	o := g.chosenOutput()
	if !g.ready || o.Needs != nil && o.Needs() != nil {
		return
	}
	ctx, cancel := g.Work.Begin()
	g.measuring = cancel
	s, opt := g.subject, g.choice.options(o, g.subject)
	g.estimate.SetText(words.T("Measuring a few frames…"))
	g.Work.Go(func() {
		e, err := Measure(ctx, o, s, opt)
		g.Work.Do(func() {
			if ctx.Err() != nil {
				return
			}
			cancel()
			g.estimated(o, opt, e, err)
		})
	})
}

// unmeasure ends a measurement under way, and says no more that there is one.
func (g *Page) unmeasure() {
	g.measuring()
	if g.estimate.Text == words.T("Measuring a few frames…") {
		g.estimate.SetText("")
	}
}

func (g *Page) estimated(o Output, opt *export.Options, e Estimate, err error) {
	if err != nil {
		g.estimate.SetText("")
		g.events.Trace("not estimated: %v", err)
		return
	}
	g.estimate.SetText(words.ExportEstimate(length(o, g.subject, opt), e.Bytes, e.Time.Seconds()))
	g.events.Trace("estimated %.0f bytes %.2f s", e.Bytes, e.Time.Seconds())
}

// length is how long a clip is; 0 for what is no clip.
func length(o Output, s Subject, opt *export.Options) units.Seconds {
	if o.Kind != Clip {
		return 0
	}
	from, to := s.Source.Span()
	return units.Seconds(float64(to-from) / opt.Speed)
}
