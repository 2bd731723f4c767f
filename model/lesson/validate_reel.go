package lesson

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// reel leaves it to the film whether the plays and events of its takes are
// there: a play may be shortened or deleted after the reel was made.
func (c *checker) reel(r Reel) {
	c.text("name", r.Name, MaxTitle)
	c.in("title_card", func() { c.card(r.Title) })
	c.count("takes", len(r.Takes), MaxTakes)
	c.each("takes", len(r.Takes), func(i int) { c.take(r.Takes[i]) })
	c.in("end_card", func() { c.card(r.End) })
	member(c, "logo", r.Logo, len(cornerNames))
}

func (c *checker) card(d Card) {
	c.text("heading", d.Heading, MaxTitle)
	c.text("text", d.Text, MaxText)
	number(c, "length_s", d.Length, 0, MaxHold)
}

func (c *checker) take(t Take) {
	if t.Play < 1 || t.Play > MaxPlays {
		c.say("play", "%d, want 1 to %d", t.Play, MaxPlays)
	}
	if t.Beside < 0 || t.Beside > MaxPlays {
		c.say("beside", "%d, want 1 to %d", t.Beside, MaxPlays)
	}
	c.reelAnchor("from", t.From)
	c.reelAnchor("to", t.To)
	if t.Speed != 0 {
		c.rate(t.Speed)
	}
	c.count("slows", len(t.Slows), MaxSlows)
	c.each("slows", len(t.Slows), func(i int) {
		c.reelAnchor("from", &t.Slows[i].Span.From)
		c.reelAnchor("to", &t.Slows[i].Span.To)
		c.rate(t.Slows[i].Speed)
	})
	c.count("freezes", len(t.Freezes), MaxFreezes)
	c.each("freezes", len(t.Freezes), func(i int) { c.freeze(t.Freezes[i]) })
	if t.Loops < 0 || t.Loops > MaxLoops {
		c.say("loops", "%d, want 1 to %d", t.Loops, MaxLoops)
	}
	c.in("camera", func() { c.camera(t.Camera) })
	c.text("caption", t.Caption, MaxText)
}

func (c *checker) rate(v float64) { number(c, "speed", v, MinRate, MaxRate) }

func (c *checker) freeze(f Freeze) {
	c.reelAnchor("at", &f.At)
	positive(c, "length_s", f.Length, MaxHold)
	c.text("caption", f.Caption, MaxText)
}

func (c *checker) camera(m Camera) {
	member(c, "kind", m.Kind, len(cameraNames))
	if m.Kind == HalfCourt {
		member(c, "end", m.End, len(court.Ends))
	}
	if m.Kind.OnPlayer() {
		member(c, "player", m.Player, len(game.Players))
		number[units.Feet](c, "width_ft", m.Width, 0, MaxCameraWidth)
		if m.Width > 0 && m.Width < MinCameraWidth {
			c.say("width_ft", "%v, want at least %v", float64(m.Width), float64(MinCameraWidth))
		}
	}
}

// reelAnchor is an anchor in any play there may be; nil is none.
func (c *checker) reelAnchor(field string, a *Anchor) {
	if a != nil {
		c.anchor(Play{Shots: make([]Shot, MaxShots)}, field, *a)
	}
}

func (c *checker) logo(g Logo) {
	if g.PNG == "" {
		return
	}
	w, h, err := g.Size()
	switch {
	case len(g.PNG) > MaxLogo:
		c.say("png", "%d bytes, want at most %d", len(g.PNG), MaxLogo)
	case err != nil:
		c.say("png", "%v", err)
	case w < 1 || h < 1 || w > MaxLogoSide || h > MaxLogoSide:
		c.say("png", "%d x %d px, want sides of 1 to %d px", w, h, MaxLogoSide)
	}
}
