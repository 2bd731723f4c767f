package clip

import (
	"context"
	"testing"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/rally"
	"homeside/model/units"
)

// builtIn is the first play of the lesson that a new user sees, lying.
func builtIn(t testing.TB) export.Source {
	t.Helper()
	l := exporttest.BuiltIn(t)
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return compose.Of(r, l.Venue.Surface(), canvas.Lying)
}

// sliding is a source seen by a camera that moves: everything changes in every
// frame.
type sliding struct{ export.Source }

func (s sliding) Static(w, h int) *canvas.Scene {
	whole := s.Source.Static(w, h)
	whole.Panels = nil
	return whole
}

func (s sliding) Moving(w, h int, t units.Seconds) *canvas.Scene {
	whole, moving := s.Source.Static(w, h), s.Source.Moving(w, h, t)
	whole.Panels = append(whole.Panels, moving.Panels...)
	for i := range whole.Panels {
		whole.Panels[i].View.Origin.X += 10 * float64(t)
	}
	return whole
}

// Ten seconds of the built-in lesson at 30 frames a second.
func BenchmarkWrite(b *testing.B) {
	for name, src := range map[string]export.Source{"still": builtIn(b), "moving": sliding{builtIn(b)}} {
		from, to := src.Span()
		o := &export.Options{Width: 1920, Height: 1080, FPS: 30, Speed: float64(to-from) / 10}
		for ext, write := range writers {
			b.Run(name+" camera/"+ext, func(b *testing.B) {
				var size counting
				b.ReportAllocs()
				for b.Loop() {
					size = 0
					if err := write(context.Background(), &size, src, o); err != nil {
						b.Fatal(err)
					}
				}
				b.ReportMetric(float64(size)/1e6, "MB")
			})
		}
	}
}

// counting counts the bytes written to it.
type counting int64

func (c *counting) Write(p []byte) (int, error) {
	*c += counting(len(p))
	return len(p), nil
}
