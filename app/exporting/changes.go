package exporting

import (
	"context"

	"homeside/canvas/raster"
	"homeside/export"
)

// changes are how much of a clip's picture changes with each frame, as shares of
// it: the first frame's is 0.
type changes []float64

// How changes are looked at.
const (
	lookedAt   = 480  // px of the longer side of the pictures
	mostLooked = 1500 // frames; of a longer clip some stand for their neighbours
)

// changesOf draws small pictures of a clip's frames.
func changesOf(ctx context.Context, src export.Source, o export.Options, times export.Times) (changes, error) {
	k := min(float64(lookedAt)/float64(max(o.Width, o.Height)), 1)
	w, h := max(int(float64(o.Width)*k), 1), max(int(float64(o.Height)*k), 1)
	src = o.Ground.Of(src)
	frames, drawn := raster.NewFrames(o.Ground.Under(src.Static(w, h))), -1
	draw := func(i int) {
		if drawn != i {
			frames.Draw(src.Moving(w, h, times.At(i)))
		}
		drawn = i
	}
	all, step := make(changes, times.Count), 1+times.Count/mostLooked
	for i := 1; i < len(all); i += step {
		if ctx.Err() != nil {
			return nil, ctx.Err()
		}
		draw(i - 1)
		draw(i)
		share := float64(frames.Changed().Pixels()) / float64(w*h)
		for n := i; n < min(i+step, len(all)); n++ {
			all[n] = share
		}
	}
	return all, nil
}

// A scene changes where most of the picture does after a frame in which little did.
const (
	cutFrom  = 0.6
	cutAfter = 0.3
)

// cut says whether the scene changes at frame i.
func (c changes) cut(i int) bool { return i > 0 && c[i] > cutFrom && c[i-1] < cutAfter }

// cuts is how often the scene changes.
func (c changes) cuts() (n int) {
	for i := range c {
		if c.cut(i) {
			n++
		}
	}
	return n
}

// lead is how many frames come after the first one before the scene changes, none
// where it never does.
func (c changes) lead() int {
	for i := range c {
		if c.cut(i) {
			return i - 1
		}
	}
	return 0
}

// all is the sum of all changes but those of the scene.
func (c changes) all() float64 { return c.within(0, len(c)) }

// within is the sum of the changes in frames from to to, to excluded, but those
// of the scene.
func (c changes) within(from, to int) (sum float64) {
	for i := from; i < min(to, len(c)); i++ {
		if !c.cut(i) {
			sum += c[i]
		}
	}
	return sum
}

// place is where a stretch of so many frames begins that is about where a share of
// all changes has happened. If the scene changes in it, it begins there.
func (c changes) place(share float64, frames int) int {
	want, sum, at := share*c.all(), 0.0, 0
	for i := range c {
		if !c.cut(i) {
			sum += c[i]
		}
		if at = i; sum >= want {
			break
		}
	}
	at = min(max(at-frames/2, 0), len(c)-frames)
	for i := min(at+frames, len(c)) - 1; i > at; i-- {
		if c.cut(i) && i <= len(c)-frames {
			return i
		}
	}
	return at
}
