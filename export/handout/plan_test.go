package handout

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"homeside/model/units"
)

var clocks = regexp.MustCompile(`^(\d+):(\d\d) .* (\d+):(\d\d)$|^Together (\d+):(\d\d)$`)

// minutes are the lines of the timetable that have times, in the order of the
// page: when, how long, in seconds; the sum last.
func timetable(t *testing.T, pdf []byte, page int) (at, long []int, sum int) {
	t.Helper()
	n := strconv.Itoa(page)
	for line := range strings.Lines(poppler(t, pdf, "pdftotext", "-layout", "-f", n, "-l", n, "-", "-")) {
		m := clocks.FindStringSubmatch(oneLine(line))
		switch {
		case m == nil:
		case m[5] != "":
			sum = seconds(t, m[5], m[6])
		default:
			at, long = append(at, seconds(t, m[1], m[2])), append(long, seconds(t, m[3], m[4]))
		}
	}
	return at, long, sum
}

func seconds(t *testing.T, min, s string) int {
	return int(number(t, min))*60 + int(number(t, s))
}

// Times follow one another without a gap and add up to the sum at the foot and
// to the one in the page's head; a session lasts an hour at most.
func TestTimesAddUp(t *testing.T) {
	pdf, _ := write(t, demo(t), "plan", nil)
	stagesSeen := 0
	for page, head := range map[int]string{1: "2 plays in ", 4: "One play in "} {
		at, long, sum := timetable(t, pdf, page)
		clock := 0
		for i := range at {
			if at[i] != clock {
				t.Errorf("page %d: line %d begins at %d s, want %d", page, i+1, at[i], clock)
			}
			clock += long[i]
		}
		if clock != sum || sum > 3600 || len(at) < 6 {
			t.Errorf("page %d: %d lines add up to %d s, the sum says %d, want at most 3600", page, len(at), clock, sum)
		}
		stagesSeen += len(at) - 2 // warm-up and wrap-up
		if want := fmt.Sprintf("%s%d:%02d minutes for 10 students", head, sum/60, sum%60); !strings.Contains(pageText(t, pdf, page), want) {
			t.Errorf("page %d lacks %q", page, want)
		}
	}
	if stagesSeen != 3*4 {
		t.Errorf("%d stages, want four for each of three plays", stagesSeen)
	}
}

var once = regexp.MustCompile(`(Walk|Shadow|Fed ball|Live): 5 rounds, the play 2 times in each at (?:1/([\d.]+) of )?match speed, about (\d+) s a time (\d+):(\d\d)`)

// A stage is five rounds of two repetitions and 20 s to change roles, rounded up
// to 5 s; a repetition is not shorter than the play at that speed.
func TestStagesFollowFromThePlay(t *testing.T) {
	l := demo(t)
	for i := range l.Plays {
		r := solvedPlay(t, l, i)
		pdf, _ := write(t, l, "plan", &Options{Plays: []int{i}})
		found := once.FindAllStringSubmatch(text(t, pdf), -1)
		if len(found) != 4 {
			t.Fatalf("play %d: %d stages, want 4", i+1, len(found))
		}
		for _, m := range found {
			slow := 1.0
			if m[2] != "" {
				slow = number(t, m[2])
			}
			rep, total := number(t, m[3]), float64(seconds(t, m[4], m[5]))
			if least := float64(r.To-r.From)*slow - 1; rep < least {
				t.Errorf("play %d, %s: %v s a time, and the play takes %.1f", i+1, m[1], rep, least)
			}
			if round := total / 5; round < 2*(rep-0.5)+20-1e-9 || round > 2*(rep+0.5)+20+5 {
				t.Errorf("play %d, %s: a round of %v s for two of %v s and 20 s", i+1, m[1], round, rep)
			}
		}
	}
}

// Over the five rounds every pair has every role once, and in every round every
// role is taken once: a Latin square.
func TestRotation(t *testing.T) {
	for a := range rounds {
		var inRound, ofPair []int
		for b := range rounds {
			inRound, ofPair = append(inRound, roleOf(b, a)), append(ofPair, roleOf(a, b))
		}
		for _, roles := range [][]int{inRound, ofPair} {
			slices.Sort(roles)
			if !slices.Equal(roles, []int{0, 1, 2, 3, 4}) {
				t.Errorf("roles %v in round or of pair %d, want each once", roles, a+1)
			}
		}
	}
	pdf, _ := write(t, demo(t), "plan", &Options{Plays: []int{0}})
	if got := text(t, pdf); !strings.Contains(got, "A (1, 2) B (3, 4) C (5, 6) D (7, 8) E (9, 10) Round 1 near far feed shadow watch Round 2 far feed shadow watch near") {
		t.Errorf("the rotation is not on the page:\n%s", got)
	}
}

// Feeders know where each ball comes from and lands: the first play's serve is
// aimed 6 ft to the far left and 17.5 ft behind the net in the lesson.
func TestFeeds(t *testing.T) {
	l := demo(t)
	pdf, _ := write(t, l, "plan", &Options{Plays: []int{0}})
	got := text(t, pdf)
	_, lands := "", ""
	lands, _ = measured(true, 6, 17.5)
	for _, want := range []string{
		"Serve by Tobin: feed it from", "It lands " + lands + " (their view); top 7 ft 6 in.", "Return by Marlo: feed it from", "Third by Ines: feed it from",
		l.Plays[0].Cues[0].Text, l.Plays[0].Notes, "12 balls;", "22 flat cones", // 2 x 3 shots and 6 spare
	} {
		if !strings.Contains(got, want) {
			t.Errorf("the plan lacks %q:\n%s", want, got)
		}
	}
}

// Nobody walks faster than a comfortable walk: at the page's factor the peak of
// every player's speed in the play is 1.3 m/s at most (Bohannon 1997, from memory).
func TestWalkIsAWalk(t *testing.T) {
	l := demo(t)
	for i := range l.Plays {
		r := solvedPlay(t, l, i)
		slow := stagesOf(r)[walkIt].slow
		for id := range r.Tracks {
			for at := r.From; at < r.To; at += 0.01 {
				a, b := r.Tracks[id].RunAt(at).Place, r.Tracks[id].RunAt(at+0.01).Place
				if v := float64(a.Distance(b).Metres()) / 0.01 / slow; v > 1.3*1.02 {
					t.Fatalf("play %d: somebody walks at %.2f m/s at %.2f s", i+1, v, float64(at))
				}
			}
		}
	}
}

// Many plays are many sessions, each with one play at least, in the lesson's order.
func TestSessions(t *testing.T) {
	l := demo(t)
	for range 4 {
		l.Plays = append(l.Plays, l.Plays[:3]...)
	}
	var plays []solved
	for i := range l.Plays {
		plays = append(plays, solved{i + 1, solvedPlay(t, l, i)})
	}
	next := 1
	for _, s := range sessionsOf(plays) {
		if len(s.plays) == 0 || len(s.plays) > 1 && s.total() > units.Seconds(3600) {
			t.Errorf("a session of %d plays lasts %v s", len(s.plays), s.total())
		}
		for _, d := range s.plays {
			if d.number != next {
				t.Errorf("play %d comes where %d is next", d.number, next)
			}
			next++
		}
	}
	if next != len(l.Plays)+1 {
		t.Errorf("%d plays dealt out, want %d", next-1, len(l.Plays))
	}
}
