//go:build window

package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

// starts is how often a start is measured; the median is told.
const starts = 5

// manyPlays writes a lesson of so many plays, all different.
func manyPlays(b *testing.B, n int) string {
	b.Helper()
	_, l := copyLesson(b)
	var all []lesson.Play
	for i := range n {
		p := l.Plays[i%len(l.Plays)]
		p.Title = fmt.Sprintf("%s (%d)", p.Title, i+1)
		all = append(all, p)
	}
	l.Plays = all
	path := filepath.Join(b.TempDir(), "many.json")
	f, err := os.Create(path)
	if err != nil {
		b.Fatal(err)
	}
	defer f.Close()
	if err := lessonfile.Write(f, l); err != nil {
		b.Fatal(err)
	}
	return path
}

// timeUntil starts the editor and measures until a line of its trace.
func (w *window) timeUntil(line string, files ...string) time.Duration {
	w.t.Helper()
	begun := time.Now()
	w.open(files...)
	w.waitFor(line)
	took := time.Since(begun)
	w.kill()
	return took
}

// BenchmarkStart starts the program and measures until it has painted its window
// for the first time: the start page, a small lesson, and one of 500 plays.
func BenchmarkStart(b *testing.B) {
	b.Setenv(framesVariable, "1")
	small, _ := copyLesson(b)
	large := manyPlays(b, 500)
	w := openDisplay(b)
	for b.Loop() {
		for _, c := range []struct {
			unit, line string
			files      []string
		}{{"ms-start-page", "painted start", nil}, {"ms-lesson", "frame", []string{small}}, {"ms-500-plays", "frame", []string{large}}} {
			var took []time.Duration
			for range starts {
				took = append(took, w.timeUntil(c.line, c.files...))
			}
			slices.Sort(took)
			b.ReportMetric(share(took, 0.5).Seconds()*1000, c.unit)
		}
	}
}

// BenchmarkOpenManyPlays opens a lesson of 500 plays in a running window, from
// the key that accepts the file to the first frame of the court with it.
func BenchmarkOpenManyPlays(b *testing.B) {
	b.Setenv(framesVariable, "1")
	small, _ := copyLesson(b)
	w := openWindow(b, small)
	for b.Loop() {
		var took []time.Duration
		for range starts {
			large := manyPlays(b, 500)
			w.keys("ctrl+o")
			w.waitFor("asking Open a lesson")
			w.typeText(large)
			w.settle()
			begun := time.Now()
			w.keys("Return")
			w.waitFor("opened " + large)
			w.waitFor("frame")
			took = append(took, time.Since(begun))
		}
		slices.Sort(took)
		b.ReportMetric(share(took, 0.5).Seconds()*1000, "ms")
	}
}

// playedFor is how long BenchmarkMemory plays, and from when on it measures the
// growth: what is made once has been made by then.
const (
	playedFor = 3 * time.Minute
	warmedUp  = 90 * time.Second
)

// BenchmarkMemory plays for some minutes with the cover on and tells what the
// program holds of the memory (VmRSS) at the end, what is its own of that
// (RssAnon: without the program's and the libraries' files), and both as they
// would be after an hour if they went on growing as they did after the first 90 s.
func BenchmarkMemory(b *testing.B) {
	path, _ := copyLesson(b)
	w := openWindow(b, path)
	for b.Loop() {
		begun := time.Now()
		var early map[string]float64
		var since time.Duration
		for time.Since(begun) < playedFor {
			w.keys("Home", "space")
			w.waitFor("playing=true")
			w.waitFor("playing=false")
			if early == nil && time.Since(begun) > warmedUp {
				early, since = w.memory(), time.Since(begun)
			}
		}
		end, took := w.memory(), time.Since(begun)
		for _, what := range []string{"VmRSS", "RssAnon"} {
			perMinute := (end[what] - early[what]) / (took - since).Minutes()
			b.ReportMetric(end[what], what+"-MB")
			b.ReportMetric(end[what]+max(perMinute, 0)*(time.Hour-took).Minutes(), what+"-MB-in-1h")
		}
	}
}

// memory is what the editor holds, in MB, by the names of /proc/PID/status.
func (w *window) memory() map[string]float64 {
	w.t.Helper()
	data, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", w.editor.Process.Pid))
	if err != nil {
		w.t.Fatal(err)
	}
	mb := map[string]float64{}
	for line := range strings.Lines(string(data)) {
		name, rest, _ := strings.Cut(line, ":")
		if f := strings.Fields(rest); len(f) == 2 && f[1] == "kB" {
			kb, err := strconv.ParseFloat(f[0], 64)
			if err != nil {
				w.t.Fatal(err)
			}
			mb[name] = kb / 1000
		}
	}
	return mb
}
