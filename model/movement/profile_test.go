package movement

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"homeside/model/units"
)

// readCSV reads a table of numbers of testdata with a header.
func readCSV(t *testing.T, name string) []map[string]float64 {
	t.Helper()
	f, err := os.Open(filepath.Join("testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	var out []map[string]float64
	for _, row := range rows[1:] {
		m := map[string]float64{}
		for i, cell := range row {
			if m[rows[0][i]], err = strconv.ParseFloat(cell, 64); err != nil {
				t.Fatalf("%s: %v", name, err)
			}
		}
		out = append(out, m)
	}
	return out
}

// paceAndRun are those of one row of profiles.csv.
func paceAndRun(row map[string]float64) (Pace, Run) {
	p := DefaultPace()
	p.TopSpeed, p.Tau, p.Braking = units.MetresPerSecond(row["top_mps"]), units.Seconds(row["tau_s"]), row["brake_mps2"]
	return p, Run{
		Distance: units.Metres(row["distance_m"]), Start: units.MetresPerSecond(row["start_mps"]),
		Cap: units.MetresPerSecond(row["cap_mps"]), Through: row["through"] == 1,
	}
}

// Numerical integration of the equation of motion by scipy, written by
// testdata/profiles.py: 172 runs with moving starts, caps and braking, to 1e-9.
func TestProfilesAgainstIntegration(t *testing.T) {
	const tolerance = 1e-9 // s, m and m/s
	rows, kinds := readCSV(t, "profiles.csv"), map[Outcome]int{}
	if len(rows) < 60 {
		t.Fatalf("profiles.csv has %d rows, want at least 60", len(rows))
	}
	for _, row := range rows {
		p, r := paceAndRun(row)
		got := mustFastest(t, p, r)
		kinds[got.Outcome]++
		check := func(what string, got, want float64) {
			if !(math.Abs(got-want) <= tolerance) {
				t.Errorf("%v m/s, %v s, %v m/s2, %+v: %s = %.12g, want %.12g", p.TopSpeed, p.Tau, p.Braking, r, what, got, want)
			}
		}
		check("Duration()", float64(got.Duration()), row["duration_s"])
		check("Peak()", float64(got.Peak()), row["peak_mps"])
		check("Arrival()", float64(got.Arrival()), row["arrival_mps"])
		for k, names := range map[float64][2]string{1: {"d1_m", "v1_mps"}, 2: {"d2_m", "v2_mps"}, 3: {"d3_m", "v3_mps"}} {
			d, v := got.At(units.Seconds(row["duration_s"] * k / 4))
			check("At() distance", float64(d), row[names[0]])
			check("At() speed", float64(v), row[names[1]])
		}
	}
	for o := range Outcome(len(outcomeNames)) {
		if kinds[o] < 5 {
			t.Errorf("profiles.csv has %d runs that are %v, want at least 5", kinds[o], o)
		}
	}
}

func mustFastest(t testing.TB, p Pace, r Run) Profile {
	t.Helper()
	got, err := p.Fastest(r)
	if err != nil {
		t.Fatalf("Fastest(%+v) error: %v", r, err)
	}
	return got
}

// The README of an open R package for short sprints prints the split times of
// an athlete of 8.5911 m/s and 0.8113 s.
func TestPublishedSprint(t *testing.T) {
	p := Pace{TopSpeed: 8.5911, Tau: 0.8113}
	for _, c := range []struct{ d, want float64 }{{5, 1.211}, {10, 1.897}, {15, 2.521}, {20, 3.122}, {30, 4.299}, {40, 5.466}} {
		if got := float64(p.Through(units.Metres(c.d))); math.Abs(got-c.want) > 0.0005 {
			t.Errorf("Through(%v m) = %.4f s, want %v", c.d, got, c.want)
		}
	}
}

// Computed once with an independent program: 10 and
// 15 ft at 6 m/s and 1 s, run through, and stopped at 5 m/s2.
func TestTenAndFifteenFeet(t *testing.T) {
	p := DefaultPace()
	for _, c := range []struct{ d, through, stop float64 }{{3.048, 1.209719, 1.595428}, {4.572, 1.549685, 1.992156}} {
		d := units.Metres(c.d)
		if got := float64(p.Through(d)); math.Abs(got-c.through) > 5e-7 {
			t.Errorf("Through(%v m) = %.7f s, want %v", c.d, got, c.through)
		}
		if got := float64(mustFastest(t, p, Run{Distance: d}).Duration()); math.Abs(got-c.stop) > 5e-7 {
			t.Errorf("Fastest(%v m).Duration() = %.7f s, want %v", c.d, got, c.stop)
		}
	}
}

// The receiver from (5, -24) to the kitchen line on the own and the other side:
// 16.5 and 19.3 ft; on the other side 0.2 s after the stroke, run through and
// stopped (computed once with an independent program).
func TestReceiverToTheKitchenLine(t *testing.T) {
	other := math.Hypot(10, 16.5)
	if math.Abs(other-19.3) > 0.05 {
		t.Fatalf("way to the other side = %v ft, want 19.3", other)
	}
	d := units.Feet(19.3).Metres()
	for _, c := range []struct {
		key           string
		through, stop float64
	}{
		{"fit-adult", 1.85, 2.37}, {"recreational-adult", 2.02, 2.50}, {"50-plus", 2.25, 2.67}, {"65-plus", 2.58, 3.16}, {"cautious", 2.93, 3.41},
	} {
		preset, _ := PresetByKey(c.key)
		p := preset.Pace
		const recovery = 0.2
		if got := float64(p.Through(d)) + recovery; math.Abs(got-c.through) > 0.00501 {
			t.Errorf("%s: run through 19.3 ft after the stroke = %.4f s, want %v", c.key, got, c.through)
		}
		if got := float64(mustFastest(t, p, Run{Distance: d}).Duration()) + recovery; math.Abs(got-c.stop) > 0.00501 {
			t.Errorf("%s: run and stop 19.3 ft after the stroke = %.4f s, want %v", c.key, got, c.stop)
		}
	}
}

// Shuffling and stopping, without reaction (computed once with an independent program).
func TestShuffle(t *testing.T) {
	for _, c := range []struct {
		key  string
		want [3]float64 // 4, 8 and 10 ft
	}{{"recreational-adult", [3]float64{1.11, 1.63, 1.85}}, {"65-plus", [3]float64{1.42, 2.09, 2.38}}} {
		preset, _ := PresetByKey(c.key)
		for i, ft := range []units.Feet{4, 8, 10} {
			got := float64(mustFastest(t, preset.Pace.Shuffling(), Run{Distance: ft.Metres()}).Duration())
			if math.Abs(got-c.want[i]) > 0.0051 {
				t.Errorf("%s: shuffle %v ft and stop = %.4f s, want %v", c.key, ft, got, c.want[i])
			}
		}
	}
}

func TestFill(t *testing.T) {
	run := mustFastest(t, DefaultPace(), Run{Distance: 5, Start: 2, Through: true})
	full := run.Duration()

	on, late := run.Fill(2 * full)
	if late != 0 || on.Duration() != 2*full {
		t.Fatalf("Fill(twice its time) = %v s long, %v s late, want %v, 0", on.Duration(), late, 2*full)
	}
	if got, want := on.Arrival(), run.Arrival()/2; math.Abs(float64(got-want)) > 1e-12 {
		t.Errorf("stretched twofold Arrival() = %v m/s, want half, %v", got, want)
	}
	if _, v := on.At(0); math.Abs(float64(v)-1) > 1e-12 {
		t.Errorf("stretched twofold At(0) speed = %v m/s, want half of 2", v)
	}
	d1, _ := run.At(full / 3)
	if d2, _ := on.At(2 * full / 3); math.Abs(float64(d1-d2)) > 1e-12 {
		t.Errorf("stretched twofold At(2/3) = %v m, want %v as at full effort at half the time", d2, d1)
	}

	for _, window := range []units.Seconds{full / 2, 0, -1, units.Seconds(math.NaN())} {
		short, late := on.Fill(window)
		if want := full - max(0, window); !(window > 0) {
			if short != run || late != full {
				t.Errorf("Fill(%v) = %v s late, want the fastest run and %v", window, late, full)
			}
		} else if short != run || math.Abs(float64(late-want)) > 1e-12 {
			t.Errorf("Fill(%v) = %v s late, want the fastest run and %v", window, late, want)
		}
	}
	if got, late := on.Fill(units.Seconds(math.Inf(1))); got != run || late != 0 {
		t.Errorf("Fill(+Inf) = %v, %v, want the fastest run", got, late)
	}
}

func TestStandingStill(t *testing.T) {
	still := mustFastest(t, DefaultPace(), Run{})
	if still.Duration() != 0 || still.Peak() != 0 || still.Arrival() != 0 {
		t.Errorf("a run of nothing = %+v, want no time and no speed", still)
	}
	filled, late := still.Fill(3)
	if d, v := filled.At(1); filled.Duration() != 3 || late != 0 || d != 0 || v != 0 {
		t.Errorf("a run of nothing in 3 s: %v s, %v late, At(1) = %v, %v, want 3, 0, 0, 0", filled.Duration(), late, d, v)
	}
	passing := mustFastest(t, DefaultPace(), Run{Start: 3, Through: true})
	if got := passing.Arrival(); passing.Duration() != 0 || got != 3 {
		t.Errorf("passing a point at 3 m/s = %v s, %v m/s, want 0 s, 3 m/s", passing.Duration(), got)
	}
	sudden := mustFastest(t, DefaultPace(), Run{Start: 3})
	if sudden.Outcome != BrakesTooHard || sudden.Duration() != 0 || sudden.Arrival() != 0 {
		t.Errorf("stopping from 3 m/s at once = %v, %v s, want %v at once", sudden.Outcome, sudden.Duration(), BrakesTooHard)
	}
}

// From 4 m/s at 5 m/s2 a stop takes 1.6 m; within 0.8 m it takes 10 m/s2 and 0.4 s.
func TestBrakesTooHard(t *testing.T) {
	got := mustFastest(t, DefaultPace(), Run{Distance: 0.8, Start: 4})
	if got.Outcome != BrakesTooHard || math.Abs(float64(got.Duration())-0.4) > 1e-12 {
		t.Errorf("stopping from 4 m/s in 0.8 m = %v, %v s, want %v, 0.4", got.Outcome, got.Duration(), BrakesTooHard)
	}
	if got := mustFastest(t, DefaultPace(), Run{Distance: 1.6, Start: 4}); got.Outcome != Clean || math.Abs(float64(got.Duration())-0.8) > 1e-7 {
		t.Errorf("stopping from 4 m/s in 1.6 m = %v, %v s, want clean, 0.8", got.Outcome, got.Duration())
	}
}

func TestOutcomeNames(t *testing.T) {
	seen := map[string]bool{}
	for o := range Outcome(len(outcomeNames)) {
		if seen[o.String()] || o.String() == "" {
			t.Errorf("Outcome(%d).String() = %q, want a name of its own", o, o)
		}
		seen[o.String()] = true
	}
	if got := Outcome(200).String(); got != "unknown outcome" {
		t.Errorf("Outcome(200).String() = %q", got)
	}
}

func BenchmarkThrough(b *testing.B) {
	p := DefaultPace()
	for i := range b.N {
		p.Through(units.Metres(i%100) / 10)
	}
}

func BenchmarkRunAndStop(b *testing.B) {
	p := DefaultPace()
	for i := range b.N {
		if _, err := p.Fastest(Run{Distance: units.Metres(i%100) / 10, Start: 1}); err != nil {
			b.Fatal(err)
		}
	}
}
