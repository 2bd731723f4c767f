package export_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"homeside/export"
	"homeside/export/exporttest"
	_ "homeside/internal/fixedseed"
	"homeside/model/units"
)

func seconds(v float64) *units.Seconds { return new(units.Seconds(v)) }

func TestCheckedDefaults(t *testing.T) {
	for _, o := range []*export.Options{nil, {}} {
		got, err := o.Checked()
		if err != nil || got.Width != 720 || got.Height != 1280 || got.FPS != 25 || got.Speed != 1 {
			t.Errorf("%v.Checked() = %+v, %v", o, got, err)
			continue
		}
		got.Progress(1, 1) // nobody asks, and nothing breaks
	}
}

func TestCheckedBounds(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		o    export.Options
		want string // "" is good
	}{
		{export.Options{Width: 16, Height: 8192, FPS: 60, Speed: 0.05}, ""},
		{export.Options{Width: 8192, Height: 16, FPS: 1, Speed: 8}, ""},
		{export.Options{Width: 15, Height: 100}, "width 15 px is outside the 16 to 8192 px"},
		{export.Options{Width: 100, Height: 8193}, "height 8193 px is outside the 16 to 8192 px"},
		{export.Options{Width: -100, Height: 100}, "width -100 px"},
		{export.Options{Width: 100}, "a picture needs both a width and a height"},
		{export.Options{FPS: 61}, "fps 61 is outside the 1 to 60"},
		{export.Options{FPS: -1}, "fps -1"},
		{export.Options{Speed: 0.049}, "speed 0.049 is outside the 0.05 to 8"},
		{export.Options{Speed: 8.1}, "speed 8.1"},
		{export.Options{Speed: -1}, "speed -1"},
		{export.Options{Speed: nan}, "speed NaN"},
		{export.Options{Speed: math.Inf(1)}, "speed +Inf"},
		{export.Options{From: seconds(1), To: seconds(2)}, ""},
		{export.Options{From: seconds(2), To: seconds(2)}, "from 2 s is not before to 2 s"},
		{export.Options{From: seconds(3), To: seconds(-1)}, "from 3 s is not before to -1 s"},
		{export.Options{From: seconds(nan), To: seconds(1)}, "from NaN s"},
	} {
		checkError(t, c.o, errOf(c.o.Checked()), c.want)
	}
}

func errOf[T any](_ T, err error) error { return err }

func checkError(t *testing.T, o any, err error, want string) {
	t.Helper()
	if want == "" && err != nil {
		t.Errorf("%+v: got error %v, want none", o, err)
	}
	if want != "" && (err == nil || !strings.Contains(err.Error(), want)) {
		t.Errorf("%+v: got error %v, want %q", o, err, want)
	}
}

// play ends at a time that messages round.
var play = exporttest.Play{From: -1.5, To: 4 + 1.0/3}

func TestMoment(t *testing.T) {
	for _, c := range []struct {
		at        *units.Seconds
		want      units.Seconds
		wantError string
	}{
		{nil, -1.5, ""},
		{seconds(0), 0, ""},
		{seconds(-1.5), -1.5, ""},
		{seconds(4.333), 4.333, ""},
		{seconds(4.3335), play.To, ""}, // rounds to the 4.333 that the message says
		{seconds(4.334), 0, "at 4.334 s is outside the -1.5 to 4.333 s of the play"},
		{seconds(-2), 0, "at -2 s is outside"},
		{seconds(math.NaN()), 0, "at NaN s is outside"},
	} {
		o, err := (&export.Options{At: c.at}).Checked()
		if err != nil {
			t.Fatal(err)
		}
		got, err := o.Moment(play)
		checkError(t, c.at, err, c.wantError)
		if got != c.want && c.wantError == "" {
			t.Errorf("Moment at %v = %v, want %v", *c.at, got, c.want)
		}
	}
}

func TestTimes(t *testing.T) {
	for _, c := range []struct {
		o         export.Options
		play      exporttest.Play
		from      units.Seconds
		count     int
		wantError string
	}{
		{export.Options{}, exporttest.Play{From: -1.5, To: 2.5}, -1.5, 100, ""},
		{export.Options{FPS: 30, Speed: 0.5}, exporttest.Play{From: -1.5, To: 2.5}, -1.5, 240, ""},
		{export.Options{FPS: 10, Speed: 8}, exporttest.Play{To: 1}, 0, 1, ""}, // 1.25 frames
		{export.Options{FPS: 1, Speed: 8}, exporttest.Play{To: 1}, 0, 1, ""},  // 0.125: at least 1
		{export.Options{FPS: 10, Speed: 1}, exporttest.Play{To: 0.16}, 0, 2, ""},
		{export.Options{}, exporttest.Play{From: 2, To: 2}, 2, 1, ""},
		{export.Options{From: seconds(0), To: seconds(2)}, play, 0, 50, ""},
		{export.Options{From: seconds(3.9)}, exporttest.Play{To: 4}, 3.9, 3, ""}, // 2.5 is rounded away from 0
		{export.Options{To: seconds(-1)}, play, -1.5, 13, ""},
		{export.Options{From: seconds(-2)}, play, 0, 0, "from -2 s is outside the -1.5 to 4.333 s of the play"},
		{export.Options{To: seconds(5)}, play, 0, 0, "to 5 s is outside the -1.5 to 4.333 s of the play"},
		{export.Options{From: seconds(4.3335)}, play, 0, 0, "is the end of the play"},
		{export.Options{To: seconds(-1.5)}, play, 0, 0, "to -1.5 s is the start of the play"},
		{export.Options{From: seconds(math.NaN())}, play, 0, 0, "from NaN s is outside"},
		{export.Options{FPS: 60, Speed: 0.05}, exporttest.Play{To: 83}, 0, 99600, ""},
		{export.Options{FPS: 60, Speed: 0.05}, exporttest.Play{To: 84}, 0, 0, "100800 frames"},
		{export.Options{}, exporttest.Play{From: 1}, 0, 0, "no beginning and end"},
		{export.Options{}, exporttest.Play{To: units.Seconds(math.Inf(1))}, 0, 0, "no beginning and end"},
		{export.Options{}, exporttest.Play{To: units.Seconds(math.NaN())}, 0, 0, "no beginning and end"},
	} {
		o, err := c.o.Checked()
		if err != nil {
			t.Fatal(err)
		}
		got, err := o.Times(c.play)
		checkError(t, c, err, c.wantError)
		if c.wantError == "" && (got.Count != c.count || got.From != c.from || got.At(0) != c.from) {
			t.Errorf("%+v.Times(%+v) = %+v, want %d frames from %v", c.o, c.play, got, c.count, c.from)
		}
	}
}

func TestFrameTime(t *testing.T) {
	for _, c := range []struct {
		i, fps int
		speed  float64
		from   units.Seconds
		want   units.Seconds
	}{
		{0, 25, 1, -1.5, -1.5}, {25, 25, 1, -1.5, -0.5}, {30, 30, 0.5, 0, 0.5}, {3, 50, 2, 1, 1.12},
	} {
		got := export.FrameTime(c.i, c.fps, c.speed, c.from)
		if math.Abs(float64(got-c.want)) > 1e-12 {
			t.Errorf("FrameTime(%d, %d, %v, %v) = %v, want %v", c.i, c.fps, c.speed, c.from, got, c.want)
		}
	}
}

// Every frame is within the stretch, and the clip is as long as the stretch to half a frame.
func TestTimesProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := exporttest.Play{From: units.Seconds(rapid.Float64Range(-10, 0).Draw(t, "from"))}
		p.To = p.From + units.Seconds(rapid.Float64Range(0, 60).Draw(t, "length"))
		o := export.Options{FPS: rapid.IntRange(1, 60).Draw(t, "fps"), Speed: rapid.Float64Range(0.05, 8).Draw(t, "speed")}
		o, err := o.Checked()
		if err != nil {
			t.Fatal(err)
		}
		got, err := o.Times(p)
		if err != nil {
			t.Fatal(err)
		}
		if last := got.At(got.Count - 1); last < p.From || last > p.To {
			t.Errorf("the last of %d frames is at %v, outside %v to %v", got.Count, last, p.From, p.To)
		}
		frames := float64(p.To-p.From) / o.Speed * float64(o.FPS)
		if d := math.Abs(frames - float64(got.Count)); d > 0.5+1e-6 && got.Count > 1 {
			t.Errorf("%d frames for a stretch of %v", got.Count, frames)
		}
	})
}

func TestOptionErrorSaysWhere(t *testing.T) {
	var e *export.OptionError
	if err := export.Between("fps", 60, 1, 50, "", "a GIF"); !errors.As(err, &e) || err.Error() != "fps 60 is outside the 1 to 50 of a GIF" {
		t.Errorf("got %v", err)
	}
}
