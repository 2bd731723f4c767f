package reel

import (
	"fmt"
	"strings"
)

// Recipe is a way to make a reel of one play.
type Recipe uint8

// The recipes.
const (
	Teach    Recipe = iota // title, signal, a slow pass that holds to explain, one at match speed
	SlowFast               // a slow pass, one at match speed; no words
	Loop                   // passes at match speed with a rest at the end of each
)

// Recipes are all recipes.
var Recipes = [...]Recipe{Teach, SlowFast, Loop}

var recipeNames = [...]string{"teach", "slow-fast", "loop"}

// String is "teach", "slow-fast" or "loop".
func (r Recipe) String() string { return recipeNames[int(r)%len(recipeNames)] }

// ParseRecipe reads a recipe's name.
func ParseRecipe(s string) (Recipe, error) {
	for _, r := range Recipes {
		if r.String() == s {
			return r, nil
		}
	}
	return 0, fmt.Errorf("recipe %q: want one of %s", s, strings.Join(recipeNames[:], ", "))
}

// Part is a part of a recipe.
type Part uint8

// The parts that a recipe leaves out where there is no time for them.
const (
	TitlePart   Part = iota
	SignalPart       // the close-up of the signal
	SlowPart         // the slow pass
	FreezesPart      // some or all of the freezes
)

// Parts are all parts.
var Parts = [...]Part{TitlePart, SignalPart, SlowPart, FreezesPart}
