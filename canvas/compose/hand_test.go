package compose

import (
	"testing"

	"homeside/canvas"
	"homeside/canvas/record"
	"homeside/model/drill"
)

// Each sign is drawn in its own way, within its square, and says what it shows.
func TestHand(t *testing.T) {
	seen := map[string]drill.Sign{}
	for _, sign := range []drill.Sign{drill.Fist, drill.OpenHand, drill.TwoFingers, drill.Unclear} {
		s := Hand(sign, 200, nil)
		text := record.Scene(s)
		if other, twice := seen[text]; twice {
			t.Errorf("%v and %v are drawn alike", sign, other)
		}
		seen[text] = sign
		if s.Title == "" || s.Panels[0].Shapes[0].Label != s.Title {
			t.Errorf("%v is labelled %q under the title %q", sign, s.Panels[0].Shapes[0].Label, s.Title)
		}
		canvas.Draw(inSquareOf{t, 200}, s)
	}
}

// inSquareOf wants every line inside a square, its own width left out.
type inSquareOf struct {
	t    *testing.T
	side float64
}

func (q inSquareOf) Image(canvas.Info, canvas.PxImage) {}

func (q inSquareOf) Path(info canvas.Info, path []canvas.PxStep, style canvas.PxStyle) {
	for _, step := range path {
		for _, p := range step.P[:1] {
			if p.X < 0 || p.Y < 0 || p.X > q.side || p.Y > q.side {
				q.t.Errorf("%s reaches %v, outside the square of %v", info.ID, p, q.side)
			}
		}
	}
}

func (q inSquareOf) Text(info canvas.Info, t canvas.PxText) {
	if t.At.X < 0 || t.At.X > q.side || t.At.Y > q.side {
		q.t.Errorf("%s stands at %v, outside the square of %v", info.ID, t.At, q.side)
	}
}
