package exporting

import (
	"context"
	"errors"
	"time"

	"homeside/export"
	"homeside/model/units"
)

// Estimate is what writing a file takes.
type Estimate struct {
	Bytes float64
	Time  time.Duration
}

// What of a clip is measured: some frames at three places of it, and the first of
// each alone.
const (
	sampleFrames = 20
	wholeUpTo    = 80 // frames; a shorter clip is measured as a whole
)

var samplePlaces = [...]float64{0.1, 0.45, 0.8}

// errUnmeasured says that an output cannot be measured.
var errUnmeasured = errors.New("not measured")

// Measure estimates an export by writing some of it to nowhere. Of a clip it writes
// twenty frames at three places, and the first of each alone: the twenty less the one
// is what nineteen frames take, the one is what the beginning of a file takes besides.
// The rest of the clip is taken to be like those. Anything else is written whole.
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
	if times.Count <= wholeUpTo {
		return measure(ctx, o, s, opt)
	}
	return sampled(ctx, o, s, checked, times)
}

// sampled measures a few frames of a long clip.
func sampled(ctx context.Context, o Output, s Subject, opt export.Options, times export.Times) (Estimate, error) {
	var first, more Estimate
	for _, place := range samplePlaces {
		start := int(place * float64(times.Count-sampleFrames))
		some, err := measure(ctx, o, s, part(opt, times, start, sampleFrames))
		if err != nil {
			return Estimate{}, err
		}
		one, err := measure(ctx, o, s, part(opt, times, start, 1))
		if err != nil {
			return Estimate{}, err
		}
		first.add(one)
		more.add(Estimate{max(some.Bytes-one.Bytes, 0), max(some.Time-one.Time, 0)})
	}
	n := float64(len(samplePlaces))
	rest := float64(times.Count-1) / (sampleFrames - 1)
	return Estimate{
		Bytes: first.Bytes/n + more.Bytes/n*rest,
		Time:  time.Duration(float64(first.Time)/n + float64(more.Time)/n*rest),
	}, nil
}

func (e *Estimate) add(f Estimate) {
	e.Bytes += f.Bytes
	e.Time += f.Time
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
