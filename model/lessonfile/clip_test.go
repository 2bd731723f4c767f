package lessonfile_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
	"homeside/model/units"
)

// clips draws clips of plays, or of the keyframes and marks of one.
func clips(t *rapid.T) lesson.Clip {
	p := lessontest.Plays().Draw(t, "play")
	if rapid.Bool().Draw(t, "whole") {
		return lesson.Clip{Plays: []lesson.Play{p}}
	}
	c := lesson.Clip{Marks: p.Marks}
	for _, id := range game.Players {
		if rapid.Bool().Draw(t, "player") {
			c.Tracks[id] = p.Tracks[id]
		}
	}
	return c
}

func TestReadClipGivesWhatWasWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := clips(t)
		var b strings.Builder
		if err := lessonfile.WriteClip(&b, want); err != nil {
			t.Fatalf("WriteClip(%+v) = %v", want, err)
		}
		got, err := lessonfile.ReadClip(strings.NewReader(b.String()))
		if err != nil || !reflect.DeepEqual(got, want) {
			t.Fatalf("ReadClip(WriteClip(c)) = %+v, %v\nwant %+v\ntext:\n%s", got, err, want, b.String())
		}
	})
}

// A whole lesson can be pasted: its plays come.
func TestReadClipOfALesson(t *testing.T) {
	l := lessontest.Long(2)
	got, err := lessonfile.ReadClip(strings.NewReader(written(t, l)))
	if want := (lesson.Clip{Plays: l.Plays}); err != nil || !reflect.DeepEqual(got, want) {
		t.Errorf("ReadClip of a lesson = %+v, %v, want its two plays", got, err)
	}
}

// Text from elsewhere is refused in one line that says so, damaged clips with
// the place of the damage.
func TestReadClipRefuses(t *testing.T) {
	for text, want := range map[string]string{
		"":                         "not copied from a Homeside lesson",
		"Dear all, see you at six": "not copied from a Homeside lesson",
		"[1, 2, 3]":                "not copied from a Homeside lesson",
		`{"format": "homeside-roster", "version": 1}`:                                     "not copied from a Homeside lesson",
		`{"format": "homeside-clip", "version": 99}`:                                      "made by a newer version",
		`{"format": "homeside-clip", "version": 1, "marks": [{"x_ft": 1e9, "y_ft": 0}]}`:  "marks[0].x_ft: 1e+09, want a number from -200 to 200",
		`{"format": "homeside-clip", "version": 1, "tracks": {"near1": [{"x_ft": 1}]}}`:   "tracks.near1[0].y_ft: is missing",
		`{"format": "homeside-clip", "version": 1, "tracks": {"far3": []}}`:               "far3",
		`{"format": "homeside-clip", "version": 1, "plays": [{"tracks": {"near1": []}}]}`: "plays[0].shots",
		`{"format": "homeside-clip", "version": 1, "marks": [{"at": "never`:               "line 1",
	} {
		_, err := lessonfile.ReadClip(strings.NewReader(text))
		if err == nil || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("ReadClip(%q) error %v, want one line with %q", text, err, want)
		}
	}
}

func TestWriteClipRefusesWhatIsOutOfBounds(t *testing.T) {
	c := lesson.Clip{Marks: []lesson.Mark{{Place: court.Pt(units.Feet(1000), 0)}}}
	var b strings.Builder
	if err := lessonfile.WriteClip(&b, c); !errors.Is(err, lesson.ErrInvalid) || b.Len() > 0 {
		t.Errorf("WriteClip of a mark 1000 ft away = %v, %q written, want ErrInvalid and nothing", err, b.String())
	}
}
