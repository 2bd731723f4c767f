package panel

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// A small court has the run-off up to its edges, whatever its shape, and no words.
func TestSmallCourt(t *testing.T) {
	test.NewTempApp(t)
	l := start()
	l.Plays[0].Marks = []lesson.Mark{{Kind: lesson.TextMark, Span: lesson.Always(), Place: court.Pt(0, 10), Text: "waits deep"}}
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	marked := smallCourt(r, court.Surface, fyne.NewSize(120, 180), 0.5, 0)
	l.Plays[0].Marks = nil
	if r, err = rally.Solve(l, 0); err != nil {
		t.Fatal(err)
	}
	plain := smallCourt(r, court.Surface, fyne.NewSize(120, 180), 0.5, 0)
	for y := range plain.Bounds().Dy() {
		for _, x := range []int{0, plain.Bounds().Dx() - 1} {
			if got := color.NRGBAModel.Convert(plain.At(x, y)); got != look.Daylight.Surface {
				t.Fatalf("the edge at %d, %d is %v, want the run-off's %v", x, y, got, look.Daylight.Surface)
			}
		}
		for x := range plain.Bounds().Dx() {
			if plain.At(x, y) != marked.At(x, y) {
				t.Fatalf("a mark's words are drawn at %d, %d", x, y)
			}
		}
	}
}
