package formats

import (
	"context"
	"math"
	"path/filepath"
	"testing"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/film"
	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
)

// heardExts are the formats that are heard, with the pitches in Hz by which a
// contact and a bounce are told.
var (
	heardExts = []string{".mp4", ".webm"}
	pitches   = map[lesson.Moment]float64{lesson.Contact: 1000, lesson.Bounce: 620}
)

// sounded is a clip with its beeps, small and of few frames.
func sounded(t *testing.T, ext string, src export.Source, told Told, o export.Options) (path string, samples []float64, after units.Seconds) {
	t.Helper()
	o.Width, o.Height, o.FPS, o.Track = 64, 96, 5, told.Beeps.WriteTrack
	path = filepath.Join(t.TempDir(), "x"+ext)
	if err := Save(context.Background(), path, src, &o); err != nil {
		t.Fatal(err)
	}
	return path, exporttest.Heard(t, path), exporttest.HeardAfter(t, path)
}

// checkHeard looks for a beep within 5 ms of a time of the clip.
func checkHeard(t *testing.T, what any, samples []float64, after units.Seconds, hz float64, want units.Seconds) {
	t.Helper()
	got, strength := exporttest.Onset(samples, hz, want)
	if got += after; math.Abs(float64(got-want)) > 0.005 || strength < 10 {
		t.Errorf("%v is heard at %.4f s (strength %.1f), want %.4f within 5 ms", what, got, strength, want)
	}
}

// The events of a play are heard in the clip at their times, and it is heard to
// its end.
func TestClipsAreHeard(t *testing.T) {
	l := exporttest.BuiltIn(t)
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	from := units.Seconds(0.4)
	src := compose.Of(r, l.Venue.Surface(), canvas.Upright)
	for _, ext := range heardExts {
		for start, o := range map[units.Seconds]export.Options{r.From: {}, from: {From: &from, Speed: 0.5}} {
			path, samples, after := sounded(t, ext, src, Tell(l, r), o)
			speed, found := 1.0, 0
			if o.Speed != 0 {
				speed = o.Speed
			}
			for _, e := range r.Events {
				hz, ok := pitches[e.Name.Moment]
				if !ok || !e.Reached || e.At < start || e.Name == lesson.TheEnd {
					continue
				}
				found++
				checkHeard(t, e.Name, samples, after, hz, units.Seconds(float64(e.At-start)/speed))
			}
			clip, lasts := exporttest.Probe(t, path), float64(len(samples))/exporttest.HeardRate
			if found < 4 || math.Abs(lasts-float64(clip.Frames)/5) > 0.022 {
				t.Errorf("%s from %v: %d events looked for, want 4 at least; %.3f s are heard of %d frames of a 5th", ext, start, found, lasts, clip.Frames)
			}
		}
	}
}

// A reel is heard where it shows: after its card, in the slow take, after the
// picture has held, and in its second loop.
func TestReelsAreHeard(t *testing.T) {
	l := exporttest.BuiltIn(t)
	from, to := lesson.Anchor{Offset: -0.5}, lesson.Anchor{Offset: 2.5}
	solved := reel.Solve(l, lesson.Reel{
		Title: lesson.Card{Heading: "a", Length: 1},
		Takes: []lesson.Take{{Play: 1, From: &from, To: &to, Speed: 0.5, Loops: 2, Freezes: []lesson.Freeze{{At: lesson.Anchor{Offset: 0.3}, Length: 1}}}},
	})
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	for _, ext := range heardExts {
		_, samples, after := sounded(t, ext, film.Of(l, solved), TellReel(l, solved), export.Options{})
		found := 0
		for _, e := range r.Events {
			hz, ok := pitches[e.Name.Moment]
			if !ok || !e.Reached || e.At > 2.4 {
				continue
			}
			for loop := range 2 {
				at := 1 + (e.At+0.5)/0.5 + units.Seconds(loop)*(3/0.5+1)
				if e.At > 0.3 {
					at++
				}
				found++
				checkHeard(t, e.Name, samples, after, hz, at)
			}
		}
		if found < 6 {
			t.Errorf("%s: %d beeps looked for, want 6 at least", ext, found)
		}
	}
}

// Where nothing beeps the clip is silent to its end.
func TestClipsWithoutBeeps(t *testing.T) {
	for _, ext := range heardExts {
		_, samples, _ := sounded(t, ext, play, Told{}, export.Options{})
		if loud := exporttest.Loudest(samples); loud > 1e-4 || math.Abs(float64(len(samples))-exporttest.HeardRate) > 1100 {
			t.Errorf("%s without beeps: %d samples, the loudest %v, want a second of silence", ext, len(samples), loud)
		}
	}
}
