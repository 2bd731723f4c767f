package export

import (
	"errors"
	"fmt"
	"io"
	"math"

	"homeside/model/units"
)

// timeTolerance is half a millisecond: error messages round the ends of a play
// to milliseconds, and what they say can be given back.
const timeTolerance units.Seconds = 0.0005

// MaxFrames bounds the length of a clip: half an hour at 50 fps and more.
const MaxFrames = 100_000

// Times are the moments of a clip's frames.
type Times struct {
	From, To units.Seconds // of the play
	FPS      int           // of the clip
	Speed    float64
	Count    int // of frames, at least 1
}

// Track writes what is heard of a clip with these frames: a WAV as long as they
// are shown.
type Track func(w io.Writer, t Times) error

// Length is how long the clip's frames are shown.
func (t Times) Length() units.Seconds { return units.Seconds(float64(t.Count) / float64(t.FPS)) }

// At is the moment of frame i, from 0.
func (t Times) At(i int) units.Seconds { return FrameTime(i, t.FPS, t.Speed, t.From) }

// FrameTime is the moment of the play that frame i of a clip shows.
func FrameTime(i, fps int, speed float64, from units.Seconds) units.Seconds {
	return from + units.Seconds(float64(i)*speed/float64(fps))
}

// Moment is the moment of a still. The options are checked ones.
func (o *Options) Moment(src Source) (units.Seconds, error) {
	from, to, err := span(src)
	if err != nil || o.At == nil {
		return from, err
	}
	return within("at", *o.At, from, to)
}

// Times are the moments of a clip. The options are checked ones.
func (o *Options) Times(src Source) (Times, error) {
	from, to, err := o.Stretch(src)
	if err != nil {
		return Times{}, err
	}
	return Times{From: from, To: to, FPS: o.FPS, Speed: o.Speed}.counted()
}

// Spanned is a play of which only the first and the last moment count.
type Spanned interface {
	Span() (from, to units.Seconds)
}

// Stretch is the part of a play that a clip shows. The options are checked ones.
func (o *Options) Stretch(p Spanned) (from, to units.Seconds, err error) {
	first, last, err := span(p)
	from, to = first, last
	if o.From != nil && err == nil {
		from, err = within("from", *o.From, first, last)
	}
	if o.To != nil && err == nil {
		to, err = within("to", *o.To, first, last)
	}
	if err == nil && o.From != nil && from >= last {
		err = fmt.Errorf("from %s is the end of the play", number(float64(*o.From), "s"))
	}
	if err == nil && o.To != nil && to <= first {
		err = fmt.Errorf("to %s is the start of the play", number(float64(*o.To), "s"))
	}
	return from, to, err
}

// counted sets Count: the length of the clip in frames, rounded.
func (t Times) counted() (Times, error) {
	n := math.Round(float64(t.To-t.From) / t.Speed * float64(t.FPS))
	if n > MaxFrames {
		return Times{}, fmt.Errorf("the clip would have %.0f frames and can have %d: choose a shorter stretch, a higher speed or fewer frames a second", n, MaxFrames)
	}
	t.Count = max(int(n), 1)
	return t, nil
}

func span(src Spanned) (from, to units.Seconds, err error) {
	from, to = src.Span()
	if length := float64(to - from); !(length >= 0) || math.IsInf(length, 0) {
		return 0, 0, errors.New("the play has no beginning and end")
	}
	return from, to, nil
}

// within is t, moved onto the end of the span that it means.
func within(option string, t, from, to units.Seconds) (units.Seconds, error) {
	err := Between(option, float64(t), float64(from-timeTolerance), float64(to+timeTolerance), "s", "the play")
	var out *OptionError
	if errors.As(err, &out) {
		out.Min, out.Max = float64(from), float64(to)
		return 0, out
	}
	return min(max(t, from), to), nil
}
