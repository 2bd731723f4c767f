package panel

import (
	"reflect"
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/model/game"
	"homeside/model/lesson/lessontest"
)

// A form that nobody touches gives the lesson back; figures left empty are the defaults.
func TestLessonForm(t *testing.T) {
	test.NewTempApp(t)
	l := lessontest.Long(1)
	for _, heat := range []*float64{nil, new(0.0), new(30.0)} {
		l.Conditions.Temperature = heat
		if got, err := NewLessonForm(l).Lesson(); err != nil || !reflect.DeepEqual(got, l) {
			t.Errorf("an untouched form gives %+v, %v, want the lesson with %+v", got.Conditions, err, l.Conditions)
		}
	}
	f := NewLessonForm(l)
	f.format.SetSelectedIndex(int(game.RallyFixed))
	f.ball.SetSelectedIndex(0)
	for _, v := range f.fields {
		v.entry.SetText("")
	}
	f.fields[1].entry.SetText("9,5")
	got, err := f.Lesson()
	if err != nil {
		t.Fatal(err)
	}
	if got.Scoring.Format != game.RallyFixed || got.Conditions.Indoor || got.Conditions.Temperature != nil || got.Venue.BehindBaseline != 9.5 || got.Venue.BesideSideline != 0 || got.Scoring.To != 0 {
		t.Errorf("the form gives %+v, %+v, %+v", got.Scoring, got.Venue, got.Conditions)
	}
}

func TestLessonFormRefuses(t *testing.T) {
	test.NewTempApp(t)
	for _, c := range []struct{ text, want string }{{"deep", "is not a number"}, {"9999", "want a number from"}} {
		f := NewLessonForm(lessontest.Long(1))
		f.fields[1].entry.SetText(c.text)
		if _, err := f.Lesson(); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("a run-off of %q: %v, want an error with %q", c.text, err, c.want)
		}
	}
}
