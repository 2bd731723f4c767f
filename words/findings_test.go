package words

import (
	"regexp"
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

func findingLesson() lesson.Lesson {
	return lesson.Lesson{Teams: [2]lesson.Team{{Name: "Harbour Lane", Players: [2]lesson.Player{{Name: "Ivo"}, {Name: "Mara"}}}}}
}

// Every kind of finding has a sentence, those of the rules in every language.
func TestEveryFindingHasWords(t *testing.T) {
	for _, k := range finding.Kinds {
		f := finding.New(k.ID, 0, court.Point{}).About(game.Near1)
		if got := Finding(f, findingLesson()); got == "" || got == string(k.ID) {
			t.Errorf("Finding(%s) = %q, want a sentence", k.ID, got)
		}
	}
	for _, k := range finding.RuleKinds {
		if ruleSentences[k.ID] == "" {
			t.Errorf("%s has no words", k.ID)
		}
	}
	if len(ruleSentences) != len(finding.RuleKinds) {
		t.Errorf("%d sentences for %d kinds: one is for nothing", len(ruleSentences), len(finding.RuleKinds))
	}
}

// braced are the names in braces of a text, the shot's forms as the shot.
func braced(text string) []string {
	var names []string
	for _, m := range regexp.MustCompile(`\{(?:the)?(shot|[a-z]+)\}`).FindAllStringSubmatch(text, -1) {
		names = append(names, m[1])
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// The Spanish sentences tell the same figures.
func TestLanguagesTellTheSame(t *testing.T) {
	for english, es := range spanish() {
		if got, want := braced(es), braced(english); !slices.Equal(got, want) {
			t.Errorf("%q tells %v, in Spanish %v", english, want, got)
		}
	}
}

func TestRuleSentences(t *testing.T) {
	for _, c := range []struct {
		id   finding.ID
		args finding.Args
		want string
	}{
		{finding.PlaceNotServer, finding.Args{finding.Is("from", court.Right), finding.Is("call", game.Call{Receiving: 3, Server: 2}), finding.Is("server", game.Near2), finding.Is("court", court.Left)},
			"Right place, wrong server: Ivo belongs on the right, but at 0-3-2 it is for Mara to serve, from the left."},
		{finding.WrongTeam, finding.Args{finding.Is("team", court.Near)}, "Ivo serves, but it is for Harbour Lane to serve."},
		{finding.WrongTeam, finding.Args{finding.Is("team", court.Far)}, "Ivo serves, but it is for the far team to serve."},
		{finding.CallImpossible, finding.Args{finding.Is("call", game.Call{Serving: 12, Receiving: 3, Server: 1}), finding.Is("format", game.SideOut), finding.Is("to", 11)},
			"12-3-1 is never called in side-out scoring to 11."},
		{finding.KitchenVolley, finding.Args{finding.Is("support", finding.RearWheel)}, "Ivo volleys with a rear wheel in the kitchen or on its line."},
		{finding.Momentum, finding.Args{finding.Is("support", finding.Foot), finding.Is("speed", units.MetresPerSecond(3)), finding.Is("stop", units.Feet(3))},
			"Ivo volleys at 9.8 ft/s (3.0 m/s) and takes 3 ft to stop: a foot comes into the kitchen."},
		{finding.ServeHitsOwn, finding.Args{finding.Is("by", game.Near2), finding.Is("height", units.Feet(4.5))}, "The serve hits Mara's partner Ivo, 4 ft 6 in above the ground."},
		{finding.ShotImpossible, finding.Args{finding.Is("shot", finding.Shot(2)), finding.Is("reason", flight.TooSlow)},
			"The third of Ivo cannot be hit as drawn: too slow to reach the aim."},
		{finding.StackLegal, finding.Args{finding.Is("partner", game.Far1)}, "Ivo stacks with far1: that is legal, partners may stand anywhere on their own side of the net."},
	} {
		if got := Finding(finding.New(c.id, 0, court.Point{}, c.args...).About(game.Near1), findingLesson()); got != c.want {
			t.Errorf("Finding(%s) = %q, want %q", c.id, got, c.want)
		}
	}
}

// A player without a name starts a sentence with a capital letter.
func TestSentencesBeginWithACapital(t *testing.T) {
	f := finding.New(finding.OverNet, 0, court.Point{}).About(game.Far2)
	if got, want := Finding(f, lesson.Lesson{}), "Far2 steps over the plane of the net."; got != want {
		t.Errorf("Finding(over-net) = %q, want %q", got, want)
	}
}

func TestEveryArgumentHasWords(t *testing.T) {
	var values []any
	for _, r := range flight.Reasons {
		values = append(values, r)
	}
	for _, f := range game.Formats {
		values = append(values, f)
	}
	values = append(values, court.Near, court.Far, court.Right, court.Left, finding.Foot, finding.RearWheel, finding.Shot(0), finding.Shot(8),
		units.Feet(1), units.Seconds(1), units.MetresPerSecond(1), game.Call{}, game.Near1, 11, "as it is")
	for _, v := range values {
		for _, in := range Languages() {
			Speak(in)
			if told(v, lesson.Lesson{}) == "" {
				t.Errorf("told(%T %v) has no words in %s", v, v, in.Name())
			}
		}
	}
	Speak(English)
	if got := told(3.5, lesson.Lesson{}); got != "" {
		t.Errorf("told(a bare number) = %q, want nothing", got)
	}
}
