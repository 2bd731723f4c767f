package rules

import (
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// Fix is play i of a lesson changed so that a finding of Check is gone; false if
// no way is known. Every way is tried out: the finding must be gone, a fault
// must leave fewer faults and anything else no more of them.
func Fix(f finding.Finding, l lesson.Lesson, i int) (lesson.Play, bool) {
	ways, ok := fixes[f.ID]
	if !ok || i < 0 || i >= len(l.Plays) || len(l.Plays[i].Shots) == 0 {
		return lesson.Play{}, false
	}
	r, err := rally.Solve(l, i)
	if err != nil {
		return lesson.Play{}, false
	}
	m := &mend{sheet: sheetOf(r, l), f: f, play: l.Plays[i]}
	before := tally(Check(r, l), f.ID)
	for _, p := range ways(m) {
		if after, ok := tried(l, p, f.ID); ok && after.better(before, f.Severity) {
			return p, true
		}
	}
	return lesson.Play{}, false
}

// mend is a finding to be mended in a play.
type mend struct {
	*sheet
	f    finding.Finding
	play lesson.Play
}

// fixes are the ways to mend a finding, the likeliest first.
var fixes = map[finding.ID]func(*mend) []lesson.Play{
	finding.WrongTeam:      (*mend).otherTeam,
	finding.WrongServer:    (*mend).rightServe,
	finding.PlaceNotServer: (*mend).rightServe,
	finding.WrongCourt:     (*mend).rightServe,
	finding.WrongReceiver:  (*mend).otherReceiver,
	finding.FootOnCourt:    (*mend).intoServingArea,
	finding.FootOutside:    (*mend).intoServingArea,
	finding.FeetOffGround:  (*mend).grounded,
	finding.ServeIntoNet:   (*mend).higher,
	finding.ServeInKitchen: (*mend).intoServiceCourt,
	finding.ServeElsewhere: (*mend).intoServiceCourt,
	finding.ServeOut:       (*mend).intoServiceCourt,
	finding.ServeHitsOwn:   (*mend).outOfTheWay,
	finding.ServeHitsOther: (*mend).outOfTheWay,
	finding.BallHitsPlayer: (*mend).outOfTheWay,
	finding.ServeVolleyed:  (*mend).letBounce,
	finding.ReturnVolleyed: (*mend).letBounce,
	finding.SecondBounce:   (*mend).letBounce,
	finding.KitchenVolley:  (*mend).behindTheLine,
	finding.Momentum:       (*mend).stopShort,
	finding.WrongSide:      (*mend).ontoOwnSide,
	finding.OverNet:        (*mend).ontoOwnSide,
	finding.ShotIntoNet:    (*mend).higher,
	finding.ShotOut:        (*mend).intoCourt,
	finding.ShotImpossible: (*mend).higher,
	finding.OffSurface:     (*mend).ontoSurface,
	finding.PartnerInside:  (*mend).stayBack,
}

// count is how often something was found, and how many faults.
type count struct{ same, faults int }

func tally(all []finding.Finding, id finding.ID) (n count) {
	for _, f := range all {
		if f.ID == id {
			n.same++
		}
		if f.Severity == finding.Fault {
			n.faults++
		}
	}
	return n
}

// better says whether a play is better than before for one who mends a finding.
func (n count) better(before count, s finding.Severity) bool {
	return n.same < before.same && (n.faults < before.faults || n.faults == before.faults && s != finding.Fault)
}

// tried is what is found in the lesson with a play changed; false if it is no
// longer sound.
func tried(l lesson.Lesson, p lesson.Play, id finding.ID) (count, bool) {
	l.Plays = []lesson.Play{p}
	if lesson.Validate(l) != nil {
		return count{}, false
	}
	r, err := rally.Solve(l, 0)
	if err != nil {
		return count{}, false
	}
	return tally(Check(r, l), id), true
}
