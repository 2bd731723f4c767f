package lessontest

import (
	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// samplePNG is a picture of 2 x 1 px, the second half transparent.
const samplePNG = "\x89\x50\x4e\x47\x0d\x0a\x1a\x0a\x00\x00\x00\x0d\x49\x48\x44\x52\x00\x00\x00\x02\x00\x00\x00\x01\x08\x06\x00\x00\x00\xf4\x22\x7f\x8a" +
	"\x00\x00\x00\x11\x49\x44\x41\x54\x78\xda\x63\x60\x28\xda\xf4\xff\xd9\x7c\x86\x06\x00\x12\x43\x04\x29\x1b\xe4\x58\x53\x00\x00\x00\x00\x49\x45\x4e\x44\xae\x42\x60\x82"

// SampleLogo is a logo of 2 x 1 px.
func SampleLogo() lesson.Logo { return lesson.Logo{PNG: samplePNG} }

func sampleReel() lesson.Reel {
	contact := lesson.At(lesson.ContactOf(1))
	return lesson.Reel{
		Name:  "For the phones",
		Title: lesson.Card{Heading: "Stack behind the serve", Text: "Invented people", Length: 3},
		Takes: []lesson.Take{{
			Play: 1, Beside: 1, From: &lesson.Anchor{Offset: -1}, To: &contact, Speed: 0.5,
			Slows:   []lesson.Slow{{Span: sampleSpan(), Speed: 0.25}},
			Freezes: []lesson.Freeze{{At: contact, Length: 2, Caption: "Wait for the bounce."}},
			Loops:   2, Camera: lesson.Camera{Kind: lesson.Follow, Player: game.Near2, Width: 18}, Caption: "Slowly",
		}, {
			Play: 1, Camera: lesson.Camera{Kind: lesson.HalfCourt, End: court.Far},
		}},
		End:  lesson.Card{Heading: "Now on the court", Text: "Slowly first", Length: 2},
		Logo: lesson.TopRight,
	}
}

func logo(t *rapid.T) lesson.Logo {
	return rapid.SampledFrom([]lesson.Logo{{}, SampleLogo()}).Draw(t, "logo")
}

func reel(t *rapid.T) lesson.Reel {
	return lesson.Reel{
		Name:  text(t, "name", 40),
		Title: card(t),
		Takes: some(t, 0, mostTakes, Take),
		End:   card(t),
		Logo:  rapid.SampledFrom(lesson.Corners[:]).Draw(t, "corner"),
	}
}

func card(t *rapid.T) lesson.Card {
	return lesson.Card{Heading: text(t, "heading", 40), Text: text(t, "text", 40), Length: between(t, "length", 0, lesson.MaxHold)}
}

// Take draws a take that lesson.Validate accepts, of one of the first plays
// and of one that may not be there.
func Take(t *rapid.T) lesson.Take {
	shots := mostShots + 1
	anchors := func(t *rapid.T) lesson.Anchor { return anchor(t, shots) }
	return lesson.Take{
		Play: rapid.IntRange(1, mostPlays+1).Draw(t, "play"), Beside: rapid.IntRange(0, mostPlays+1).Draw(t, "beside"),
		From: maybe(t, anchors), To: maybe(t, anchors), Speed: rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(lesson.MinRate, lesson.MaxRate)).Draw(t, "speed"),
		Slows: some(t, 0, mostNotes, func(t *rapid.T) lesson.Slow {
			return lesson.Slow{Span: span(t, shots), Speed: between(t, "slow", lesson.MinRate, lesson.MaxRate)}
		}),
		Freezes: some(t, 0, mostNotes, func(t *rapid.T) lesson.Freeze {
			return lesson.Freeze{At: anchors(t), Length: between[units.Seconds](t, "freeze", 0.01, lesson.MaxHold), Caption: text(t, "caption", 40)}
		}),
		Loops:   rapid.IntRange(0, 3).Draw(t, "loops"),
		Camera:  camera(t),
		Caption: text(t, "caption", 40),
	}
}

func camera(t *rapid.T) lesson.Camera {
	c := lesson.Camera{Kind: rapid.SampledFrom(lesson.Cameras[:]).Draw(t, "camera")}
	switch {
	case c.Kind == lesson.HalfCourt:
		c.End = end(t)
	case c.Kind.OnPlayer():
		c.Player = rapid.SampledFrom(game.Players[:]).Draw(t, "player")
		c.Width = rapid.OneOf(rapid.Just(units.Feet(0)), rapid.Just(between(t, "width", lesson.MinCameraWidth, lesson.MaxCameraWidth))).Draw(t, "across")
	}
	return c
}
