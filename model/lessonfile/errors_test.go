package lessonfile_test

import (
	"errors"
	"strings"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

// mistakes are changes of the small lesson and what is said of them. Kind is
// the sentinel that the error wraps, if any.
var mistakes = []struct {
	old, new string
	want     string
	kind     error
}{
	// not a lesson, or not yet
	{small, "", `line 1: not a Homeside lesson: the file is empty`, lessonfile.ErrNotLesson},
	{small, " \n ", `line 1: not a Homeside lesson: the file is empty`, lessonfile.ErrNotLesson},
	{small, "\x89PNG\r\n", `line 1: not a Homeside lesson: want a JSON object that starts with {`, lessonfile.ErrNotLesson},
	{small, "[1]", `line 1: not a Homeside lesson: want a JSON object that starts with {`, lessonfile.ErrNotLesson},
	{small, `{"a": 1}`, `line 1: not a Homeside lesson: "format" is missing, want "homeside-lesson"`, lessonfile.ErrNotLesson},
	{`homeside-lesson`, `my-diagram`, `line 2: not a Homeside lesson: "format" is "my-diagram", want "homeside-lesson"`, lessonfile.ErrNotLesson},
	{`"homeside-lesson"`, `[ "homeside-lesson" ]`, `line 2: not a Homeside lesson: "format" is ["homeside-lesson"], want "homeside-lesson"`, lessonfile.ErrNotLesson},
	{`"version": 1,`, ``, `line 1: version: missing, want 1`, nil},
	{`"version": 1`, `"version": "1"`, `line 3: version: "1", want 1`, nil},
	{`"version": 1`, `"version": 0`, `line 3: version: 0, want 1`, nil},
	{`"version": 1`, `"version": 1.5`, `line 3: version: 1.5, want 1`, nil},
	{`"version": 1`, `"version": 3`, `line 3: version: made by a newer version of Homeside (version 3; this one reads up to 1)`, lessonfile.ErrNewer},
	{`"version": 1`, `"reel": [], "version": 3`, `line 3: version: made by a newer version of Homeside (version 3; this one reads up to 1)`, lessonfile.ErrNewer},

	// names
	{`"title"`, `"Title"`, `line 4: Title: names are lower-case: write "title"`, nil},
	{`"apex_ft"`, `"Apex_FT"`, `line 8: plays[0].shots[0].Apex_FT: names are lower-case: write "apex_ft"`, nil},
	{`"giver"`, `"Giver"`, `line 24: plays[0].cues[1].Giver: names are lower-case: write "giver"`, nil},
	{`"aim": {"x_ft": 2,`, `"aim": {"x": 2,`, `line 11: plays[0].shots[1].aim.x: no such name here: want one of x_ft, y_ft`, nil},
	{`"tracks": {`, `"tracks": {"near3": [],`, `line 15: plays[0].tracks.near3: no such name here: want one of near1, near2, far1, far2`, nil},
	{`"title": "Small"`, `"teams": {"near": {"players": {"far1": {}}}}`, `line 4: teams.near.players.far1: no such name here: want one of near1, near2`, nil},
	{`"title": "Small"`, `"title": "Small", "Ünknown.name": 1`, `line 4: ["Ünknown.name"]: no such name here: want one of format, version, title, notes, scoring, venue, conditions, vocabulary, teams, plays, match, logo, reels`, nil},
	{`"title": "Small",`, "\"title\": \"Small\",\n\"title\": \"Small\",", `line 5: title: "title" stands here twice`, nil},
	{`"version": 1,`, "\"version\": 1,\n\"version\": 1,", `line 4: version: "version" stands here twice`, nil},
	{`"time_s": 1.25`, "\"time_s\": 1.25,\n\"by\": \"far1\"", `line 13: plays[0].shots[1].by: "by" stands here twice`, nil},

	// signs
	{`"title": "Small"`, `"teams": {"far": {"signs": {"closed_fist": "stay", "open_hand": "switch", "two_fingers": "wink"}}}`, `line 4: teams.far.signs.two_fingers: meaning "wink": want stay, switch or fake`, nil},
	{`"title": "Small"`, `"teams": {"far": {"signs": {"open_hand": "switch", "two_fingers": "fake"}}}`, `line 4: teams.far.signs.closed_fist: meaning "": want stay, switch or fake`, nil},
	{`"title": "Small"`, `"teams": {"near": {"signs": {"closed_fist": "stay", "open_hand": "stay", "two_fingers": "stay"}}}`, `line 4: teams.near.signs: two signs mean the same, want each of stay, switch and fake once`, nil},
	{`"title": "Small"`, `"teams": {"near": {"signs": {"fist": "stay"}}}`, `line 4: teams.near.signs.fist: no such name here: want one of closed_fist, open_hand, two_fingers`, nil},

	// grammar
	{`1.25`, `NaN`, `line 12: plays[0].shots[1].time_s: want an ordinary number (NaN and Infinity are none)`, nil},
	{`1.25`, `-Infinity`, `line 12: plays[0].shots[1].time_s: want an ordinary number (NaN and Infinity are none)`, nil},
	{`1.25`, `inf`, `line 12: plays[0].shots[1].time_s: want an ordinary number (NaN and Infinity are none)`, nil},
	{`"time_s": 1.25`, `"time_s": 1.25,`, `line 12: plays[0].shots[1]: a comma too many: no comma before a closing bracket`, nil},
	{`"time_s": 1.25`, `"time_s": 1,25`, `line 12: plays[0].shots[1]: not JSON: object member name must be a string`, nil},
	{`"time_s": 1.25`, `"time_s": 01`, `line 12: plays[0].shots[1]: not JSON: invalid character '1' after object value (expecting ',' or '}')`, nil},
	{`"title": "Small",`, `"title": "Small"`, `line 5: not JSON: invalid character '"' after object value (expecting ',' or '}')`, nil},
	{`"title": "Small"`, "\"title\": \"Sm\nall\"", `line 4: title: not JSON: invalid character '\n' in string (expecting non-control character)`, nil},
	{`"title": "Small"`, "\"title\": \"Sm\xffall\"", `line 4: title: not JSON: invalid UTF-8`, nil},
	{`"title": "Small",`, `// a comment`, `line 4: not JSON: invalid character '/' at start of value`, nil},
	{"  ]\n}\n", "  ]\n}\n{}", `line 29: not JSON: invalid character '{' after top-level value`, nil},

	// types
	{`"title": "Small"`, `"title": 5`, `line 4: title: found a number, want a text in " "`, nil},
	{`1.25`, `"1.25"`, `line 12: plays[0].shots[1].time_s: found a text, want a number`, nil},
	{`1.25`, `1e999`, `line 12: plays[0].shots[1].time_s: 1e999: want a number of ordinary size`, nil},
	{`"title": "Small"`, `"scoring": {"to": 11.5}`, `line 4: scoring.to: 11.5: want a whole number of ordinary size`, nil},
	{`"aim": {"x_ft": 2, "y_ft": -19}`, `"aim": [2, -19]`, `line 11: plays[0].shots[1].aim: found a list in [ ], want an object in { }`, nil},
	{`[{"x_ft": 5, "y_ft": 7.5}]`, `{"x_ft": 5, "y_ft": 7.5}`, `line 19: plays[0].tracks.far2: found an object in { }, want a list in [ ]`, nil},
	{`"text": "Go"`, `"text": true`, `line 23: plays[0].cues[0].text: found true or false, want a text in " "`, nil},
	{`"y_ft": 20`, `"y_ft": 20, "through": 1`, `line 18: plays[0].tracks.far1[1].through: found a number, want true or false`, nil},

	// what must be there, and what must not be there together
	{`"by": "far1",`, ``, `line 9: plays[0].shots[1].by: player "": want near1, near2, far1 or far2`, nil},
	{`"aim": {"x_ft": 2, "y_ft": -19},`, ``, `line 9: plays[0].shots[1].aim: is missing`, nil},
	{`"x_ft": 2, `, ``, `line 11: plays[0].shots[1].aim.x_ft: is missing`, nil},
	{`"x_ft": 5, "y_ft": 7.5`, `"x_ft": 5`, `line 19: plays[0].tracks.far2[0].y_ft: is missing`, nil},
	{`, "apex_ft": 9`, ``, `line 8: plays[0].shots[0]: a shot needs one of apex_ft, speed_mps, time_s, net_clear_ft`, nil},
	{`"time_s": 1.25`, "\"time_s\": 1.25,\n\"apex_ft\": 9", `line 12: plays[0].shots[1].time_s: a shot takes one figure, not apex_ft and time_s together`, nil},
	{`1.25`, `1.25, "from": {"x_ft": 1, "y_ft": 1}`, `line 12: plays[0].shots[1].from.z_ft: is missing`, nil},
	{`1.25`, `1.25, "meet": "volley"`, `line 9: plays[0].shots[1].meet_ft: is missing`, nil},
	{`1.25`, `1.25, "meet_ft": 3`, `line 12: plays[0].shots[1].meet_ft: counts only with "meet" rising, falling or volley`, nil},
	{`"text": "here"`, `"tip": {"x_ft": 1, "y_ft": 1}`, `line 21: plays[0].marks[0].tip: counts only with "kind" arrow, zone, measure or highlight`, nil},
	{`"text": "here"`, `"kind": "arrow"`, `line 21: plays[0].marks[0].tip: is missing`, nil},
	{`"text": "Go"`, `"meaning": "stay"`, `line 23: plays[0].cues[0].meaning: counts only with "kind" signal`, nil},
	{`, "reader": "far1"`, ``, `line 24: plays[0].cues[1].reader: player "": want near1, near2, far1 or far2`, nil},

	// words of closed sets
	{`1.25`, `1.25, "arc": "up"`, `line 12: plays[0].shots[1].arc: arc "up": want low or high`, nil},
	{`"event": "return.contact"`, `"event": "return.hit"`, `line 18: plays[0].tracks.far1[1].at.event: event "return.hit": moment "hit": want contact, net or bounce`, nil},
	{`"shots": [`, `"situation": {"call": "4:7"}, "shots": [`, `line 7: plays[0].situation.call: call "4:7": want two scores and in side-out scoring the server, like 4-7-2`, nil},
	{`"shots": [`, `"situation": {"serving": "us"}, "shots": [`, `line 7: plays[0].situation.serving: team "us": want near or far`, nil},
	{`"title": "Small"`, `"scoring": {"format": "tennis"}`, `line 4: scoring.format: format "tennis": want side-out, rally-parity, rally-own-serve or rally-fixed`, nil},
	{`"title": "Small"`, `"teams": {"far": {"players": {"far2": {"pace": {"preset": "Fit-Adult"}}}}}`,
		`line 4: teams.far.players.far2.pace.preset: "Fit-Adult": want one of fit-adult, recreational-adult, 50-plus, 65-plus, cautious, wheelchair`, nil},

	// bounds
	{`"apex_ft": 9`, `"apex_ft": -9`, `line 8: plays[0].shots[0].apex_ft: -9, want more than 0 and at most 100`, lesson.ErrInvalid},
	{`"x_ft": 2,`, `"x_ft": 2e9,`, `line 11: plays[0].shots[1].aim.x_ft: 2e+09, want a number from -200 to 200`, lesson.ErrInvalid},
	{`"event": "return.contact"`, `"event": "third.contact"`, `line 18: plays[0].tracks.far1[1].at.event: shot 3: the play has only 2`, lesson.ErrInvalid},
	{`[{"x_ft": 5, "y_ft": 7.5}]`, `[]`, `line 19: plays[0].tracks.far2: far2 has no place: want at least one keyframe`, lesson.ErrInvalid},
	{",\n        \"far2\": [{\"x_ft\": 5, \"y_ft\": 7.5}]", ``, `line 15: plays[0].tracks.far2: far2 has no place: want at least one keyframe`, lesson.ErrInvalid},
	{`"shots": [`, `"situation": {"call": "4-201-2"}, "shots": [`, `line 7: plays[0].situation.call: 4-201-2, want scores from 0 to 200`, lesson.ErrInvalid},
	{`"title": "Small"`, `"teams": {"far": {"players": {"far2": {"pace": {"tau_s": 99}}}}}`,
		`line 4: teams.far.players.far2.pace: pace out of range: time constant is 99 s, want 0.05 to 10`, lesson.ErrInvalid},
	{`"reader": "far1"`, `"reader": "near1"`, `line 24: plays[0].cues[1].reader: near1 reads a signal of far2: want partners`, lesson.ErrInvalid},
}

func TestMistakesAreToldWithTheirPlace(t *testing.T) {
	for _, m := range mistakes {
		if !strings.Contains(small, m.old) {
			t.Fatalf("the small lesson has no %s", m.old)
		}
		_, err := lessonfile.Read(strings.NewReader(strings.Replace(small, m.old, m.new, 1)))
		if err == nil || err.Error() != m.want {
			t.Errorf("Read with %s for %s:\n got %v\nwant %s", m.new, m.old, err, m.want)
		}
		if m.kind != nil && !errors.Is(err, m.kind) {
			t.Errorf("Read with %s: errors.Is(%v, %q) = false, want true", m.new, err, m.kind)
		}
	}
}

func TestErrorHasItsParts(t *testing.T) {
	_, err := lessonfile.Read(strings.NewReader(strings.Replace(small, `"apex_ft": 9`, `"apex_ft": 0`, 1)))
	var e *lessonfile.Error
	if !errors.As(err, &e) || e.Line != 8 || e.Path != "plays[0].shots[0].apex_ft" {
		t.Errorf("Read = %#v, want an *Error of line 8, plays[0].shots[0].apex_ft", err)
	}
	var p lesson.Problem
	if !errors.As(err, &p) || p.Pointer != "/plays/0/shots/0/apex_ft" {
		t.Errorf("Read = %v, want one that wraps the problem at /plays/0/shots/0/apex_ft", err)
	}
}

func TestDeepNesting(t *testing.T) {
	deep := strings.Repeat("[", 1_000_000)
	for _, text := range []string{
		`{"x": ` + deep,
		`{"format": "homeside-lesson", "version": 1, "title": ` + deep,
		`{"format": "homeside-lesson", "version": 1, "plays": ` + deep,
		`{"format": "homeside-lesson", "version": 1, "plays": [` + strings.Repeat(`{"shots": [`, 1_000_000),
	} {
		_, err := lessonfile.Read(strings.NewReader(text))
		var e *lessonfile.Error
		if !errors.As(err, &e) || e.Line != 1 || len(err.Error()) > 300 {
			t.Errorf("Read(%.70s...) = %.300v, want a short *Error of line 1", text, err)
		}
	}
}

// An error repeats only a little of the file.
func TestErrorsStayShort(t *testing.T) {
	long := strings.Repeat("long ", 100_000)
	for _, r := range [][2]string{
		{`"title"`, `"` + long + `"`}, {`"far1",`, `"` + long + `",`}, {`1.25`, `1.25, "arc": "` + long + `"`},
		{`homeside-lesson`, long}, {`"version": 1`, `"version": "` + long + `"`}, {`1.25`, strings.Repeat("9", 100_000)},
		{`"title": "Small"`, `"title": "` + long + `"`}, {`return.contact`, long}, {`"x_ft": 2`, `"` + long + `": 1, "` + long + `": 2`},
	} {
		_, err := lessonfile.Read(strings.NewReader(strings.Replace(small, r[0], r[1], 1)))
		if err == nil || len(err.Error()) > 300 || strings.Contains(err.Error(), "\n") {
			t.Errorf("Read with %.20s... for %s = %.400v, want a short error", r[1], r[0], err)
		}
	}
}
