package main

import (
	"context"
	"encoding/json"
	"maps"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// object is JSON whose keys have been checked.
type object map[string]any

func keyed(t *testing.T, what string, v any, want ...string) object {
	t.Helper()
	o, ok := v.(map[string]any)
	if got := slices.Sorted(maps.Keys(o)); !ok || !slices.Equal(got, slices.Sorted(slices.Values(want))) {
		t.Fatalf("%s has the keys %v, want %v", what, got, want)
	}
	return o
}

func list(t *testing.T, what string, v any) []any {
	t.Helper()
	l, ok := v.([]any)
	if !ok {
		t.Fatalf("%s is %v, want a list", what, v)
	}
	return l
}

// checkNumber checks that a number is written so that it reads back the same.
func checkNumber[T ~float64](t *testing.T, what string, v any, want T) {
	t.Helper()
	n, ok := v.(json.Number)
	got, err := strconv.ParseFloat(n.String(), 64)
	if !ok || err != nil || got != float64(want) {
		t.Errorf("%s is %v, want %v unrounded", what, v, float64(want))
	}
}

// The structure that other programs read, with what the rally says in it.
func TestInfoJSON(t *testing.T) {
	l := drill()
	path := lessonFile(t, l)
	out, errs, code := cli("info", path, "--json")
	if code != exitOK || errs != "" || strings.Count(out, "\n") != 1 {
		t.Fatalf("info --json: exit %d, %q, %d lines, want one", code, errs, strings.Count(out, "\n"))
	}
	if !strings.Contains(out, l.Title) {
		t.Errorf("the title %q is not written as it is: %s", l.Title, out)
	}
	d := json.NewDecoder(strings.NewReader(out))
	d.UseNumber()
	var v any
	if err := d.Decode(&v); err != nil {
		t.Fatal(err)
	}
	info := keyed(t, "the lesson", v, "title", "plays")
	plays := list(t, "plays", info["plays"])
	if info["title"] != l.Title || len(plays) != len(l.Plays) {
		t.Fatalf("the lesson is %v with %d plays, want %q with %d", info["title"], len(plays), l.Title, len(l.Plays))
	}
	for i := range plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			t.Fatal(err)
		}
		play := keyed(t, "a play", plays[i], "title", "duration_s", "events")
		if play["title"] != l.Plays[i].Title {
			t.Errorf("play %d is called %v, want %q", i+1, play["title"], l.Plays[i].Title)
		}
		checkNumber(t, "duration_s", play["duration_s"], r.To-r.From)
		events := list(t, "events", play["events"])
		if len(events) != len(r.Events) {
			t.Fatalf("play %d has %d events, want %d", i+1, len(events), len(r.Events))
		}
		for k, e := range r.Events {
			checkInfoEvent(t, events[k], r, e)
		}
	}
}

func checkInfoEvent(t *testing.T, v any, r *rally.Rally, e rally.Event) {
	t.Helper()
	f := r.At(e.At)
	event := keyed(t, "an event", v, "name", "t_s", "reached", "ball", "players")
	if event["name"] != e.Name.String() || event["reached"] != e.Reached {
		t.Errorf("event %v, reached %v, want %v, %v", event["name"], event["reached"], e.Name, e.Reached)
	}
	checkNumber(t, "t_s", event["t_s"], e.At)
	ball := keyed(t, "the ball", event["ball"], "x_ft", "y_ft", "z_ft")
	checkNumber(t, "ball x_ft", ball["x_ft"], f.Ball.Ground().X)
	checkNumber(t, "ball y_ft", ball["y_ft"], f.Ball.Ground().Y)
	checkNumber(t, "ball z_ft", ball["z_ft"], f.Ball.Height().Feet())
	players := keyed(t, "the players", event["players"], "near1", "near2", "far1", "far2")
	for _, id := range game.Players {
		both := keyed(t, id.String(), players[id.String()], "drawn", "run")
		for name, pose := range map[string]rally.Pose{"drawn": f.Players[id].Drawn, "run": f.Players[id].Run} {
			at := keyed(t, name, both[name], "x_ft", "y_ft")
			checkNumber(t, name+" x_ft", at["x_ft"], pose.Place.X)
			checkNumber(t, name+" y_ft", at["y_ft"], pose.Place.Y)
		}
	}
}

// The left-handed near2 at -1.6, -22.9 strikes the serve 2 ft to the left of
// there at 2.6 ft.
func TestInfoOfTheServe(t *testing.T) {
	out, _, _ := cli("info", lessonFile(t, drill()), "--json")
	var info infoLesson
	if err := json.Unmarshal([]byte(out), &info); err != nil {
		t.Fatal(err)
	}
	serve := info.Plays[0].Events[0]
	want := infoBall{infoPoint{-3.6, -22.9}, 2.6}
	if serve.Name != "serve.contact" || serve.T != 0 || !nearFt(serve.Ball, want) {
		t.Errorf("the first event is %s at %v s with the ball at %v, want the serve's contact at 0 and %v", serve.Name, serve.T, serve.Ball, want)
	}
	if got, want := serve.Players["near2"].Drawn, (infoPoint{-1.6, -22.9}); got != want {
		t.Errorf("near2 serves from %v, want %v", got, want)
	}
}

func nearFt(a, b infoBall) bool {
	const rounding = 1e-9 // ft: through metres and back
	d := []float64{float64(a.X - b.X), float64(a.Y - b.Y), float64(a.Z - b.Z)}
	return !slices.ContainsFunc(d, func(v float64) bool { return v > rounding || v < -rounding })
}

// A lesson without plays is a lesson; its lists are empty and not null.
func TestInfoOfAnEmptyLesson(t *testing.T) {
	path := lessonFile(t, lesson.Lesson{})
	if out, errs, code := cli("info", path, "--json"); code != exitOK || errs != "" || out != `{"title":"","plays":[]}`+"\n" {
		t.Errorf("info of an empty lesson: exit %d, %q, %q", code, errs, out)
	}
}

// Twice the same, and a text that names every play and event.
func TestInfoText(t *testing.T) {
	l := drill()
	path := lessonFile(t, l)
	out, errs, code := cli("info", path)
	again, _, _ := cli("info", path)
	if code != exitOK || errs != "" || out != again {
		t.Fatalf("info: exit %d, %q, or not the same twice", code, errs)
	}
	for i, p := range l.Plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(out, "\n"+strconv.Itoa(i+1)+". "+p.Title+" (") {
			t.Errorf("info does not list play %d, %q", i+1, p.Title)
		}
		for _, e := range r.Events {
			if !strings.Contains(out, e.Name.String()) {
				t.Errorf("info does not list %v", e.Name)
			}
		}
	}
	if !strings.HasPrefix(out, l.Title+"\n") {
		t.Errorf("info does not begin with the title: %s", out)
	}
}

// Of a ball into the net the text says what is no longer reached.
func TestInfoTextOfANet(t *testing.T) {
	l := drill()
	l.Plays = l.Plays[:1]
	l.Plays[0].Shots[1].Intent = lesson.NetClear(-0.3)
	out, _, _ := cli("info", lessonFile(t, l))
	for name, want := range map[string]bool{"return.net": false, "return.bounce": true} {
		i := strings.Index(out, name)
		if i < 0 {
			t.Fatalf("info does not list %s: %s", name, out)
		}
		line, _, _ := strings.Cut(out[i:], "\n")
		if got := strings.Contains(line, "not reached"); got != want {
			t.Errorf("info says %q, want not reached: %v", line, want)
		}
	}
}

// An answer that cannot be written is an error.
func TestInfoToNowhere(t *testing.T) {
	for _, args := range [][]string{{"info", ""}, {"info", "", "--json"}} {
		args[1] = lessonFile(t, drill())
		var errs strings.Builder
		if code := run(context.Background(), args, fullDisk{}, &errs); code != exitBad || strings.Count(errs.String(), "\n") != 1 {
			t.Errorf("%v onto a full disk: exit %d, %q, want %d and one line", args, code, errs.String(), exitBad)
		}
	}
}

type fullDisk struct{}

func (fullDisk) Write([]byte) (int, error) { return 0, syscall.ENOSPC }
