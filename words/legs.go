package words

import (
	"fmt"
	"strings"

	"homeside/model/advice"
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
	all  wording
	less wording // where the finding lacks the figure named lacks
	lack string
}

// legSentences is what the legs find, in words.
var legSentences = map[finding.ID]legWording{
	finding.LateArrival: {
		all:  wording{English: "{player} is {late} late, {where}. The plan needs a top speed of {needs}; here it is {speed}."},
		less: wording{English: "{player} is {late} late, {where}. No speed is enough."}, lack: "needs",
	},
	finding.NotInPlace: {all: wording{English: "{player} still runs when the return bounces: {short} to go, in place {after} later."}},
	finding.NotSet:     {all: wording{English: "{player} still runs when the third arrives: {short} to go, set {after} later."}},
	finding.OutOfReach: {all: wording{English: "{player} cannot reach the {shot}: it is {beyond} beyond arm, paddle and lunge."}},
	finding.CloseCrossing: {
		all:  wording{English: "{one} and {other} come within {distance} of one another, {front} in front: agree who goes in front."},
		less: wording{English: "{one} and {other} come within {distance} of one another, neither in front: agree who goes in front."}, lack: "front",
	},
	finding.CrossingOrder: {all: wording{English: "{player} goes in front where the paths cross, the play says {stated}."}},
	finding.RunsBackward:  {all: wording{English: "{player} goes {distance} backwards: turn and run, never backpedal."}},
	finding.NearObstacle:  {all: wording{English: "{player} passes {distance} from an obstacle."}},
	finding.ShortOfLine: {
		all:  wording{English: "At third contact {player} is {short} short of the kitchen line and moves at {speed}: that is normal, be balanced before the ball comes."},
		less: wording{English: "At third contact {player} is {short} short of the kitchen line, balanced: that is normal."}, lack: "speed",
	},
	finding.Lunge:    {all: wording{English: "{player} lunges for the {shot}, {distance} away."}},
	finding.Backhand: {all: wording{English: "{player} takes the {shot} on the backhand."}},
	finding.NoStack: {
		all:  wording{English: "Do not stack on {player}'s return: it would have to rise to {needs}, and more than {most} is too much to ask."},
		less: wording{English: "Do not stack on {player}'s return: no return buys the time for that run."}, lack: "needs",
	},
}

// legSentence is the sentence for a finding of the legs; false for any other.
func legSentence(f finding.Finding, l lesson.Lesson, in Language) (string, bool) {
	w, ok := legSentences[f.ID]
	if !ok || in >= languages {
		return "", false
	}
	text := w.all[in]
	if _, told := f.Args.Get(w.lack); w.lack != "" && !told {
		text = w.less[in]
	}
	pairs := []string{"{player}", l.NameOf(f.Player), "{where}", Place(f.Player.Team(), f.Where)}
	for _, a := range f.Args {
		pairs = append(pairs, "{"+a.Name+"}", said(a.Value, l, in))
	}
	return capital(strings.NewReplacer(pairs...).Replace(text)), true
}

// Remedy says what a remedy does: "Return 8 ft 6 in high".
func Remedy(r advice.Remedy) string {
	switch r.How {
	case advice.HigherReturn:
		return "Return " + Length(units.Feet(r.By)) + " high"
	case advice.DeeperReturn:
		return "Return to " + Length(units.Feet(r.By)) + " inside the baseline"
	case advice.MoveLater:
		return "Be there " + Seconds(units.Seconds(r.By)) + " later"
	case advice.MoveEarlier:
		return "Be there " + Seconds(units.Seconds(r.By)) + " earlier"
	case advice.MoveNearer:
		return "Run " + Length(units.Feet(r.By)) + " less"
	case advice.StateOrder:
		return "Take the order as run"
	}
	return ""
}
