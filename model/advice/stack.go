package advice

import (
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/rally"
	"homeside/model/units"
)

// Stack is the advice not to stack on a player's return, when the play has the
// returner change sides and only a return above most (0 is MostApex) would
// give the time to be set. It solves many returns: ask for it when it is shown.
func Stack(r *rally.Rally, most units.Feet) (finding.Finding, bool) {
	a, depth, apex, ok := AdvisorOf(r)
	if !ok {
		return finding.Finding{}, false
	}
	a.Cap = most
	s := r.Strokes[1]
	if team := s.By.Team(); court.SideOf(team, a.Start) == court.SideOf(team, a.Target) {
		return finding.Finding{}, false
	}
	answer, err := a.Answer(depth, apex)
	if err != nil || answer.Verdict != DoNotStack {
		return finding.Finding{}, false
	}
	args := []finding.Arg{finding.Is("most", answer.Cap), finding.Is("apex", apex), finding.Is("distance", answer.Needs.Run), finding.Is("short", -answer.Stopped)}
	if answer.Needed > 0 {
		args = append(args, finding.Is("needs", answer.Needed))
	}
	return finding.New(finding.NoStack, s.At, a.Start, args...).About(s.By), true
}
