package handout

import (
	"bytes"
	"context"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"homeside/assets"
	"homeside/model/advice"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/units"
	"homeside/words"
)

// builtIn is one of the built-in lessons.
func builtIn(t testing.TB, name string) lesson.Lesson {
	t.Helper()
	data, err := assets.Lessons.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

var warnedAt = regexp.MustCompile(`Paths cross at ([\d.]+) s: (\S+) in front of (\S+), .* apart\. Agree who goes in front!`)

// Every page about a play in which partners change sides warns of it, with the
// moment that a walk through the rally finds and who is then nearer the net; pages
// of other plays warn of nothing.
func TestPagesWarnWherePathsCross(t *testing.T) {
	l := builtIn(t, "lessons/stack-on-return.json")
	r := solvedPlay(t, l, 1)
	var when float64
	for ms := int(float64(r.From) * 1000); when == 0 && ms < int(float64(r.To)*1000); ms++ {
		now, before := r.At(milliseconds(ms)), r.At(milliseconds(ms-1))
		if (now.Players[0].Run.Place.X-now.Players[1].Run.Place.X)*(before.Players[0].Run.Place.X-before.Players[1].Run.Place.X) < 0 {
			when = float64(ms) / 1000
		}
	}
	for _, sheet := range []string{"storyboard", "cones", "advisor", "plan"} {
		pdf, _ := write(t, l, sheet, &Options{Plays: []int{1}})
		m := warnedAt.FindStringSubmatch(text(t, pdf))
		if m == nil {
			t.Fatalf("%s does not warn where paths cross", sheet)
		}
		at, err := strconv.ParseFloat(m[1], 64)
		if err != nil || at < when-0.011 || at > when+0.011 || m[2] != "Linnea" || m[3] != "Amrit" {
			t.Errorf("%s warns %q, want the crossing at %.3f s, Linnea in front of Amrit", sheet, m[0], when)
		}
		for _, other := range []int{0, 2} {
			pdf, _ := write(t, l, sheet, &Options{Plays: []int{other}})
			if got := text(t, pdf); strings.Contains(got, "Paths cross") {
				t.Errorf("%s of play %d warns where none cross", sheet, other+1)
			}
		}
	}
}

func milliseconds(ms int) units.Seconds { return units.Seconds(ms) / 1000 }

// In Spanish as well, and long names are kept within the frame.
func TestWarningsOfLongNames(t *testing.T) {
	words.Speak(words.Spanish)
	defer words.Speak(words.English)
	l := builtIn(t, "lessons/stack-on-return.json")
	for i := range l.Teams {
		for k := range l.Teams[i].Players {
			l.Teams[i].Players[k].Name = strings.Repeat(fmt.Sprintf("Nombre%d%d ", i, k), 5)
		}
	}
	pdf, _ := write(t, l, "cones", &Options{Plays: []int{1}})
	if got := text(t, pdf); !strings.Contains(got, "Los caminos se cruzan a los 2.97 s") || !strings.Contains(got, "¡Hay que acordar quién va por delante!") {
		t.Errorf("%.900q does not warn in Spanish", got)
	}
	checkApart(t, boxes(t, pdf))
}

// A pair that stacks does not cross: no row of a card of any built-in lesson needs
// a warning of its own beside the caution at the foot.
func TestCardsNeedNoWarning(t *testing.T) {
	rows := 0
	for _, name := range assets.LessonNames {
		cards, err := cardsOf(context.Background(), builtIn(t, name), job{progress: func(int, int) {}})
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range cards {
			for _, r := range c.rows {
				if r.rally == nil {
					continue
				}
				rows++
				if a := advice.PathsCross(r.rally); len(a) > 0 {
					t.Errorf("%s: on %v by %v paths cross at %v: the card has to warn", name, r.Formation, r.Lead, a[0].When)
				}
			}
		}
	}
	if rows < 50 {
		t.Errorf("only %d rows were looked at", rows)
	}
}
