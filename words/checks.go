package words

import (
	"fmt"
	"strings"

	"homeside/model/finding"
	"homeside/model/lesson"
)

// severityWords are the words for one and for many, by finding.Severity.
var severityWords = [len(finding.Severities)][2]string{
	finding.Fault:   {"fault", "faults"},
	finding.Late:    {"late arrival", "late arrivals"},
	finding.Caution: {"caution", "cautions"},
	finding.Advice:  {"word of advice", "words of advice"},
}

// severityNames are the severities as one finding's heading.
var severityNames = [len(finding.Severities)]string{
	finding.Fault: "Fault", finding.Late: "Late", finding.Caution: "Caution", finding.Advice: "Advice",
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
			said = append(said, fmt.Sprintf("%d %s", n, severityWords[s][min(n, 2)-1]))
		}
	}
	if len(said) == 0 {
		return "Checks: nothing found"
	}
	return "Checks: " + strings.Join(said, ", ")
}

// Check is a finding in the list of checks, the severity first and the rule's
// number last.
func Check(f finding.Finding, l lesson.Lesson) string {
	text := severityNames[f.Severity] + ": " + Finding(f, l)
	if rule := f.Rule.In(finding.Current); rule != "" {
		text += " (" + rule + ")"
	}
	return text
}

// Finding is what was found, as a sentence with the lesson's names.
func Finding(f finding.Finding, l lesson.Lesson) string {
	if s, ok := ruleSentence(f, l, English); ok {
		return s
	}
	if s, ok := legSentence(f, l, English); ok {
		return s
	}
	return string(f.ID)
}

// Moment says in the status line when a finding is and what it says.
func Moment(f finding.Finding, l lesson.Lesson) string {
	return Seconds(f.When) + ": " + Finding(f, l)
}
