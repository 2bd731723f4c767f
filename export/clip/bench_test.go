package clip

import (
	"bytes"
	"context"
	"testing"

	"homeside/assets"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export"
	"homeside/model/lessonfile"
	"homeside/model/rally"
)

// builtIn is the first play of the lesson that a new user sees, lying.
func builtIn(t testing.TB) export.Source {
	t.Helper()
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return compose.Of(r, l.Venue.Surface(), canvas.Lying)
}

// Ten seconds of the built-in lesson at 30 frames a second.
func BenchmarkWrite(b *testing.B) {
	src := builtIn(b)
	from, to := src.Span()
	o := &export.Options{Width: 1920, Height: 1080, FPS: 30, Speed: float64(to-from) / 10}
	for ext, write := range writers {
		b.Run(ext, func(b *testing.B) {
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

// counting counts the bytes written to it.
type counting int64

func (c *counting) Write(p []byte) (int, error) {
	*c += counting(len(p))
	return len(p), nil
}
