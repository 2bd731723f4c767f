package lessonfile

import (
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

type logo struct {
	PNG []byte `json:"png,omitempty"` // base64 (RFC 4648, 4)
}

type reel struct {
	Name  string `json:"name,omitzero"`
	Title card   `json:"title_card,omitzero"`
	Takes []take `json:"takes,omitempty"`
	End   card   `json:"end_card,omitzero"`
	Logo  string `json:"logo,omitzero"`
}

type card struct {
	Heading string        `json:"heading,omitzero"`
	Text    string        `json:"text,omitzero"`
	Length  units.Seconds `json:"length_s,omitzero"`
}

type take struct {
	Play    int      `json:"play"`
	Beside  int      `json:"beside,omitzero"`
	From    *anchor  `json:"from,omitzero"`
	To      *anchor  `json:"to,omitzero"`
	Speed   float64  `json:"speed,omitzero"`
	Slows   []slow   `json:"slows,omitempty"`
	Freezes []freeze `json:"freezes,omitempty"`
	Loops   int      `json:"loops,omitzero"`
	Camera  camera   `json:"camera,omitzero"`
	Caption string   `json:"caption,omitzero"`
}

type slow struct {
	From  *anchor `json:"from,omitzero"`
	To    *anchor `json:"to,omitzero"`
	Speed float64 `json:"speed"`
}

type freeze struct {
	At      *anchor       `json:"at,omitzero"`
	Length  units.Seconds `json:"length_s"`
	Caption string        `json:"caption,omitzero"`
}

type camera struct {
	Kind   string     `json:"kind,omitzero"`
	End    string     `json:"end,omitzero"`
	Player string     `json:"player,omitzero"`
	Width  units.Feet `json:"width_ft,omitzero"`
}

func (r *reader) reel(f reel) lesson.Reel {
	return lesson.Reel{
		Name:  f.Name,
		Title: lesson.Card(f.Title),
		Takes: each(r, "takes", f.Takes, r.take),
		End:   lesson.Card(f.End),
		Logo:  named(r, "logo", f.Logo, lesson.ParseCorner),
	}
}

func (r *reader) take(t take) lesson.Take {
	out := lesson.Take{
		Play: t.Play, Beside: t.Beside, From: r.anchorIfAny("from", t.From), To: r.anchorIfAny("to", t.To), Speed: t.Speed,
		Slows: each(r, "slows", t.Slows, func(s slow) lesson.Slow {
			return lesson.Slow{Span: r.span(s.From, s.To), Speed: s.Speed}
		}),
		Freezes: each(r, "freezes", t.Freezes, func(f freeze) lesson.Freeze {
			return lesson.Freeze{At: r.anchor("at", f.At, lesson.Event{}), Length: f.Length, Caption: f.Caption}
		}),
		Loops: t.Loops, Caption: t.Caption,
	}
	r.in("camera", func() { out.Camera = r.camera(t.Camera) })
	return out
}

// anchorIfAny is an anchor whose absence differs from any event.
func (r *reader) anchorIfAny(field string, a *anchor) *lesson.Anchor {
	if a == nil {
		return nil
	}
	return new(r.anchor(field, a, lesson.Event{}))
}

func (r *reader) camera(c camera) lesson.Camera {
	out := lesson.Camera{Kind: named(r, "kind", c.Kind, lesson.ParseCamera), Width: c.Width}
	if c.End != "" || out.Kind == lesson.HalfCourt {
		out.End = needNamed(r, "end", c.End, parseEnd)
	}
	if c.Player != "" || out.Kind.OnPlayer() {
		out.Player = needNamed(r, "player", c.Player, game.ParsePlayer)
	}
	return out
}

func toReel(r lesson.Reel) reel {
	return reel{Name: r.Name, Title: card(r.Title), Takes: mapped(r.Takes, toTake), End: card(r.End), Logo: unlessZero(r.Logo)}
}

func toTake(t lesson.Take) take {
	return take{
		Play: t.Play, Beside: t.Beside, From: toAnchorIfAny(t.From), To: toAnchorIfAny(t.To), Speed: t.Speed,
		Slows: mapped(t.Slows, func(s lesson.Slow) slow {
			return slow{anchorUnless(s.Span.From, lesson.Event{}), anchorUnless(s.Span.To, lesson.TheEnd), s.Speed}
		}),
		Freezes: mapped(t.Freezes, func(f lesson.Freeze) freeze {
			return freeze{anchorUnless(f.At, lesson.Event{}), f.Length, f.Caption}
		}),
		Loops: t.Loops, Camera: toCamera(t.Camera), Caption: t.Caption,
	}
}

func toAnchorIfAny(a *lesson.Anchor) *anchor {
	if a == nil {
		return nil
	}
	return toAnchor(*a)
}

// toCamera leaves out what does not count for the kind.
func toCamera(c lesson.Camera) camera {
	out := camera{Kind: unlessZero(c.Kind)}
	if c.Kind == lesson.HalfCourt {
		out.End = c.End.String()
	}
	if c.Kind.OnPlayer() {
		out.Player, out.Width = c.Player.String(), c.Width
	}
	return out
}
