package lessonfile

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

	"homeside/model/game"
	"homeside/model/lesson"
)

// ClipFormat is the name that everything copied carries as its "format".
const ClipFormat = "homeside-clip"

// What an Error of ReadClip may wrap, besides ErrNewer.
var (
	ErrNotClip      = errors.New("not copied from a Homeside lesson")
	ErrClipTooLarge = fmt.Errorf("larger than %d MiB, too large to paste", MaxSize>>20)
)

type clipFile struct {
	Format  string     `json:"format"`
	Version int        `json:"version"`
	Plays   []play     `json:"plays,omitempty"`
	Tracks  clipTracks `json:"tracks,omitzero"`
	Marks   []mark     `json:"marks,omitempty"`
}

type clipTracks struct {
	Near1 []keyframe `json:"near1,omitempty"`
	Near2 []keyframe `json:"near2,omitempty"`
	Far1  []keyframe `json:"far1,omitempty"`
	Far2  []keyframe `json:"far2,omitempty"`
}

// WriteClip writes a clip so that ReadClip gives the same back. One outside a
// lesson's bounds is not written: the error is an *Error without a line that
// wraps a lesson.Problem. Errors of w are wrapped.
func WriteClip(w io.Writer, c lesson.Clip) error {
	if p, bad := clipProblem(c); bad {
		return problemError(p, 0)
	}
	carrier := lesson.Play{Tracks: c.Tracks}
	compact, err := json.Marshal(clipFile{
		Format: ClipFormat, Version: Version, Plays: mapped(c.Plays, toPlay), Marks: mapped(c.Marks, toMark),
		Tracks: clipTracks{toTrack(carrier, game.Near1), toTrack(carrier, game.Near2), toTrack(carrier, game.Far1), toTrack(carrier, game.Far2)},
	})
	if err != nil {
		return fmt.Errorf("writing a clip: %w", err)
	}
	data, err := layOut(compact)
	if err != nil {
		return fmt.Errorf("writing a clip: %w", err)
	}
	if _, err := w.Write(data); err != nil {
		return fmt.Errorf("writing a clip: %w", err)
	}
	return nil
}

// ReadClip reads what was copied; a whole lesson gives its plays. A mistake is
// an *Error with its place; it wraps ErrNotClip, ErrNewer or ErrClipTooLarge
// where one of them fits, and a lesson.Problem where a value lies outside the
// bounds. Errors of r are wrapped.
func ReadClip(r io.Reader) (lesson.Clip, error) {
	data, err := clips.readAll(r)
	if err != nil {
		return lesson.Clip{}, err
	}
	if format, _, err := clips.header(data); err == nil {
		if name, ok := text(format); ok && name == Format {
			l, err := parse(data)
			return lesson.Clip{Plays: l.Plays}, err
		}
	} else if !errors.Is(err, ErrNotClip) {
		return lesson.Clip{}, clips.refuse(data, "", "want the JSON text that copying gives")
	}
	return parseClip(data)
}

func parseClip(data []byte) (lesson.Clip, error) {
	var f clipFile
	if err := clips.decode(data, &f); err != nil {
		return lesson.Clip{}, err
	}
	r := &reader{}
	c := lesson.Clip{Plays: each(r, "plays", f.Plays, r.play), Marks: each(r, "marks", f.Marks, r.mark)}
	for id, track := range [4][]keyframe{f.Tracks.Near1, f.Tracks.Near2, f.Tracks.Far1, f.Tracks.Far2} {
		c.Tracks[id] = each(r, "tracks/"+game.Player(id).String(), track, func(k keyframe) lesson.Keyframe {
			return r.keyframe(k, game.Player(id).Team())
		})
	}
	if r.wrong != nil {
		at := jsontext.Pointer(r.wrongAt)
		return lesson.Clip{}, &Error{lineOf(data, at), pathOf(at), r.wrong}
	}
	if p, bad := clipProblem(c); bad {
		return lesson.Clip{}, problemError(p, lineOf(data, jsontext.Pointer(p.Pointer)))
	}
	return c, nil
}

// clipProblem is the first thing in a clip that lies outside the bounds: of its
// plays, then of its keyframes and marks in a play that has every shot.
func clipProblem(c lesson.Clip) (lesson.Problem, bool) {
	if problems := lesson.Validate(lesson.Lesson{Plays: c.Plays}); len(problems) > 0 {
		return problems[0], true
	}
	carrier := lesson.Play{Tracks: c.Tracks, Marks: c.Marks}
	for i := range lesson.MaxShots {
		carrier.Shots = append(carrier.Shots, lesson.Shot{By: game.Player(i % 2 * 2), Intent: lesson.Apex(8)})
	}
	for id := range carrier.Tracks {
		if len(carrier.Tracks[id]) == 0 {
			carrier.Tracks[id] = []lesson.Keyframe{{}}
		}
	}
	problems := lesson.Validate(lesson.Lesson{Plays: []lesson.Play{carrier}})
	if len(problems) == 0 {
		return lesson.Problem{}, false
	}
	p := problems[0]
	p.Pointer = strings.TrimPrefix(p.Pointer, "/plays/0")
	return p, true
}
