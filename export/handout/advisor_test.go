package handout

import (
	"regexp"
	"strings"
	"testing"

	"homeside/model/advice"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

var heightsOf = regexp.MustCompile(`(Fit adult|Recreational adult|50 and over|65 and over|Cautious mover|Wheelchair: push and turn) ((?:(?:\d+ ft(?: \d+ in)?|do not stack) ?){5})`)

var oneHeight = regexp.MustCompile(`\d+ ft(?: \d+ in)?|do not stack`)

// Every height in the table is the least: a return an inch and a half higher
// gives the time to be set, one as much lower does not, asked of the advisor for
// that one return, without a search. "Do not stack" stands where 12 ft are not
// enough.
func TestHeightsAreTheLeast(t *testing.T) {
	l := demo(t)
	pdf, _ := write(t, l, "advisor", &Options{Plays: []int{1}})
	ask, _, _, ok := advice.AdvisorOf(solvedPlay(t, l, 1))
	if !ok {
		t.Fatal("the play has no return")
	}
	rows := heightsOf.FindAllStringSubmatch(text(t, pdf), -1)
	if len(rows) != len(movement.Presets) {
		t.Fatalf("%d rows of heights, want %d:\n%s", len(rows), len(movement.Presets), text(t, pdf))
	}
	for i, row := range rows {
		ask.Pace = movement.Presets[i].Pace
		for k, cell := range oneHeight.FindAllString(row[2], -1) {
			set := func(apex units.Feet) bool {
				a, err := ask.Answer(depths[k], apex)
				if err != nil {
					t.Fatal(err)
				}
				return a.Verdict == advice.InTime
			}
			if cell == "do not stack" {
				if set(advice.MostApex) {
					t.Errorf("%s, %v ft deep: do not stack, and 12 ft are enough", row[1], depths[k])
				}
				continue
			}
			apex := units.Inches(inInches(t, cell))
			if !set(apex+units.Inches(1.5)) || set(apex-units.Inches(1.5)) {
				t.Errorf("%s, %v ft deep: %s is not the least", row[1], depths[k], cell)
			}
		}
	}
}

// The players stand in the table by their names, with their own paces: a slow
// one has a cautious mover's row.
func TestAdvisorKnowsPaces(t *testing.T) {
	l := demo(t)
	slow, _ := movement.PresetByKey("cautious")
	who := l.Player(game.Near2)
	who.Pace = &slow.Pace
	pdf, _ := write(t, l.WithPlayer(game.Near2, who), "advisor", &Options{Plays: []int{1}})
	_, table, _ := strings.Cut(text(t, pdf), "inside the baseline by 1 ft 3 ft 6 ft 10 ft 14 ft")
	row := func(name string) string {
		_, rest, _ := strings.Cut(table, name+" ")
		return strings.Join(oneHeight.FindAllString(rest, len(depths)), ", ")
	}
	if got, want := row("Tobin"), row("Cautious mover"); got != want || got == row("Ines") || row("Ines") != row("Recreational adult") {
		t.Errorf("Tobin's row is %q, want the cautious mover's %q; Ines has %q", got, want, row("Ines"))
	}
}

// Plays without a return are left out; the others have their pages.
func TestAdvisorLeavesOutServesAlone(t *testing.T) {
	l := demo(t)
	p := l.Plays[0]
	p.Shots, p.Cues, p.Marks = p.Shots[:1], nil, nil
	for id := range p.Tracks {
		p.Tracks[id] = append([]lesson.Keyframe{}, p.Tracks[id][:1]...)
	}
	if _, r := write(t, l.WithPlay(0, p), "advisor", nil); r.Pages != 2 {
		t.Errorf("%d pages, want 2 for the plays with a return", r.Pages)
	}
}
