package handout

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

func feetOf(v float64) units.Feet { return units.Feet(v) }

func solvedPlay(t testing.TB, l lesson.Lesson, i int) *rally.Rally {
	t.Helper()
	r, err := rally.Solve(l, i)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// Every caption, signal, title, score sentence and event is on the page as it
// stands in the lesson.
func TestStoryboardSaysEverything(t *testing.T) {
	l := demo(t)
	pdf, r := write(t, l, "storyboard", nil)
	got := text(t, pdf)
	wants := []string{"4-7-2: Tobin serves from the left. Marlo must receive.", "Serve by Tobin", "Return by Marlo", "The third bounces", "Petra shows Marlo: stay."}
	for _, p := range l.Plays {
		wants = append(wants, p.Title)
		for _, c := range p.Cues {
			wants = append(wants, c.Text)
		}
	}
	for _, want := range wants {
		if !strings.Contains(got, want) {
			t.Errorf("the storyboard lacks %q", want)
		}
	}
	if r.Pages != len(l.Plays) {
		t.Errorf("%d pages, want one for each of %d plays", r.Pages, len(l.Plays))
	}
}

var moved = regexp.MustCompile(`(Ines|Tobin|Marlo|Petra) ((?:\d+ ft ?)?(?:\d+ in)?) \((\d+\.\d\d) m\)`)

// Who moves and how far: over all pictures each player's ways add up to the
// straight lines between the places in the lesson, to half an inch a picture.
// In metres they are the same, a foot being 0.3048 m.
func TestStoryboardMoves(t *testing.T) {
	l := demo(t)
	checked := 0
	for i := range l.Plays {
		pdf, _ := write(t, l, "storyboard", &Options{Plays: []int{i}})
		sum, times := map[string]float64{}, map[string]float64{}
		for _, m := range moved.FindAllStringSubmatch(text(t, pdf), -1) {
			inches := inInches(t, m[2])
			sum[m[1]] += inches
			times[m[1]]++
			if want := inches * 0.0254; math.Abs(number(t, m[3])-want) > 0.0127+0.005 {
				t.Errorf("play %d: %s is %s m, want about %.3f", i+1, m[0], m[3], want)
			}
		}
		for _, id := range game.Players {
			want := 0.0
			track := l.Plays[i].Tracks[id]
			for k := 1; k < len(track); k++ {
				want += math.Hypot(float64(track[k].Place.X-track[k-1].Place.X), float64(track[k].Place.Y-track[k-1].Place.Y)) * 12
			}
			name := l.NameOf(id)
			if strikesAway(l.Plays[i], id) {
				continue // the way to the ball is not in the lesson
			}
			checked++
			if got := sum[name]; math.Abs(got-want) > 0.5*times[name]+0.5 {
				t.Errorf("play %d: %s moves %.1f in over %v pictures, want %.1f", i+1, name, got, times[name], want)
			}
		}
	}
	if checked < 6 {
		t.Errorf("the ways of %d players checked, want 6 at least", checked)
	}
}

// strikesAway says whether a player strikes a ball at a place that the lesson
// does not state.
func strikesAway(p lesson.Play, id game.Player) bool {
	for i, s := range p.Shots {
		if s.By != id || i == 0 {
			continue
		}
		stated := false
		for _, k := range p.Tracks[id] {
			stated = stated || k.At == lesson.At(lesson.ContactOf(i))
		}
		if !stated {
			return true
		}
	}
	return false
}

// inInches reads "3 ft 6 in".
func inInches(t testing.TB, s string) float64 {
	t.Helper()
	sum := 0.0
	for _, m := range regexp.MustCompile(`(\d+) (ft|in)`).FindAllStringSubmatch(s, -1) {
		sum += number(t, m[1]) * map[string]float64{"ft": 12, "in": 1}[m[2]]
	}
	return sum
}

// A ball into the net ends the story with that.
func TestStoryboardStopsAtTheNet(t *testing.T) {
	l := demo(t)
	p := l.Plays[0]
	p = p.WithShot(1, lesson.Shot{By: p.Shots[1].By, Aim: court.Pt(-1.5, -1), Intent: lesson.Time(0.5)})
	pdf, _ := write(t, l.WithPlay(0, p), "storyboard", &Options{Plays: []int{0}})
	if got := text(t, pdf); !strings.Contains(got, "The ball goes into the net: the rally stops there.") || strings.Contains(got, "Third by Ines") {
		t.Errorf("the story goes on after the net:\n%s", got)
	}
}

// Longer plays have more pictures, and nothing on them is left out: pictures are
// numbered through, over as many pages as it takes.
func TestStoryboardOfManyShots(t *testing.T) {
	l := demo(t)
	p := l.Plays[0]
	for i := 3; i < 12; i++ {
		by := [2]game.Player{game.Far1, game.Near1}[i%2^1]
		aim := court.Pt(2, 5)
		if by.Team() == court.Far {
			aim = court.Pt(-2, -5)
		}
		p.Shots = append(append([]lesson.Shot{}, p.Shots...), lesson.Shot{By: by, Aim: aim, Intent: lesson.Apex(5)})
	}
	pdf, r := write(t, l.WithPlay(0, p), "storyboard", &Options{Plays: []int{0}})
	got := text(t, pdf)
	if r.Pages < 2 || len(r.Notes) > 0 {
		t.Errorf("%d pages and notes %q, want several pages", r.Pages, r.Notes)
	}
	for n := 1; n <= 25; n++ { // 12 contacts, 12 bounces, the end
		if !strings.Contains(got, fmt.Sprintf(" %d ", n)) {
			t.Errorf("picture %d is missing", n)
		}
	}
	checkApart(t, boxes(t, pdf))
}
