package reel

import (
	"errors"
	"fmt"
	"math"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// FitOptions say what a reel of one play is made of. The zero value teaches.
type FitOptions struct {
	Recipe Recipe
	Beside int           // number of a play shown beside it, counted from 1; 0 shows none
	Camera lesson.Camera // of the passes
	// Say is what a freeze explains at a contact; nil, or no text, gives a freeze
	// without a caption there.
	Say func(r *rally.Rally, shot int) string
}

// Fitted is a reel that lasts as long as was wanted.
type Fitted struct {
	Reel lesson.Reel
	Left []Part // what there was no time for
}

// LengthError says that no reel of the recipe lasts as long as is wanted.
type LengthError struct{ Want, Least, Most units.Seconds }

// Error says what is possible.
func (e *LengthError) Error() string {
	if e.Want < e.Least {
		return fmt.Sprintf("%.1f s is too short: one pass at match speed takes %.1f s", float64(e.Want), float64(e.Least))
	}
	return fmt.Sprintf("%.1f s is too long: at most %.0f s", float64(e.Want), math.Floor(float64(e.Most)))
}

// Fit is a reel of play i, counted from 0, that lasts n: to rounding, far less
// than a frame. What there is no time for is left out and told of; if not even
// one pass at match speed fits, or the reel would have to repeat itself too often, it is a
// *LengthError. The lesson is a sound one.
func Fit(l lesson.Lesson, i int, n units.Seconds, o FitOptions) (Fitted, error) {
	if math.IsNaN(float64(n)) {
		return Fitted{}, errors.New("the length of a reel must be a number")
	}
	f, err := newFitter(l, i, o)
	if err != nil {
		return Fitted{}, err
	}
	if n < f.pass {
		return Fitted{}, &LengthError{n, f.pass, 0}
	}
	for _, v := range f.variants() {
		if least, _ := v.bounds(); n >= least+f.pass {
			return f.fill(v, n)
		}
	}
	return Fitted{}, fmt.Errorf("no way to fill %.1f s", float64(n)) // every recipe ends with a bare pass
}

// variant is a reel whose parts can be longer or shorter. A pass at match speed
// ends it.
type variant struct {
	parts []part
	loops bool             // the pass is shown again where there is time
	holds *[]lesson.Freeze // of the pass; nil for none
	left  []Part
}

// part is a piece of a reel that lasts from least to most.
type part struct {
	kind        Part
	least, most units.Seconds
	add         func(r *lesson.Reel, length units.Seconds)
}

// bounds are the least and the most that the parts last, without the last pass.
func (v variant) bounds() (least, most units.Seconds) {
	for _, p := range v.parts {
		least += p.least
		most += p.most
	}
	return least, most
}

// fill makes a variant last n, which is enough for it: with as few passes as it
// takes, all parts stretched alike, and what is then still left as a rest at the
// end of every pass.
func (f *fitter) fill(v variant, n units.Seconds) (Fitted, error) {
	least, most := v.bounds()
	passes := units.Seconds(1)
	if v.loops {
		passes = max(min(units.Seconds(math.Ceil(float64((n-most)/f.pass))), units.Seconds(math.Floor(float64((n-least)/f.pass)))), 1)
	}
	if passes > lesson.MaxLoops {
		return Fitted{}, &LengthError{n, f.pass, most + lesson.MaxLoops*f.pass}
	}
	budget := n - passes*f.pass
	share := units.Seconds(1)
	if most > least {
		share = min(max((budget-least)/(most-least), 0), 1)
	}
	out := Fitted{Reel: lesson.Reel{Name: f.rally.Play.Title}, Left: v.left}
	for _, p := range v.parts {
		length := p.least + (p.most-p.least)*share
		p.add(&out.Reel, length)
		budget -= length
	}
	out.Reel.Takes = append(out.Reel.Takes, f.last(v, int(passes), budget))
	return out, nil
}

// last is the pass at match speed that ends a reel, shown so many times, with a
// rest shared among them.
func (f *fitter) last(v variant, passes int, rest units.Seconds) lesson.Take {
	t := f.take(1)
	if v.holds != nil {
		t.Freezes = *v.holds
	}
	if passes > 1 {
		t.Loops = passes
	}
	rest /= units.Seconds(passes)
	if rest <= leastRest {
		return t
	}
	n := math.Ceil(float64(rest / lesson.MaxHold))
	for range int(n) {
		t.Freezes = append(t.Freezes, lesson.Freeze{At: f.theEnd(), Length: rest / units.Seconds(n)})
	}
	return t
}

// leastRest is what only rounding leaves over.
const leastRest units.Seconds = 1e-6

// theEnd is an anchor that no play goes on after.
func (f *fitter) theEnd() lesson.Anchor {
	return lesson.Anchor{Event: lesson.TheEnd, Offset: lesson.MaxOffset}
}
