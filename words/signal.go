package words

import (
	"fmt"
	"strings"

	"homeside/model/lesson"
	"homeside/model/signal"
)

// SignalExample says that nobody has given the chances yet.
func SignalExample() string {
	return T("These four chances are invented. Type your own, or take them from the tally of your match.")
}

// Action is what a pair does, by signal.Action.
func Action(a signal.Action) string {
	return [...]string{T("We switch (open hand)"), T("We stay (closed fist)")}[a&1]
}

// Aim is where the opponents hit, by signal.Aim.
func Aim(a signal.Aim) string {
	return [...]string{T("they aim left"), T("they aim right")}[a&1]
}

// ChanceCounted is a chance as counted, with what it could be as well.
func ChanceCounted(c lesson.Count) string {
	if c.Rallies == 0 {
		return T("none counted")
	}
	i := signal.IntervalOf(c)
	return T("%d of %d: %.0f to %.0f %%", c.Won, c.Rallies, 100*i.Low, 100*i.High)
}

// signalsPerLine is how many signals stand on a line of the printed list.
const signalsPerLine = 10

// SignalSheet is a sequence of signals to print: ten on a line, in two groups.
func SignalSheet(g signal.Game, sequence string, seed uint64) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s\n%s\n%s\n\n", T("Signals, one for each rally. o: open hand, switch. c: closed fist, stay."), folded(SignalMix(g)), T("Seed %d: the same seed gives the same list.", seed))
	for from := 0; from < len(sequence); from += signalsPerLine {
		line := sequence[from:min(from+signalsPerLine, len(sequence))]
		half := min(signalsPerLine/2, len(line))
		fmt.Fprintln(&b, strings.TrimRight(fmt.Sprintf("%5d  %s   %s", from+1, spaced(line[:half]), spaced(line[half:])), " "))
	}
	return b.String()
}

// folded breaks a text into lines of a page.
func folded(text string) string {
	const page = 72
	var b strings.Builder
	column := 0
	for word := range strings.FieldsSeq(text) {
		switch n := len([]rune(word)); {
		case column == 0:
			column = n
		case column+1+n > page:
			b.WriteByte('\n')
			column = n
		default:
			b.WriteByte(' ')
			column += 1 + n
		}
		b.WriteString(word)
	}
	return b.String()
}

func spaced(s string) string { return strings.Join(strings.Split(s, ""), " ") }
