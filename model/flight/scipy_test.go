package flight

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"homeside/model/units"
)

// readFlights reads testdata/flights.csv, which testdata/flights.py wrote with
// scipy's DOP853 at rtol 1e-12; its columns are named in the first row.
func readFlights(t *testing.T) []map[string]float64 {
	t.Helper()
	f, err := os.Open("testdata/flights.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var out []map[string]float64
	for _, row := range rows[1:] {
		m := map[string]float64{}
		for i, name := range rows[0] {
			v, err := strconv.ParseFloat(row[i], 64)
			if err != nil {
				t.Fatalf("column %s: %v", name, err)
			}
			m[name] = v
		}
		out = append(out, m)
	}
	return out
}

// turn puts a vector of the table (x forward, y left) into the court's axes.
func turn(x, y, z float64) Vec { return Vec{-y, x, z} }

func tableFlight(c map[string]float64) (Model, State) {
	m := Default()
	m.Ball.Drag, m.Air = c["cd"], Air{Density: c["rho"], Wind: turn(c["wind_x"], c["wind_y"], 0)}
	up, side := units.Degrees(c["up"]).Radians(), units.Degrees(c["side"]).Radians()
	level := c["speed"] * math.Cos(up)
	v := turn(level*math.Cos(side), level*math.Sin(side), c["speed"]*math.Sin(up))
	return m, State{Vec{0, -netAt, c["height"]}, v, TopSpin(v, units.RPM(c["top_rpm"]), units.RPM(c["side_rpm"]))}
}

func TestAgainstScipy(t *testing.T) {
	flights := readFlights(t)
	if len(flights) < 40 {
		t.Fatalf("%d flights in the table, want at least 40", len(flights))
	}
	capped := 0
	for i, c := range flights {
		m, s := tableFlight(c)
		f := m.forces(s.Spin)
		if f.capped*s.Velocity.Sub(m.Air.Wind).Length() < f.lift {
			capped++
		}
		p := &Path{}
		m.fly(p, s, DefaultTolerance, false)
		name := "flight " + strconv.Itoa(i) + " "
		want := turn(c["x"], c["y"], 0).Add(Vec{0, -netAt, .0371})
		near(t, name+"from the landing", p.End.At.Sub(want).Length(), 0, 1e-6)
		near(t, name+"from the velocity", p.End.Velocity.Sub(turn(c["vx"], c["vy"], c["vz"])).Length(), 0, 1e-6)
		near(t, name+"t", float64(p.Duration), c["t"], 1e-6)
		near(t, name+"apex", p.Apex.State.At.Z, c["apex_z"], 1e-6)
		near(t, name+"time of the apex", float64(p.Apex.T), c["apex_t"], 1e-6)
		if over := !math.IsNaN(c["net_z"]); over != p.Net.Reached {
			t.Errorf("%sreaches the net: %v, want %v", name, p.Net.Reached, over)
		} else if over {
			near(t, name+"net height", p.Net.State.At.Z, c["net_z"], 1e-6)
			near(t, name+"net time", float64(p.Net.T), c["net_t"], 1e-6)
		}
	}
	if capped < 5 {
		t.Errorf("%d flights start at the lift cap, want at least 5", capped)
	}
}
