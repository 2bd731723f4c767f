package lessonfile_test

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
	"testing/iotest"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
	"homeside/model/units"
)

// small is a sound lesson in which everything that may be left out is; one
// line for each part, so that mistakes have lines of their own.
const small = `{
  "format": "homeside-lesson",
  "version": 1,
  "title": "Small",
  "plays": [
    {
      "shots": [
        {"by": "near1", "aim": {"x_ft": -5, "y_ft": 18}, "apex_ft": 9},
        {
          "by": "far1",
          "aim": {"x_ft": 2, "y_ft": -19},
          "time_s": 1.25
        }
      ],
      "tracks": {
        "near1": [{"x_ft": 5, "y_ft": -22.5}],
        "near2": [{"x_ft": -5, "y_ft": -22.5}],
        "far1": [{"x_ft": -5, "y_ft": 24}, {"at": {"event": "return.contact"}, "x_ft": -5, "y_ft": 20}],
        "far2": [{"x_ft": 5, "y_ft": 7.5}]
      },
      "marks": [{"x_ft": 1, "y_ft": 2, "text": "here"}],
      "cues": [
        {"text": "Go"},
        {"kind": "signal", "to": {"offset_s": -2}, "giver": "far2", "reader": "far1"}
      ]
    }
  ]
}
`

func TestReadGivesDefaults(t *testing.T) {
	got, err := lessonfile.Read(strings.NewReader(small))
	if err != nil {
		t.Fatalf("Read(small) = %v", err)
	}
	whole := lesson.Span{To: lesson.At(lesson.TheEnd)}
	key := func(x, y units.Feet, facing units.Degrees) lesson.Keyframe {
		return lesson.Keyframe{Place: court.Pt(x, y), Facing: facing}
	}
	second := key(-5, 20, 180)
	second.At = lesson.At(lesson.ContactOf(1))
	want := lesson.Lesson{Title: "Small", Plays: []lesson.Play{{
		Lead: 1.5,
		Shots: []lesson.Shot{
			{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(9)},
			{By: game.Far1, Aim: court.Pt(2, -19), Intent: lesson.Time(1.25)},
		},
		Tracks: [4][]lesson.Keyframe{{key(5, -22.5, 0)}, {key(-5, -22.5, 0)}, {key(-5, 24, 180), second}, {key(5, 7.5, 180)}},
		Marks:  []lesson.Mark{{Span: whole, Place: court.Pt(1, 2), Text: "here"}},
		Cues: []lesson.Cue{{Span: whole, Text: "Go"}, {
			Kind: lesson.Signal, Span: lesson.Span{To: lesson.Anchor{Event: lesson.TheEnd, Offset: -2}}, Giver: game.Far2, Reader: game.Far1,
		}},
	}}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("Read(small) = %+v\nwant %+v", got, want)
	}
}

func TestEmptyListsAndNullsAreAbsent(t *testing.T) {
	text := strings.Replace(small, `"title": "Small"`, `"title": null, "notes": "", "teams": {}`, 1)
	text = strings.Replace(text, `[{"x_ft": 1, "y_ft": 2, "text": "here"}]`, `[]`, 1)
	text = strings.Replace(text, `"shots"`, `"lead_s": null, "shots"`, 1)
	got, err := lessonfile.Read(strings.NewReader(text))
	if err != nil || got.Title != "" || got.Plays[0].Marks != nil || got.Plays[0].Lead != lesson.DefaultLead {
		t.Errorf("Read = %+v, %v, want no title, nil marks and the default lead", got, err)
	}
}

func TestByteOrderMarkIsPassedOver(t *testing.T) {
	if _, err := lessonfile.Read(strings.NewReader("\ufeff" + small)); err != nil {
		t.Errorf("Read(byte order mark and a lesson) = %v, want nil", err)
	}
}

// counting counts what is read of an endless lesson.
type counting struct{ n int64 }

func (c *counting) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = ' '
	}
	c.n += int64(len(p))
	return len(p), nil
}

func TestTooLargeIsNotReadToItsEnd(t *testing.T) {
	r := &counting{}
	_, err := lessonfile.Read(r)
	if !errors.Is(err, lessonfile.ErrTooLarge) || r.n > lessonfile.MaxSize+1 {
		t.Errorf("Read(endless) = %v after %d bytes, want ErrTooLarge after at most %d", err, r.n, lessonfile.MaxSize+1)
	}
	if got, want := err.Error(), "larger than 64 MiB, too large for a lesson"; got != want {
		t.Errorf("Read(endless) says %q, want %q", got, want)
	}
}

func TestOpen(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) string {
		path := filepath.Join(dir, name)
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		return path
	}
	if got, err := lessonfile.Open(write("good.json", small)); err != nil || got.Title != "Small" {
		t.Errorf("Open(good.json) = %q, %v, want Small", got.Title, err)
	}
	bad := write("bad.json", strings.Replace(small, "apex_ft", "Apex_ft", 1))
	if _, err := lessonfile.Open(bad); err == nil || !strings.HasPrefix(err.Error(), bad+": line 8: plays[0].shots[0].Apex_ft: ") {
		t.Errorf("Open(bad.json) = %v, want path, line and place", err)
	}
	huge := write("huge.json", small)
	if err := os.Truncate(huge, 100<<20); err != nil {
		t.Fatal(err)
	}
	if _, err := lessonfile.Open(huge); !errors.Is(err, lessonfile.ErrTooLarge) || !strings.HasPrefix(err.Error(), huge) {
		t.Errorf("Open(huge.json) = %v, want ErrTooLarge with the path", err)
	}
	absent := filepath.Join(dir, "absent.json")
	if _, err := lessonfile.Open(absent); !errors.Is(err, os.ErrNotExist) || !strings.Contains(err.Error(), absent) {
		t.Errorf("Open(absent.json) = %v, want os.ErrNotExist with the path", err)
	}
	if _, err := lessonfile.Open(dir); err == nil || !strings.Contains(err.Error(), dir) {
		t.Errorf("Open(a folder) = %v, want an error with the path", err)
	}
}

func TestReadTellsWhatTheReaderSays(t *testing.T) {
	if _, err := lessonfile.Read(iotest.ErrReader(io.ErrClosedPipe)); !errors.Is(err, io.ErrClosedPipe) {
		t.Errorf("Read from a closed pipe = %v, want one that wraps %v", err, io.ErrClosedPipe)
	}
}

// Every beginning of a lesson short of the whole is refused in one line.
func TestTruncated(t *testing.T) {
	text := strings.TrimSpace(small)
	for n := range len(text) {
		_, err := lessonfile.Read(strings.NewReader(text[:n]))
		var e *lessonfile.Error
		if !errors.As(err, &e) || strings.Contains(err.Error(), "\n") {
			t.Fatalf("Read(the first %d bytes) = %v, want an *Error of one line", n, err)
		}
		if n > 1 && !errors.Is(err, io.ErrUnexpectedEOF) {
			t.Errorf("Read(the first %d bytes) = %v, want one that wraps io.ErrUnexpectedEOF", n, err)
		}
	}
}

// A list without end is left at its bound, not held in memory first.
func TestEndlessListIsLeftAtItsBound(t *testing.T) {
	text := `{"format": "homeside-lesson", "version": 1, "plays": [` + strings.Repeat("{},", 1_000_000) + "{}]}"
	allocated := testing.AllocsPerRun(1, func() {
		_, err := lessonfile.Read(strings.NewReader(text))
		if got, want := err.Error(), "line 1: plays: too many entries, want at most 2000"; got != want {
			t.Errorf("Read(a million plays) = %q, want %q", got, want)
		}
	})
	if allocated > 10_000 {
		t.Errorf("Read(a million plays) allocated %v times, want at most 10000", allocated)
	}
}

func TestReadingDoesNotShareMemory(t *testing.T) {
	text := written(t, lessontest.Sample())
	a, err := lessonfile.Read(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	a.Teams[0].Players[0].Pace.TopSpeed = 1
	b, err := lessonfile.Read(strings.NewReader(text))
	if err != nil || b.Teams[0].Players[0].Pace.TopSpeed != 5.25 {
		t.Errorf("a second Read = %v, %v, want the top speed of the file, 5.25", b.Teams[0].Players[0].Pace, err)
	}
}
