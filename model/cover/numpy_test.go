package cover

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"testing"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// computed is one situation of testdata/cover.json.
type computed struct {
	Situation struct {
		Name    string         `json:"name"`
		Team    string         `json:"team"`
		From    [2]units.Feet  `json:"from_ft"`
		Height  units.Metres   `json:"height_m"`
		Drive   float64        `json:"drive_mps"`
		Lob     float64        `json:"lob_ft"`
		Cd      float64        `json:"cd"`
		Rho     float64        `json:"rho"`
		Players [2]computedLeg `json:"players"`
	} `json:"situation"`
	Rows        []string   `json:"rows"`
	Covered     float64    `json:"covered"`
	Forehand    float64    `json:"forehand"`
	PerPlayer   [2]float64 `json:"per_player"`
	Middle      [2]float64 `json:"middle"`
	MiddleCells int        `json:"middle_cells"`
	Open        struct {
		X      units.Feet `json:"x_ft"`
		Y      units.Feet `json:"y_ft"`
		Radius units.Feet `json:"radius_ft"`
	} `json:"open"`
	Margins [9]float64 `json:"margins_s"` // rows 0, 21, 43, in each columns 0, 13, 39
	Drag    float64    `json:"kd_per_m"`
}

type computedLeg struct {
	Place    [2]units.Feet         `json:"place_ft"`
	Facing   units.Degrees         `json:"facing_deg"`
	Hand     string                `json:"hand"`
	Top      units.MetresPerSecond `json:"v_mps"`
	Tau      units.Seconds         `json:"tau_s"`
	Reaction units.Seconds         `json:"reaction_s"`
	Reach    units.Metres          `json:"reach_m"`
}

func (c computed) strike(t *testing.T) Strike {
	t.Helper()
	in := c.Situation
	m := flight.Default()
	m.Ball.Drag, m.Air.Density = in.Cd, in.Rho
	s := Strike{
		From: court.Pt(in.From[0], in.From[1]), Height: in.Height, Model: m,
		Shot: Shot{Drive: units.MetresPerSecond(in.Drive), Lob: units.Feet(in.Lob)},
	}
	if in.Team == court.Far.String() {
		s.Team = court.Far
	}
	for i, p := range in.Players {
		hand, err := lesson.ParseHand(p.Hand)
		if err != nil {
			t.Fatal(err)
		}
		pace := movement.DefaultPace()
		pace.TopSpeed, pace.Tau, pace.Reaction = p.Top, p.Tau, p.Reaction
		pace.Arm, pace.Paddle, pace.Lunge = p.Reach, 0, 0
		s.Players[i] = Player{court.Pt(p.Place[0], p.Place[1]), p.Facing, hand, pace}
	}
	return s
}

func readComputed(t *testing.T) []computed {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("testdata", "cover.json"))
	if err != nil {
		t.Fatal(err)
	}
	var out []computed
	if err := json.Unmarshal(data, &out); err != nil {
		t.Fatal(err)
	}
	if len(out) < 3 {
		t.Fatalf("cover.json has %d situations, want at least 3", len(out))
	}
	return out
}

// Three situations computed cell by cell in numpy by testdata/cover.py: exactly
// the same cells are covered, and the margins agree to 1e-8 s (the lob's time
// comes from steps of 0.1 ms there).
func TestAgainstNumpy(t *testing.T) {
	for _, want := range readComputed(t) {
		name := want.Situation.Name
		m := mustOf(t, want.strike(t))
		if got := rows(m); len(want.Rows) != Rows {
			t.Errorf("%s: cover.json has %d rows, want %d", name, len(want.Rows), Rows)
		} else {
			for r := range got {
				if got[r] != want.Rows[r] {
					t.Errorf("%s: row %d\n got %s\nwant %s", name, r, got[r], want.Rows[r])
				}
			}
		}
		for i, w := range want.Margins {
			cell := [3]int{0, 21, 43}[i/3]*Columns + [3]int{0, 13, 39}[i%3]
			if got := float64(m.Margin(cell)); math.Abs(got-w) > 1e-8 {
				t.Errorf("%s: Margin(%d) = %.12f s, want %.12f", name, cell, got, w)
			}
		}
		checkShares(t, want, m)
		if got := m.Strike.drag(); math.Abs(got-want.Drag) > 1e-15 {
			t.Errorf("%s: kd = %v, want %v", name, got, want.Drag)
		}
	}
}

// rows are the map's rows from the net as text, # covered and . open.
func rows(m Map) []string {
	out := make([]string, Rows)
	for i := range m.Len() {
		mark := "."
		if m.Covered(i) {
			mark = "#"
		}
		out[i/Columns] += mark
	}
	return out
}

func checkShares(t *testing.T, want computed, m Map) {
	t.Helper()
	middle := m.Middle()
	for _, c := range []struct {
		what      string
		got, want float64
	}{
		{"Share()", m.Share(), want.Covered},
		{"ShareForehand()", m.ShareForehand(), want.Forehand},
		{"ShareOf(first)", m.ShareOf(game.PlayerOf(m.Team(), 1)), want.PerPlayer[0]},
		{"ShareOf(second)", m.ShareOf(game.PlayerOf(m.Team(), 2)), want.PerPlayer[1]},
		{"Middle().Taken[0]", middle.Taken[0], want.Middle[0]},
		{"Middle().Taken[1]", middle.Taken[1], want.Middle[1]},
	} {
		if c.got != c.want {
			t.Errorf("%s: %s = %v, want %v", want.Situation.Name, c.what, c.got, c.want)
		}
	}
	d, ok := m.Open()
	if at := court.Pt(want.Open.X, want.Open.Y); !ok || d.Centre != at || math.Abs(float64(d.Radius-want.Open.Radius)) > 1e-12 {
		t.Errorf("%s: Open() = %v, %v, want %v, %v ft", want.Situation.Name, d, ok, at, want.Open.Radius)
	}
}
