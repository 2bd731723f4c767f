package compose

import (
	"math"
	"strings"
	"testing"

	"homeside/canvas/record"
)

func bars() BarChart {
	return BarChart{
		Title: "Two starters", Width: 300, PxPerPoint: 1,
		Sections: []BarSection{
			{"Stacks in a game", []Bar{{Label: "Ivo starts", Value: 4, Text: "4.0"}, {Label: "Mara starts", Value: 2, Text: "2.0", Other: true}}},
			{"Seconds to spare", []Bar{{Label: "even", Value: -0.5, Text: "0.50 s late"}, {Label: "odd", Value: 0.5, Text: "0.50 s"}}},
		},
	}
}

// The lengths can be checked by hand: 4 to 2 is two to one from the same line,
// and 0.5 s late is as long to the left as 0.5 s to the right.
func TestBarsRecorded(t *testing.T) {
	checkGolden(t, "bars", bars().Scene(), anyOf("bars/"))
}

func TestBarLengths(t *testing.T) {
	shapes := extentsOf(bars().Scene())
	width := func(id string) float64 { return shapes["bars/"+id].width() }
	if got, want := width("1.1"), 2*width("1.2"); math.Abs(got-want) > 1e-9 {
		t.Errorf("the bar of 4 is %.3f px, want twice that of 2, %.3f", got, want)
	}
	if got, want := width("2.1"), width("2.2"); math.Abs(got-want) > 1e-9 || got < 10 {
		t.Errorf("0.5 s late is %.3f px, want %.3f as for 0.5 s to spare", got, want)
	}
	if late, zero := shapes["bars/2.1"], shapes["bars/2.zero"]; math.Abs(late.right-zero.left) > 1e-9 {
		t.Errorf("the late bar ends at %.2f, want at the zero line, %.2f", late.right, zero.left)
	}
	one := bars()
	one.OneScale = true
	shared := extentsOf(one.Scene())
	if got, want := shared["bars/1.1"].width(), 8*shared["bars/2.2"].width(); math.Abs(got-want) > 1e-9 {
		t.Errorf("on one scale the bar of 4 is %.3f px, want eight times that of 0.5, %.3f", got, want)
	}
	for id, b := range shapes {
		if !b.within(300, bars().Scene().Height) {
			t.Errorf("%s is at %+v, want within the chart", id, b)
		}
	}
}

// Extreme figures and words make no NaN and no bar that runs backwards.
func TestBarsWithNothingSound(t *testing.T) {
	for name, b := range map[string][]Bar{
		"none": nil, "zero": {{Label: "a"}}, "nan": {{Value: math.NaN()}, {Value: math.Inf(-1)}},
		"long": {{Label: strings.Repeat("long ", 30), Value: 1, Text: strings.Repeat("x", 60)}},
	} {
		text := record.Scene(BarChart{Width: 200, PxPerPoint: 1, Sections: []BarSection{{"s", b}}}.Scene())
		if strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
			t.Errorf("%s is drawn as\n%s", name, text)
		}
	}
}
