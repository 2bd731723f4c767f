package exporting

import (
	"context"
	"errors"
	"time"

	"homeside/canvas"
	"homeside/export"
	"homeside/model/units"
)

// Estimate is what writing a file takes.
type Estimate struct {
	Bytes float64
	Time  time.Duration
}

// What of a clip is measured.
const (
	stretchFrames = 12 // of a stretch
	aheadFrames   = 24 // of a stretch for packers that look at frames ahead of the one they pack
	wholeUpTo     = 8  // stretches; a clip that is no longer is measured as a whole
)

// samplePlaces are where, as shares of all that changes in the clip: the middles
// of its thirds.
var samplePlaces = [...]float64{1.0 / 6, 3.0 / 6, 5.0 / 6}

// keyEvery is after how many frames a packer that looks ahead begins with a whole
// picture again where nobody tells it otherwise: x264's --keyint and libvpx's kf_max_dist.
var keyEvery = map[string]int{".mp4": 250, ".webm": 128}

// errUnmeasured says that an output cannot be measured.
var errUnmeasured = errors.New("not measured")

// Measure estimates an export by writing some of it to nowhere; what is no clip, or
// a short one, is written whole. Of a longer clip three stretches are written, each
// also with the picture standing still. What a stretch takes more than the still one is
// for its changes; how much of the picture changes with each frame of the clip is seen
// from small pictures of all of them, so that holds and cards count as what they are.
func Measure(ctx context.Context, o Output, s Subject, opt *export.Options) (Estimate, error) {
	if o.write == nil {
		return Estimate{}, errUnmeasured
	}
	if o.Kind != Clip {
		return measure(ctx, o, s, opt)
	}
	checked, err := opt.Checked()
	if err != nil {
		return Estimate{}, err
	}
	times, err := checked.Times(s.Source)
	if err != nil {
		return Estimate{}, err
	}
	m := &sampler{ctx: ctx, output: o, subject: s, options: checked, times: times, frames: stretchFrames}
	if keyEvery[o.Ext] > 0 {
		m.frames = aheadFrames
	}
	if times.Count <= wholeUpTo*m.frames {
		return measure(ctx, o, s, opt)
	}
	c, err := changesOf(ctx, s.Source, checked, times)
	if err != nil {
		return Estimate{}, err
	}
	return m.clip(c)
}

// held is a source that stands still.
type held struct {
	export.Source
	at units.Seconds
}

// Moving implements export.Source.
func (h held) Moving(width, height int, _ units.Seconds) *canvas.Scene {
	return h.Source.Moving(width, height, h.at)
}

// part are the options of so many frames of the clip.
func part(o export.Options, times export.Times, start, frames int) *export.Options {
	from := times.At(start)
	to := from + units.Seconds(float64(frames)*o.Speed/float64(o.FPS))
	o.From, o.To, o.Progress = &from, &to, nil
	return &o
}

// counter counts what is written to it.
type counter int64

func (c *counter) Write(p []byte) (int, error) {
	*c += counter(len(p))
	return len(p), nil
}

func measure(ctx context.Context, o Output, s Subject, opt *export.Options) (Estimate, error) {
	c := *opt
	c.Progress = func(int, int) {}
	var n counter
	begin := time.Now()
	err := o.write(ctx, export.Writer(ctx, &n), s, &c)
	return Estimate{float64(n), time.Since(begin)}, err
}
