package exporting

import (
	"context"
	"time"

	"homeside/export"
)

// sampler measures stretches of a long clip.
type sampler struct {
	ctx     context.Context
	output  Output
	subject Subject
	options export.Options
	times   export.Times
	frames  int   // of a stretch
	err     error // the first one; nothing is measured after it

	halves, stills, moves time.Duration // of all stretches: half as long and still, still, moving
	moved                 float64       // changes in those that move
}

// clip puts a clip together from what its pieces take: whole pictures at its
// beginning, where the scene changes and where the packer wants one, frames in which
// nothing changes, and the changes. The frames up to the first change of the scene,
// such as a title card, count by themselves.
func (m *sampler) clip(c changes) (Estimate, error) {
	first := m.still(0)
	var picture, frame, all float64 // means of the places
	n := float64(len(samplePlaces))
	for _, share := range samplePlaces {
		at := c.place(share, m.frames)
		s := m.still(at)
		changed, change := m.moving(at), c.within(at+1, at+m.frames)
		all += max(changed-s.all, 0) / n / max(change, leastChange)
		picture, frame = picture+s.picture/n, frame+s.frame/n
		m.moved += change
	}
	whole := float64(c.cuts())
	if every := keyEvery[m.output.Ext]; every > 0 {
		whole += float64((len(c) - 1) / every)
	}
	lead := float64(c.lead())
	bytes := first.picture + first.frame*lead + frame*(float64(len(c))-1-lead) + max(picture-frame, 0)*whole + all*c.all()
	return Estimate{bytes, m.lasts(c)}, m.err
}

// leastChange keeps a stretch in which next to nothing changes from being taken
// for what changes cost.
const leastChange = 1e-3

// lasts is how long the clip takes: what a file takes to begin with, a frame that
// stands still, and what one that moves takes more.
func (m *sampler) lasts(c changes) time.Duration {
	places := float64(len(samplePlaces))
	half, still, moving := m.halves.Seconds()/(places+1), m.stills.Seconds()/(places+1), m.moves.Seconds()/places
	frame := max(still-half, 0) / float64(m.frames/2)
	begin := max(still-frame*float64(m.frames), 0)
	more := max(moving-still, 0) / float64(m.frames)
	share := min(c.all()/float64(len(c))/max(m.moved/places/float64(m.frames), leastChange), 1)
	return time.Duration((begin + float64(len(c))*(frame+more*share)) * float64(time.Second))
}

// stillness is the bytes of a picture that stands still.
type stillness struct {
	all            float64 // of so many frames
	picture, frame float64 // of the first, and each that follows
}

// still measures a frame of the clip standing still, at two lengths: of a single frame
// a packer makes another one than where it sees more coming.
func (m *sampler) still(at int) stillness {
	s := m.subject
	s.Source = held{s.Source, m.times.At(at)}
	half := m.measure(s, at, m.frames/2, &m.halves)
	all := m.measure(s, at, m.frames, &m.stills)
	frame := max(all-half, 0) / float64(m.frames/2)
	return stillness{all, max(all-frame*float64(m.frames-1), 0), frame}
}

func (m *sampler) moving(at int) float64 {
	return m.measure(m.subject, at, m.frames, &m.moves)
}

// measure is the bytes of some frames; it adds how long they took.
func (m *sampler) measure(s Subject, start, frames int, took *time.Duration) float64 {
	if m.err != nil {
		return 0
	}
	var e Estimate
	e, m.err = measure(m.ctx, m.output, s, part(m.options, m.times, start, frames))
	*took += e.Time
	return e.Bytes
}
