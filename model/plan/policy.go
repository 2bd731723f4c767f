package plan

import (
	"fmt"

	"homeside/model/game"
	"homeside/model/lesson"
)

// Policy is what a pair does where the score puts the partners on each other's
// sides. Its zero value is to play from there: no stacking.
type Policy struct {
	Serve  lesson.Formation    // on the own serve
	Return [2]lesson.Formation // when this player receives, by number
}

// Full stacks on the serve and on every return.
func Full() Policy {
	return Policy{Serve: lesson.Stacked, Return: [2]lesson.Formation{lesson.Stacked, lesson.Stacked}}
}

// Half stacks on the serve only. Usage varies: some say half for the return
// only, which is HalfReturn.
func Half() Policy { return Policy{Serve: lesson.Stacked} }

// HalfReturn stacks on the return only.
func HalfReturn() Policy { return Policy{Return: Full().Return} }

// ThreeQuarter stacks on the serve and when the better runner receives, who
// has the longer way then: for seniors and mixed ability (a coaching magazine's advice).
func ThreeQuarter(runner game.Player) Policy {
	p := Half()
	p.Return[runner.Number()-1] = lesson.Stacked
	return p
}

// None never stacks.
func None() Policy { return Policy{} }

// PolicyNames are the names that ParsePolicy reads.
var PolicyNames = [4]string{"full", "half", "three-quarter", "none"}

// ParsePolicy reads a policy's name; the runner counts in three-quarter only.
func ParsePolicy(name string, runner game.Player) (Policy, error) {
	switch name {
	case PolicyNames[0]:
		return Full(), nil
	case PolicyNames[1]:
		return Half(), nil
	case PolicyNames[2]:
		return ThreeQuarter(runner), nil
	case PolicyNames[3]:
		return None(), nil
	}
	return Policy{}, fmt.Errorf("policy %q: want full, half, three-quarter or none", name)
}

// Check says which formation of the policy changes no sides, an ErrPolicy.
func (p Policy) Check() error {
	for _, f := range [3]lesson.Formation{p.Serve, p.Return[0], p.Return[1]} {
		switch f {
		case lesson.FormationUnsaid, lesson.Ordinary, lesson.Stacked, lesson.Switched:
		default:
			return fmt.Errorf("%w: %v changes no sides, want ordinary, stack or switch", ErrPolicy, f)
		}
	}
	return nil
}

// at is the policy's formation for a serve, or for a return by a player.
func (p Policy) at(serving bool, lead game.Player) lesson.Formation {
	f := p.Serve
	if !serving {
		f = p.Return[lead.Number()-1]
	}
	if f == lesson.FormationUnsaid {
		return lesson.Ordinary
	}
	return f
}
