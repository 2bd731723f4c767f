package courtview

import (
	"bytes"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/app/gesture"
	"homeside/app/session"
	"homeside/assets"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/units"
)

// builtIn is the first built-in lesson.
func builtIn(t testing.TB) lesson.Lesson {
	t.Helper()
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// BenchmarkDragStep moves a player a little and draws the court as it is in a
// window of 1280 x 800.
func BenchmarkDragStep(b *testing.B) {
	test.NewTempApp(b)
	s := session.New(builtIn(b), "", nil)
	drawn := 0
	v := New(s, Events{Frame: func(_, pixels int) { drawn += pixels }})
	v.paint(738, 513)
	from := s.Current().At(s.Now()).Players[game.Near2].Drawn.Place
	v.hand.Press(s, edit.Part{Kind: edit.PlayerPart, Player: game.Near2}, from, gesture.Keys{})
	drawn = 0
	b.ReportAllocs()
	steps := 0
	for b.Loop() {
		v.hand.Move(from.Add(court.Pt(units.Feet(3+steps%50)/10, units.Feet(steps%7)/5)), gesture.Keys{})
		v.paint(738, 513)
		steps++
	}
	b.ReportMetric(float64(drawn)/float64(steps), "pixels/op")
}
