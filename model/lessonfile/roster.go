package lessonfile

import (
	"errors"
	"fmt"
	"io"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

	"homeside/model/roster"
)

// RosterFormat is the name that every roster file carries as its "format".
const RosterFormat = "homeside-roster"

// MaxRosterSize is the largest roster file that is read, in bytes.
const MaxRosterSize = 16 << 20

// What an Error of ReadRoster or OpenRoster may wrap, besides ErrNewer.
var (
	ErrNotRoster      = errors.New("not a Homeside roster")
	ErrRosterTooLarge = fmt.Errorf("larger than %d MiB, too large for a roster", MaxRosterSize>>20)
)

type rosterFile struct {
	Format  string       `json:"format"`
	Version int          `json:"version"`
	Title   string       `json:"title,omitzero"`
	Notes   string       `json:"notes,omitzero"`
	Pairs   []rosterPair `json:"pairs,omitempty"`
}

type rosterPair struct {
	Name    string        `json:"name,omitzero"`
	Notes   string        `json:"notes,omitzero"`
	Signs   signs         `json:"signs,omitzero"`
	Players rosterPlayers `json:"players,omitzero"`
}

type rosterPlayers struct {
	First  player `json:"first,omitzero"`
	Second player `json:"second,omitzero"`
}

// ReadRoster reads a roster. A mistake in the file is an *Error with its place;
// it wraps ErrNotRoster, ErrNewer or ErrRosterTooLarge where one of them fits,
// and a lesson.Problem where a value lies outside the bounds. Errors of r are
// wrapped.
func ReadRoster(r io.Reader) (roster.Roster, error) {
	data, err := rosters.readAll(r)
	if err != nil {
		return roster.Roster{}, err
	}
	var f rosterFile
	if err := rosters.decode(data, &f); err != nil {
		return roster.Roster{}, err
	}
	in := &reader{}
	out := roster.Roster{Title: f.Title, Notes: f.Notes, Pairs: each(in, "pairs", f.Pairs, in.pair)}
	if in.wrong != nil {
		at := jsontext.Pointer(in.wrongAt)
		return roster.Roster{}, &Error{lineOf(data, at), pathOf(at), in.wrong}
	}
	if problems := roster.Validate(out); len(problems) > 0 {
		return roster.Roster{}, problemError(problems[0], lineOf(data, jsontext.Pointer(problems[0].Pointer)))
	}
	return out, nil
}

func (r *reader) pair(p rosterPair) roster.Pair {
	out := roster.Pair{Name: p.Name, Notes: p.Notes, Signs: r.signs(p.Signs)}
	r.in("players/first", func() { out.Players[0] = r.player(p.Players.First) })
	r.in("players/second", func() { out.Players[1] = r.player(p.Players.Second) })
	return out
}

// OpenRoster reads the roster file at path, which its errors name.
func OpenRoster(path string) (roster.Roster, error) {
	f, err := rosters.open(path)
	if err != nil {
		return roster.Roster{}, err
	}
	defer f.Close()
	r, err := ReadRoster(f)
	if err != nil {
		return roster.Roster{}, fmt.Errorf("%s: %w", path, err)
	}
	return r, nil
}

// WriteRoster writes a roster so that ReadRoster gives the same one back. One
// outside the bounds is not written at all: the error is an *Error without a
// line that wraps a lesson.Problem. Errors of w are wrapped.
func WriteRoster(w io.Writer, r roster.Roster) error {
	if problems := roster.Validate(r); len(problems) > 0 {
		return problemError(problems[0], 0)
	}
	compact, err := json.Marshal(rosterFile{RosterFormat, Version, r.Title, r.Notes, mapped(r.Pairs, toPair)})
	if err != nil {
		return fmt.Errorf("writing a roster: %w", err)
	}
	data, err := layOut(compact)
	if err != nil {
		return fmt.Errorf("writing a roster: %w", err)
	}
	if _, err := w.Write(data); err != nil {
		return fmt.Errorf("writing a roster: %w", err)
	}
	return nil
}

func toPair(p roster.Pair) rosterPair {
	return rosterPair{p.Name, p.Notes, toSigns(p.Signs), rosterPlayers{toPlayer(p.Players[0]), toPlayer(p.Players[1])}}
}
