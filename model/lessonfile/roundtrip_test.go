package lessonfile_test

import (
	"bytes"
	"errors"
	"io"
	"math"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
	"homeside/model/movement"
	"homeside/model/units"
)

func written(t interface {
	Helper()
	Fatalf(string, ...any)
}, l lesson.Lesson) string {
	t.Helper()
	var b strings.Builder
	if err := lessonfile.Write(&b, l); err != nil {
		t.Fatalf("Write(%+v) = %v", l, err)
	}
	return b.String()
}

func TestReadGivesWhatWasWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := lessontest.Lessons().Draw(t, "lesson")
		text := written(t, want)
		got, err := lessonfile.Read(strings.NewReader(text))
		if err != nil || !reflect.DeepEqual(got, want) {
			t.Fatalf("Read(Write(l)) = %+v, %v\nwant %+v\nfile:\n%s", got, err, want, text)
		}
		if again := written(t, got); again != text {
			t.Fatalf("a second Write gives\n%s\nwant\n%s", again, text)
		}
	})
}

func TestSampleThereAndBack(t *testing.T) {
	for _, want := range []lesson.Lesson{{}, lessontest.Sample(), lessontest.Long(3)} {
		got, err := lessonfile.Read(strings.NewReader(written(t, want)))
		if err != nil || !reflect.DeepEqual(got, want) {
			t.Errorf("Read(Write(%q)) = %+v, %v, want %+v", want.Title, got, err, want)
		}
	}
}

func TestDefaultsAreNotWritten(t *testing.T) {
	if got, want := written(t, lesson.Lesson{}), `{"format": "homeside-lesson", "version": 1}`+"\n"; got != want {
		t.Errorf("Write(Lesson{}) = %q, want %q", got, want)
	}
}

// What does not count for its kind is left out instead of being refused later.
func TestWriteDropsWhatDoesNotCount(t *testing.T) {
	l := lessontest.Sample()
	p := &l.Plays[0]
	p.Shots[1].Meet.Height = 7
	p.Shots[1].Intent.Speed = 7
	p.Marks[1].Tip.X = 7
	p.Cues[0].Reader = 1
	got, err := lessonfile.Read(strings.NewReader(written(t, l)))
	if want := lessontest.Sample(); err != nil || !reflect.DeepEqual(got, want) {
		t.Errorf("Read(Write(l)) = %+v, %v, want %+v", got, err, want)
	}
}

func TestPaceIsWrittenByItsNearestPreset(t *testing.T) {
	l := lessontest.Sample()
	preset, _ := movement.PresetByKey("65-plus")
	preset.Pace.TopSpeed = 4.4
	l.Teams[0].Players[0].Pace = &preset.Pace
	if got, want := written(t, l), `"pace": {"preset": "65-plus", "top_speed_mps": 4.4}`; !strings.Contains(got, want) {
		t.Errorf("Write gives\n%s\nwant %s in it", got, want)
	}
}

func TestNumbersAreWrittenUnrounded(t *testing.T) {
	l := lessontest.Sample()
	l.Plays[0].Lead = 0.30000000000000004 // what 0.1 + 0.2 gives in binary
	l.Plays[0].Shots[0].Spin = 1.0 / 3
	for _, want := range []string{`"lead_s": 0.30000000000000004`, `"spin_rpm": 0.3333333333333333,`} {
		if got := written(t, l); !strings.Contains(got, want) {
			t.Errorf("Write gives\n%s\nwant %s in it", got, want)
		}
	}
}

// A line holds at most 120 bytes unless one word of it is longer.
func TestLinesAreShort(t *testing.T) {
	for i, line := range strings.Split(written(t, lessontest.Sample()), "\n") {
		if len(line) > 121 { // with its comma
			t.Errorf("line %d has %d bytes, want at most 121: %s", i+1, len(line), line)
		}
	}
}

func TestWriteRefusesWhatReadWould(t *testing.T) {
	for _, c := range []struct {
		spoil func(p *lesson.Play)
		want  string
	}{
		{func(p *lesson.Play) { p.Tracks[3][0].Place.X = units.Feet(math.NaN()) }, "plays[0].tracks.far2[0].x_ft: NaN, want a number from -200 to 200"},
		{func(p *lesson.Play) { p.Lead = units.Seconds(math.Inf(1)) }, "plays[0].lead_s: +Inf, want a number from 0 to 60"},
		{func(p *lesson.Play) { p.Title = "\xff" }, "plays[0].title: is not valid UTF-8 text"},
		{func(p *lesson.Play) { p.Shots = nil }, "plays[0].shots: a play needs at least a serve"},
	} {
		l := lessontest.Sample()
		c.spoil(&l.Plays[0])
		var b bytes.Buffer
		err := lessonfile.Write(&b, l)
		if err == nil || err.Error() != c.want || !errors.Is(err, lesson.ErrInvalid) || b.Len() > 0 {
			t.Errorf("Write = %v with %d bytes written, want %q and none", err, b.Len(), c.want)
		}
	}
}

func TestWriteTellsWhatTheWriterSays(t *testing.T) {
	r, w := io.Pipe()
	r.CloseWithError(io.ErrClosedPipe)
	if err := lessonfile.Write(w, lessontest.Sample()); !errors.Is(err, io.ErrClosedPipe) {
		t.Errorf("Write to a closed pipe = %v, want one that wraps %v", err, io.ErrClosedPipe)
	}
}

func BenchmarkWrite500Plays(b *testing.B) {
	l := lessontest.Long(500)
	for b.Loop() {
		if err := lessonfile.Write(io.Discard, l); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkRead500Plays(b *testing.B) {
	text := written(b, lessontest.Long(500))
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		if _, err := lessonfile.Read(strings.NewReader(text)); err != nil {
			b.Fatal(err)
		}
	}
}
