package words

import (
	"fmt"
	"strings"

	"homeside/model/advice"
	"homeside/model/units"
)

// Detail is how much an answer tells.
type Detail uint8

// The details, each with what the one before tells.
const (
	InWords    Detail = iota // what to do
	WithTimes                // and the times
	AllNumbers               // and every figure behind them
)

// Details are the words for all details, by Detail.
func Details() []string { return []string{"in words", "with times", "all numbers"} }

// ReturnAdvice says what a return gives the one who hits it.
func ReturnAdvice(a advice.Answer, who string, d Detail) string {
	said := []string{verdict(a, who)}
	if a.Verdict != advice.NoSuchReturn {
		if d >= WithTimes {
			said = append(said, times(a, who))
		}
		if d >= AllNumbers {
			said = append(said, figures(a))
		}
	}
	if d >= WithTimes {
		said = append(said, "Times are estimates, not instructions to sprint.")
	}
	return strings.Join(said, " ")
}

// barely is the margin below which a returner is only just set: half a step.
const barely units.Seconds = 0.15

func verdict(a advice.Answer, who string) string {
	switch {
	case a.Verdict == advice.NoSuchReturn:
		return fmt.Sprintf("This return cannot be hit so: %v.", a.Bought.Reason)
	case a.Verdict == advice.DoNotStack:
		return fmt.Sprintf("Do not stack on %s's return: it would have to be higher than anybody should ask for.", who)
	case a.Verdict == advice.AskForMore && a.Through >= 0:
		return fmt.Sprintf("%s gets there but still runs when the third arrives: return higher or deeper.", who)
	case a.Verdict == advice.AskForMore:
		return fmt.Sprintf("%s is not there when the third arrives: return higher or deeper.", who)
	case a.Stopped < barely:
		return fmt.Sprintf("%s is just set when the third arrives.", who)
	}
	return fmt.Sprintf("%s is set before the third arrives.", who)
}

func times(a advice.Answer, who string) string {
	s := fmt.Sprintf("A third is at the kitchen line %s after this return; %s needs %s to stand there, %s to run through: ",
		Seconds(a.Bought.Line), who, Seconds(a.Needs.Stopped), Seconds(a.Needs.Through))
	if a.Stopped < 0 {
		return s + Seconds(-a.Stopped) + " too late."
	}
	return s + Seconds(a.Stopped) + " to spare."
}

func figures(a advice.Answer) string {
	s := fmt.Sprintf("The run is %s. The return rises to %s and lands %s inside the baseline; the third is struck %s after it.",
		Length(a.Needs.Run), Length(a.Apex), Length(a.Depth), Seconds(a.Bought.Third))
	if a.Needed > 0 {
		s += fmt.Sprintf(" Landing there it is high enough from %s on.", Length(a.Needed))
	} else {
		s += " Landing there no height is enough."
	}
	return s + fmt.Sprintf(" More than %s is not asked for.", Length(a.Cap))
}
