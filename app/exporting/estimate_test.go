package exporting

import (
	"context"
	"fmt"
	"testing"

	"homeside/canvas/film"
	"homeside/export"
	"homeside/export/exporttest"
	"homeside/export/formats"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
	"homeside/words"
)

// reelSubject is a reel of the first play of the built-in lesson that lasts 20 s.
func reelSubject(t testing.TB, c lesson.Camera) Subject {
	t.Helper()
	l := exporttest.BuiltIn(t)
	f, err := reel.Fit(l, 0, 20, reel.FitOptions{Camera: c, Say: func(r *rally.Rally, shot int) string { return words.FreezeAt(l, r, shot) }})
	if err != nil {
		t.Fatal(err)
	}
	r := reel.Solve(l, f.Reel)
	return Subject{Name: "reel", Lesson: l, Plays: []int{0}, Told: formats.TellReel(l, r), Source: film.Of(l, r)}
}

// size is how many bytes an export has.
func size(t *testing.T, o Output, s Subject, opt *export.Options) float64 {
	t.Helper()
	var n counter
	if err := o.write(context.Background(), &n, s, opt); err != nil {
		t.Fatal(err)
	}
	return float64(n)
}

// What a long clip is estimated to take is within a factor of 1.5 of what it does,
// for a reel of cards, holds and stretches at several speeds in every format, for a
// play in slow motion and a camera that moves in those that depend on it most.
func TestEstimatesOfLongClips(t *testing.T) {
	outputs := Outputs()
	clips := map[string]struct {
		Subject
		speed float64
		keys  []string
	}{
		"a reel":              {reelSubject(t, lesson.Camera{}), 1, []string{".gif", ".apng", ".avi", ".mp4", ".webm"}},
		"a slow play":         {subject(t), 0.3, []string{".gif", ".mp4"}},
		"a reel that follows": {reelSubject(t, lesson.Camera{Kind: lesson.Follow, Player: game.Near1}), 1, []string{".gif", ".mp4"}},
	}
	for name, c := range clips {
		for _, key := range c.keys {
			o := outputs[find(outputs, key)]
			if o.Needs != nil && o.Needs() != nil {
				t.Fatalf("%s: %v", key, o.Needs())
			}
			opt := &export.Options{Width: 144, Height: 256, FPS: 11, Speed: c.speed}
			got, err := Measure(context.Background(), o, c.Subject, opt)
			if err != nil {
				t.Fatalf("Measure of %s as %s: %v", name, key, err)
			}
			want := size(t, o, c.Subject, opt)
			if ratio := got.Bytes / want; !(ratio > 1/1.5 && ratio < 1.5) || got.Time <= 0 {
				t.Errorf("%s as %s: %.0f bytes in %v estimated, %.0f written, %.2f times; want within 1.5 times", name, key, got.Bytes, got.Time, want, ratio)
			}
		}
	}
}

// What is short or no clip is written whole: the estimate is exact.
func TestEstimatesOfShortClips(t *testing.T) {
	s, outputs := subject(t), Outputs()
	for _, key := range []string{".gif", ".avi", ".vtt", ".png", ".svg"} {
		o := outputs[find(outputs, key)]
		opt := Choice{Rate: 0}.options(o, s)
		opt.Width, opt.Height = 96, 160
		got, err := Measure(context.Background(), o, s, opt)
		if err != nil {
			t.Fatalf("Measure(%s): %v", key, err)
		}
		if want := size(t, o, s, opt); got.Bytes != want || got.Time <= 0 {
			t.Errorf("Measure(%s) = %.0f bytes in %v, want %.0f", key, got.Bytes, got.Time, want)
		}
	}
}

// Where the scene changes and how much of the picture is told from pictures.
func TestChanges(t *testing.T) {
	c := changes{0, 0.1, 0.1, 0.9, 0, 0, 0.8, 0.7, 0.7, 0.1}
	if c.cuts() != 2 || !c.cut(3) || !c.cut(6) || c.cut(7) {
		t.Errorf("cuts of %v: %d, want frames 3 and 6", c, c.cuts())
	}
	if c.lead() != 2 || (changes{0, 0.1}).lead() != 0 {
		t.Errorf("lead of %v = %d, want the 2 frames after the first", c, c.lead())
	}
	if got := c.all(); got < 1.699 || got > 1.701 {
		t.Errorf("all changes = %v, want 1.7 without the cuts", got)
	}
	if got := c.place(0.99, 3); got != 7 {
		t.Errorf("the last changes are met at frame %d, want 7", got)
	}
	if got := c.place(0.01, 5); got != 3 {
		t.Errorf("a stretch with a cut in it begins at %d, want at the cut, 3", got)
	}
	s := subject(t)
	opt, err := (&export.Options{Width: 960, Height: 1600, FPS: 10}).Checked()
	if err != nil {
		t.Fatal(err)
	}
	times, err := opt.Times(s.Source)
	if err != nil {
		t.Fatal(err)
	}
	got, err := changesOf(context.Background(), s.Source, opt, times)
	if err != nil || len(got) != times.Count || got[0] != 0 || !(got.all() > 0.01*float64(len(got)) && got.all() < 0.4*float64(len(got))) {
		t.Errorf("changesOf the play = %.3f, %v; want some of the picture in each of %d frames", got, err, times.Count)
	}
}

func TestMeasureStops(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	outputs := Outputs()
	s := subject(t)
	o := outputs[find(outputs, ".gif")]
	if e, err := Measure(ctx, o, s, Choice{}.options(o, s)); err == nil {
		t.Errorf("Measure with a cancelled context = %+v, want its error", e)
	}
	if _, err := Measure(context.Background(), outputs[find(outputs, ".frames")], s, &export.Options{}); err != errUnmeasured {
		t.Errorf("Measure of a folder = %v, want %v", err, errUnmeasured)
	}
}

// The estimate is said in figures that people use.
func TestLength(t *testing.T) {
	s := subject(t)
	from, to := s.Source.Span()
	o := Output{Kind: Clip}
	if got, want := length(o, s, &export.Options{Speed: 0.5}), 2*(to-from); fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("length at half speed = %v, want %v", got, want)
	}
	if got := length(Output{Kind: Still}, s, &export.Options{}); got != units.Seconds(0) {
		t.Errorf("length of a still = %v, want 0", got)
	}
}
