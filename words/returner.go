package words

import (
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
func Details() []string { return []string{T("in words"), T("with times"), T("all numbers")} }

// ReturnAdvice says what a return gives the one who hits it.
func ReturnAdvice(a advice.Answer, who string, d Detail) string {
	who = inSentence(who)
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
		said = append(said, T("Times are estimates, not instructions to sprint."))
	}
	return strings.Join(said, " ")
}

// barely is the margin below which a returner is only just set: half a step.
const barely units.Seconds = 0.15

func verdict(a advice.Answer, who string) string {
	switch {
	case a.Verdict == advice.NoSuchReturn:
		return T("This return cannot be hit so: %v.", Name(a.Bought.Reason))
	case a.Verdict == advice.DoNotStack:
		return T("Do not stack on %s's return: it would have to be higher than anybody should ask for.", who)
	case a.Verdict == advice.AskForMore && a.Through >= 0:
		return T("%s gets there but still runs when the third arrives: return higher or deeper.", who)
	case a.Verdict == advice.AskForMore:
		return T("%s is not there when the third arrives: return higher or deeper.", who)
	case a.Stopped < barely:
		return T("%s is just set when the third arrives.", who)
	}
	return T("%s is set before the third arrives.", who)
}

func times(a advice.Answer, who string) string {
	s := T("A third is at the kitchen line %s after this return; %s needs %s to stand there, %s to run through: ",
		Seconds(a.Bought.Line), who, Seconds(a.Needs.Stopped), Seconds(a.Needs.Through))
	if a.Stopped < 0 {
		return s + T("%s too late.", Seconds(-a.Stopped))
	}
	return s + T("%s to spare.", Seconds(a.Stopped))
}

func figures(a advice.Answer) string {
	s := T("The run is %s. The return rises to %s and lands %s inside the baseline; the third is struck %s after it.",
		Length(a.Needs.Run), Length(a.Apex), Length(a.Depth), Seconds(a.Bought.Third))
	if a.Needed > 0 {
		s += T(" Landing there it is high enough from %s on.", Length(a.Needed))
	} else {
		s += T(" Landing there no height is enough.")
	}
	return s + T(" More than %s is not asked for.", Length(a.Cap))
}
