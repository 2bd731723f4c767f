package courtview

import (
	"bytes"
	"image"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/app/gesture"
	"homeside/app/session"
	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/units"
)

// dragged is a view in which a player is held, and the places that the hand goes
// through, one after the other.
func dragged(t testing.TB, e Events) (v *View, place func(step int) court.Point) {
	t.Helper()
	test.NewTempApp(t)
	s := session.New(exporttest.BuiltIn(t), "", nil)
	v = New(s, e)
	v.paint(738, 513)
	from := s.Current().At(s.Now()).Players[game.Near2].Drawn.Place
	v.hand.Press(s, edit.Part{Kind: edit.PlayerPart, Player: game.Near2}, from, gesture.Keys{})
	return v, func(step int) court.Point {
		return from.Add(court.Pt(units.Feet(3+step%50)/10, units.Feet(step%7)/5))
	}
}

// What is painted under a hand is what a view paints that has not seen the drag.
func TestDragIsPaintedWhole(t *testing.T) {
	v, place := dragged(t, Events{})
	for step := range 12 {
		v.hand.Move(place(step*5), gesture.Keys{})
		fresh := New(v.session, Events{})
		fresh.hand, fresh.layout = v.hand, v.layout
		got, want := v.paint(738, 513).(*image.RGBA), fresh.paint(738, 513).(*image.RGBA)
		if !bytes.Equal(got.Pix, want.Pix) {
			t.Fatalf("after step %d of a drag the court is not as it is painted anew", step)
		}
	}
}

// BenchmarkDragStep moves a player a little and paints the court as it is in a
// window of 1280 x 800.
func BenchmarkDragStep(b *testing.B) {
	drawn, steps := 0, 0
	v, place := dragged(b, Events{Frame: func(_, pixels int) { drawn += pixels }})
	drawn = 0
	b.ReportAllocs()
	for b.Loop() {
		v.hand.Move(place(steps), gesture.Keys{})
		v.paint(738, 513)
		steps++
	}
	b.ReportMetric(float64(drawn)/float64(steps), "pixels/op")
}
