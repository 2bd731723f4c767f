package words

import (
	"strings"

	"homeside/model/finding"
	"homeside/model/lesson"
)

// severityWords are the words for one and for many, by finding.Severity.
var severityWords = [len(finding.Severities)][2]string{
	finding.Fault:   {Text("1 fault"), Text("%d faults")},
	finding.Late:    {Text("1 late arrival"), Text("%d late arrivals")},
	finding.Caution: {Text("1 caution"), Text("%d cautions")},
	finding.Advice:  {Text("1 word of advice"), Text("%d words of advice")},
}

// severityNames are the severities as one finding's heading.
var severityNames = [len(finding.Severities)]string{
	finding.Fault: Text("Fault"), finding.Late: Text("Late"), finding.Caution: Text("Caution"), finding.Advice: Text("Advice"),
}

// ChecksTitle heads the list of checks: "Checks: 1 fault, 2 cautions". Advice is
// counted only where there is nothing worse.
func ChecksTitle(all []finding.Finding) string {
	var counts [len(finding.Severities)]int
	for _, f := range all {
		counts[f.Severity]++
	}
	var said []string
	for s, n := range counts {
		if n > 0 && (finding.Severity(s) != finding.Advice || said == nil) {
			said = append(said, counted(n, severityWords[s]))
		}
	}
	if len(said) == 0 {
		return T("Checks: nothing found")
	}
	return T("Checks: %s", strings.Join(said, ", "))
}

// counted is a number of things: the text for one, or the one for many with %d.
func counted(n int, texts [2]string) string {
	if n == 1 {
		return Said(texts[0])
	}
	return Said(texts[1], n)
}

// Check is a finding in the list of checks, the severity first and the rule's
// number last.
func Check(f finding.Finding, l lesson.Lesson) string {
	text := Said(severityNames[f.Severity]) + ": " + Finding(f, l)
	if rule := f.Rule.In(finding.Current); rule != "" {
		text += " (" + rule + ")"
	}
	return text
}

// Finding is what was found, as a sentence with the lesson's names.
func Finding(f finding.Finding, l lesson.Lesson) string {
	if s, ok := ruleSentence(f, l); ok {
		return s
	}
	if s, ok := legSentence(f, l); ok {
		return s
	}
	return string(f.ID)
}

// Moment says in the status line when a finding is and what it says.
func Moment(f finding.Finding, l lesson.Lesson) string {
	return Seconds(f.When) + ": " + Finding(f, l)
}
