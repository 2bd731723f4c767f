package main

import (
	"bytes"
	"fmt"
	"math"

	"homeside/assets"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export"
	"homeside/model/lessonfile"
	"homeside/model/rally"
	"homeside/model/units"
)

// The scenes: the first play of the built-in lesson, lying.
const (
	still  = "still"  // as homeside-cli exports it, 1920 x 1080 px
	moving = "moving" // a camera that slides along: everything changes in every frame
	again  = "again"  // over and over at its own speed, 640 x 360 px, for long clips
)

// job is a clip to be made.
type job struct {
	scene         string
	source        export.Source
	seconds       float64
	fps           int
	width, height int
}

func jobOf(scene string, seconds float64, fps int) (job, error) {
	src, err := builtIn()
	if err != nil {
		return job{}, err
	}
	j := job{scene, src, seconds, fps, 1920, 1080}
	switch scene {
	case still:
	case moving:
		j.source = sliding{src}
	case again:
		j.source, j.width, j.height = repeated{src, units.Seconds(seconds)}, 640, 360
	default:
		return job{}, fmt.Errorf("no scene is called %q", scene)
	}
	return j, nil
}

// speed makes the clip as long as it shall be.
func (j job) speed() float64 {
	from, to := j.source.Span()
	return float64(to-from) / j.seconds
}

func (j job) frames() int { return int(math.Round(j.seconds * float64(j.fps))) }

func (j job) options() *export.Options {
	return &export.Options{Width: j.width, Height: j.height, FPS: j.fps, Speed: j.speed()}
}

// at is the moment of a frame.
func (j job) at(i int) units.Seconds {
	from, _ := j.source.Span()
	return export.FrameTime(i, j.fps, j.speed(), from)
}

func builtIn() (export.Source, error) {
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		return nil, err
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	r, err := rally.Solve(l, 0)
	if err != nil {
		return nil, err
	}
	return compose.Of(r, l.Venue.Surface(), canvas.Lying), nil
}

// sliding is a source seen by a camera that moves.
type sliding struct{ export.Source }

// Static implements export.Source: nothing stands still.
func (s sliding) Static(w, h int) *canvas.Scene {
	whole := s.Source.Static(w, h)
	whole.Panels = nil
	return whole
}

// Moving implements export.Source.
func (s sliding) Moving(w, h int, t units.Seconds) *canvas.Scene {
	whole, moving := s.Source.Static(w, h), s.Source.Moving(w, h, t)
	whole.Panels = append(whole.Panels, moving.Panels...)
	for i := range whole.Panels {
		whole.Panels[i].View.Origin.X += 10 * float64(t)
	}
	return whole
}

// repeated is a source that begins anew until a time is full.
type repeated struct {
	export.Source
	length units.Seconds
}

// Span implements export.Source.
func (r repeated) Span() (from, to units.Seconds) { return 0, r.length }

// Moving implements export.Source.
func (r repeated) Moving(w, h int, t units.Seconds) *canvas.Scene {
	from, to := r.Source.Span()
	return r.Source.Moving(w, h, from+units.Seconds(math.Mod(float64(t), float64(to-from))))
}
