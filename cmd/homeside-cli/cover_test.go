package main

import (
	"bytes"
	"context"
	"encoding/json"
	"math"
	"slices"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/movement"
	"homeside/model/units"
)

const coverLesson = "../../assets/lessons/left-hand-middle.json"

// coverLine asks about the third shot of the built-in lesson's second play,
// struck by far1.
const coverLine = "cover " + coverLesson + " --play 2 --event third.contact --team near "

func coverJSON(t *testing.T, line string) coverAnswer {
	t.Helper()
	var got coverAnswer
	d := json.NewDecoder(strings.NewReader(runOutput(t, line+" --json")))
	d.DisallowUnknownFields()
	if err := d.Decode(&got); err != nil {
		t.Fatalf("%s: %v", line, err)
	}
	return got
}

// The fields, as they are promised.
func TestCoverFields(t *testing.T) {
	var got map[string]any
	if err := json.Unmarshal([]byte(runOutput(t, coverLine+"--drive-mps 15 --json")), &got); err != nil {
		t.Fatal(err)
	}
	checkKeys(t, "cover", got, "cells", "covered", "forehand", "open", "per_player")
	checkKeys(t, "open", got["open"], "radius_ft", "x_ft", "y_ft")
	checkKeys(t, "per_player", got["per_player"], "near1", "near2")
	if got["cells"] != 1760.0 {
		t.Errorf("cells = %v, want 1760", got["cells"])
	}
}

func checkKeys(t *testing.T, what string, object any, want ...string) {
	t.Helper()
	m, ok := object.(map[string]any)
	if !ok {
		t.Fatalf("%s is %v, want an object", what, object)
	}
	var keys []string
	for k := range m {
		keys = append(keys, k)
	}
	if slices.Sort(keys); !slices.Equal(keys, want) {
		t.Errorf("%s has %v, want %v", what, keys, want)
	}
}

// Counted again here from the places that info tells, with the formula as it
// stands in model/cover's doc.go. The lesson's players have the default pace, its
// ball kd = 1.225 kg/m3 x .33 x pi (.0371 m)2 / (2 x .0243 kg).
func TestCoverAgainstInfo(t *testing.T) {
	var info infoLesson
	if err := json.Unmarshal([]byte(runOutput(t, "info "+coverLesson+" --json")), &info); err != nil {
		t.Fatal(err)
	}
	events := info.Plays[1].Events
	i := slices.IndexFunc(events, func(e infoEvent) bool { return e.Name == "third.contact" })
	got := coverJSON(t, coverLine+"--drive-mps 20")
	covered, alone := 0, [2]int{}
	for column := range 40 {
		for row := range 44 {
			at := court.Pt(-9.75+0.5*units.Feet(column), -0.25-0.5*units.Feet(row))
			in := [2]bool{inTime(events[i], "near1", at, 20), inTime(events[i], "near2", at, 20)}
			for n := range in {
				if in[n] {
					alone[n]++
				}
			}
			if in[0] || in[1] {
				covered++
			}
		}
	}
	for what, v := range map[string][2]float64{
		"covered": {got.Covered, float64(covered) / 1760},
		"near1":   {got.PerPlayer["near1"], float64(alone[0]) / 1760},
		"near2":   {got.PerPlayer["near2"], float64(alone[1]) / 1760},
	} {
		if math.Abs(v[0]-v[1]) > 1e-12 {
			t.Errorf("%s --drive-mps 20: %s = %v, want %v", coverLine, what, v[0], v[1])
		}
	}
}

func inTime(e infoEvent, player string, at court.Point, drive float64) bool {
	const kd = 1.225 * .33 * math.Pi * .0371 * .0371 / (2 * .0243)
	p := movement.DefaultPace()
	d := float64(court.Point(e.Ball.infoPoint).Distance(at).Metres())
	ball := (math.Exp(kd*d) - 1) / (kd * drive)
	run := court.Point(e.Players[player].Run).Distance(at).Metres() - p.Reach()
	return ball-float64(p.Reaction)-float64(p.Through(max(0, run))) >= 0
}

// A slower ball leaves more time; the default is a drive of 15 m/s; against a
// high lob everything can be reached and nothing is open.
func TestCoverShots(t *testing.T) {
	fast, middle, slow := coverJSON(t, coverLine+"--drive-mps 20"), coverJSON(t, coverLine+"--drive-mps 15"), coverJSON(t, coverLine+"--drive-mps 10")
	if !(fast.Covered < middle.Covered && middle.Covered < slow.Covered) {
		t.Errorf("covered %v at 20, %v at 15, %v at 10 m/s, want it to grow", fast.Covered, middle.Covered, slow.Covered)
	}
	if got := coverJSON(t, coverLine); got.Covered != middle.Covered {
		t.Errorf("covered %v by default, want %v as at 15 m/s", got.Covered, middle.Covered)
	}
	if got := coverJSON(t, coverLine+"--lob-ft 30"); got.Covered != 1 || got.Open != (coverDisc{}) {
		t.Errorf("against a lob 30 ft high: covered %v, open %v, want 1 and none", got.Covered, got.Open)
	}
}

func TestCoverText(t *testing.T) {
	got := runOutput(t, coverLine+"--lob-ft 30")
	for _, want := range []string{
		"third.contact, lob 30 ft high: the near team reaches 100 % of its court in time,",
		"near1 100 %, near2 100 %", "The middle, 2 ft to each side:", "Nothing is open.", "not an instruction",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%s --lob-ft 30: %q, want it to say %q", coverLine, got, want)
		}
	}
	if got, want := runOutput(t, coverLine), "Largest open disc: "; !strings.Contains(got, want) {
		t.Errorf("%s: %q, want it to say %q", coverLine, got, want)
	}
}

func TestCoverRefuses(t *testing.T) {
	const lesson = "cover " + coverLesson
	for line, want := range map[string]string{
		lesson + " --event third.contact":                                "team",
		lesson + " --team near":                                          "event",
		lesson + " --event third --team near":                            "third.contact",
		lesson + " --event sixth.contact --team near":                    "sixth",
		lesson + " --event fifth.contact --team far":                     "no fifth.contact",
		lesson + " --event return.bounce --team near":                    "nobody strikes",
		lesson + " --event third.contact --team near":                    "opponents strike at return.contact",
		lesson + " --event third.contact --team middle":                  "middle",
		lesson + " --event third.contact --team far --play 99":           "99",
		lesson + " --event third.contact --team far --play -1":           "-1",
		lesson + " --event third.contact --team far --drive-mps NaN":     "drive-mps",
		lesson + " --event third.contact --team far --drive-mps -15":     "drive-mps",
		lesson + " --event third.contact --team far --drive-mps 61":      "61",
		lesson + " --event third.contact --team far --drive-mps 0.1":     "0.1",
		lesson + " --event third.contact --team far --lob-ft 0":          "lob-ft",
		lesson + " --event third.contact --team far --lob-ft 1":          "lob 1 ft",
		lesson + " --event third.contact --team far --lob-ft Inf":        "lob",
		coverLine + "--lob-ft 20 --drive-mps 15":                         "one or the other",
		"cover":                                                          "arg",
		"cover none.json --event third.contact --team far":               "none.json",
		"cover cover.go --event third.contact --team far":                "cover.go",
		lesson + " " + coverLesson + " --event third.contact --team far": "arg",
	} {
		var out, errs bytes.Buffer
		code := run(context.Background(), strings.Fields(line), &out, &errs)
		if code != exitBad || out.Len() > 0 || strings.Count(errs.String(), "\n") != 1 || !strings.Contains(errs.String(), want) {
			t.Errorf("%s: exit %d, %q, %q, want 2 and one line that names %s", line, code, out.String(), errs.String(), want)
		}
	}
}
