package words

import (
	"fmt"

	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Speed is a speed of legs: "19.7 ft/s (6.0 m/s)", in metric measures "6.0 m/s".
func Speed(v units.MetresPerSecond) string {
	if Measured() == Metric {
		return fmt.Sprintf("%.1f m/s", float64(v))
	}
	return fmt.Sprintf("%.1f ft/s (%.1f m/s)", v.FeetPerSecond(), float64(v))
}

// legWording is the sentence for what the legs find, and the one for a finding
// that does not tell all of its figures. {where} is the finding's place.
type legWording struct {
	all  string
	less string // where the finding lacks the figure named lacks
	lack string
}

// legSentences is what the legs find, in words.
var legSentences = map[finding.ID]legWording{
	finding.LateArrival: {
		all:  Text("{player} is {late} late, {where}. The plan needs a top speed of {needs}; here it is {speed}."),
		less: Text("{player} is {late} late, {where}. No speed is enough."), lack: "needs",
	},
	finding.NotInPlace: {all: Text("{player} still runs when the return bounces: {short} to go, in place {after} later.")},
	finding.NotSet:     {all: Text("{player} still runs when the third arrives: {short} to go, set {after} later.")},
	finding.OutOfReach: {all: Text("{player} cannot reach the {shot}: it is {beyond} beyond arm, paddle and lunge.")},
	finding.CloseCrossing: {
		all:  Text("{one} and {other} come within {distance} of one another, {front} in front: agree who goes in front."),
		less: Text("{one} and {other} come within {distance} of one another, neither in front: agree who goes in front."), lack: "front",
	},
	finding.CrossingOrder: {all: Text("{player} goes in front where the paths cross, the play says {stated}.")},
	finding.RunsBackward:  {all: Text("{player} goes {distance} backwards: turn and run, never backpedal.")},
	finding.NearObstacle:  {all: Text("{player} passes {distance} from an obstacle.")},
	finding.ShortOfLine: {
		all:  Text("When the third is struck {player} is {short} short of the kitchen line and moves at {speed}: that is normal, be balanced before the ball comes."),
		less: Text("When the third is struck {player} is {short} short of the kitchen line, balanced: that is normal."), lack: "speed",
	},
	finding.Lunge:    {all: Text("{player} lunges for the {shot}, {distance} away.")},
	finding.Backhand: {all: Text("{player} takes the {shot} on the backhand.")},
	finding.NoStack: {
		all:  Text("Do not stack on {player}'s return: it would have to rise to {needs}, and more than {most} is too much to ask."),
		less: Text("Do not stack on {player}'s return: no return buys the time for that run."), lack: "needs",
	},
}

// touching is within what partners who cross do not come near one another, but
// meet: both bodies are wider.
const touching units.Feet = 0.5

// intoEachOther is the sentence for such partners, whoever is in front by an inch.
var intoEachOther = Text("{one} and {other} run into one another: agree who goes in front, or leave one of them more room.")

// legSentence is the sentence for a finding of the legs; false for any other.
func legSentence(f finding.Finding, l lesson.Lesson) (string, bool) {
	w, ok := legSentences[f.ID]
	if !ok {
		return "", false
	}
	text := w.all
	if d, ok := f.Args.Get("distance"); f.ID == finding.CloseCrossing && ok && d.(units.Feet) < touching {
		return filled(intoEachOther, f, l), true
	}
	if _, told := f.Args.Get(w.lack); w.lack != "" && !told {
		text = w.less
	}
	return filled(text, f, l), true
}
