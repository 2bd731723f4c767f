package lessonfile

import "homeside/model/units"

// Format is the name that every lesson file carries as its "format".
const Format = "homeside-lesson"

// Version is the newest version of the format that Read reads, and the one that Write writes.
const Version = 1

// The types below are the file as it stands in JSON. A pointer marks a field
// whose absence differs from its zero.

type file struct {
	Format     string     `json:"format"`
	Version    int        `json:"version"`
	Title      string     `json:"title,omitzero"`
	Notes      string     `json:"notes,omitzero"`
	Scoring    scoring    `json:"scoring,omitzero"`
	Venue      venue      `json:"venue,omitzero"`
	Conditions conditions `json:"conditions,omitzero"`
	Vocabulary vocabulary `json:"vocabulary,omitempty"`
	Teams      teams      `json:"teams,omitzero"`
	Plays      []play     `json:"plays,omitempty"`
	Match      match      `json:"match,omitempty"`
	Logo       logo       `json:"logo,omitempty"`
	Reels      []reel     `json:"reels,omitempty"`
}

type scoring struct {
	Format string `json:"format,omitzero"`
	To     int    `json:"to,omitzero"`
}

type venue struct {
	BehindBaseline units.Feet `json:"behind_baseline_ft,omitzero"`
	BesideSideline units.Feet `json:"beside_sideline_ft,omitzero"`
}

type teams struct {
	Near team[nearPlayers] `json:"near,omitzero"`
	Far  team[farPlayers]  `json:"far,omitzero"`
}

type team[Players nearPlayers | farPlayers] struct {
	Name    string  `json:"name,omitzero"`
	Starter int     `json:"starter,omitzero"`
	Signs   signs   `json:"signs,omitzero"`
	Players Players `json:"players,omitzero"`
}

type signs struct {
	Fist string `json:"closed_fist"`
	Open string `json:"open_hand"`
	Two  string `json:"two_fingers"`
}

type nearPlayers struct {
	One player `json:"near1,omitzero"`
	Two player `json:"near2,omitzero"`
}

type farPlayers struct {
	One player `json:"far1,omitzero"`
	Two player `json:"far2,omitzero"`
}

type player struct {
	Name       string `json:"name,omitzero"`
	Initials   string `json:"initials,omitzero"`
	Hand       string `json:"hand,omitzero"`
	Serving    string `json:"serving,omitzero"`
	Receiving  string `json:"receiving,omitzero"`
	Wheelchair bool   `json:"wheelchair,omitzero"`
	Pace       *pace  `json:"pace,omitzero"`
}

type play struct {
	Title     string         `json:"title,omitzero"`
	Notes     string         `json:"notes,omitzero"`
	Tags      []tag          `json:"tags,omitempty"`
	Lead      *units.Seconds `json:"lead_s,omitzero"`
	Situation situation      `json:"situation,omitzero"`
	Front     string         `json:"front,omitzero"`
	Shots     []shot         `json:"shots,omitempty"`
	Tracks    tracks         `json:"tracks"`
	Marks     []mark         `json:"marks,omitempty"`
	Cues      []cue          `json:"cues,omitempty"`
	Photo     *photo         `json:"photo,omitzero"`
}

// tag is a word to find a play by.
type tag string

type situation struct {
	Call    string `json:"call,omitzero"`
	Serving string `json:"serving,omitzero"`
}

type shot struct {
	By     string `json:"by"`
	Kind   string `json:"kind,omitzero"`
	Aim    *point `json:"aim"`
	figure `json:",inline"`
	Arc    string      `json:"arc,omitzero"`
	Spin   units.RPM   `json:"spin_rpm,omitzero"`
	Side   units.RPM   `json:"side_rpm,omitzero"`
	From   *place      `json:"from,omitzero"`
	Meet   string      `json:"meet,omitzero"`
	MeetAt *units.Feet `json:"meet_ft,omitzero"`

	Airborne bool `json:"airborne,omitzero"`

	Error *aimError `json:"error,omitzero"`
}

type point struct {
	X *units.Feet `json:"x_ft"`
	Y *units.Feet `json:"y_ft"`
}

type place struct {
	X *units.Feet `json:"x_ft"`
	Y *units.Feet `json:"y_ft"`
	Z *units.Feet `json:"z_ft"`
}

type anchor struct {
	Event  string        `json:"event,omitzero"`
	Offset units.Seconds `json:"offset_s,omitzero"`
}

type tracks struct {
	Near1 []keyframe `json:"near1"`
	Near2 []keyframe `json:"near2"`
	Far1  []keyframe `json:"far1"`
	Far2  []keyframe `json:"far2"`
}

type keyframe struct {
	At      *anchor        `json:"at,omitzero"`
	X       *units.Feet    `json:"x_ft"`
	Y       *units.Feet    `json:"y_ft"`
	Facing  *units.Degrees `json:"facing_deg,omitzero"`
	Via     *point         `json:"via,omitzero"`
	Through bool           `json:"through,omitzero"`
	Leave   *anchor        `json:"leave,omitzero"`
}

type mark struct {
	Kind string      `json:"kind,omitzero"`
	From *anchor     `json:"from,omitzero"`
	To   *anchor     `json:"to,omitzero"`
	X    *units.Feet `json:"x_ft"`
	Y    *units.Feet `json:"y_ft"`
	Tip  *point      `json:"tip,omitzero"`
	Text string      `json:"text,omitzero"`
}

type cue struct {
	Kind    string  `json:"kind,omitzero"`
	From    *anchor `json:"from,omitzero"`
	To      *anchor `json:"to,omitzero"`
	Text    string  `json:"text,omitzero"`
	Giver   string  `json:"giver,omitzero"`
	Reader  string  `json:"reader,omitzero"`
	Meaning string  `json:"meaning,omitzero"`
}
