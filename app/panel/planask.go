package panel

import (
	"homeside/app/session"
	"homeside/model/court"
	"homeside/words"
)

// ask is what is asked for; the chances are left out.
func (p *MatchPlan) ask() session.PlanAsk {
	return session.PlanAsk{Team: court.End(max(p.team.SelectedIndex(), 0)), Policy: session.Policies[max(p.policy.SelectedIndex(), 0)]}
}

func (p *MatchPlan) askWithChances() (session.PlanAsk, error) {
	a := p.ask()
	for _, e := range court.Ends {
		var err error
		if a.Chances[e], err = session.ParsePercent(p.chances[e].Text); err != nil {
			return a, err
		}
	}
	return a, nil
}

func (p *MatchPlan) plan() (session.MatchPlan, error) {
	a, err := p.askWithChances()
	if err != nil {
		return session.MatchPlan{}, err
	}
	return p.session.MatchPlan(a)
}

func (p *MatchPlan) writeMatch() {
	a, err := p.askWithChances()
	if err == nil {
		var n int
		if n, err = p.session.WriteMatch(a); err == nil {
			p.Say(words.MatchWritten(n))
			return
		}
	}
	p.tell(err)
}

func (p *MatchPlan) wantFor() {
	i := p.goal.SelectedIndex()
	if i < 0 {
		return
	}
	g := p.goals[i]
	err := p.session.WantFor(p.ask().Team, g.goal, g.who)
	p.remake()
	if err != nil {
		p.tell(err)
	}
}
