package formation

import (
	"math"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// TellOptions are how much shows. The zero value is the usual.
type TellOptions struct {
	Apart  units.Feet    // positions that differ by more show; 0 is 1 ft
	Turned units.Degrees // facings that differ by more show; 0 is 30 degrees
	Needs  units.Seconds // an opponent's reaction and swing; 0 is 0.4 s (about: computed from published reactions)
}

// The usual figures.
const (
	tellApart  units.Feet    = 1
	tellTurned units.Degrees = 30
	tellNeeds  units.Seconds = 0.4
)

func (o TellOptions) orUsual() TellOptions {
	if o.Apart <= 0 {
		o.Apart = tellApart
	}
	if o.Turned <= 0 {
		o.Turned = tellTurned
	}
	if o.Needs <= 0 {
		o.Needs = tellNeeds
	}
	return o
}

// Use is what opponents can make of a tell.
type Use uint8

// The uses, from none to the most.
const (
	NeverShows   Use = iota // the plays look alike to their end
	AfterTheyHit            // it shows when the opponents have struck
	TooLateToUse            // seen before they strike, within reaction and swing
	InTimeToUse             // seen early enough to aim elsewhere
	ShowsAtServe            // it shows before the serve
)

// Uses lists them all.
var Uses = [...]Use{NeverShows, AfterTheyHit, TooLateToUse, InTimeToUse, ShowsAtServe}

// Sign is a first moment at which two plays differ.
type Sign struct {
	Shows  bool
	At     units.Seconds // on the plays' clock, 0 the serve's contact
	Before units.Seconds // the opponents' contact that it tells about; below 0 after it
	Use    Use
	Who    game.Player // who shows it
}

// Tell is where two plays with the same look give themselves away.
type Tell struct{ Place, Facing Sign }

// How finely the plays are looked at, and how far the moment is closed in on.
const (
	tellStep   units.Seconds = 0.02
	tellHalves int           = 30
)

// TellOf is the first moment at which the places, as run, of a pair differ
// between two plays, and likewise the facings, against the opponents' contacts
// in the first play.
func TellOf(a, b *rally.Rally, team court.End, o TellOptions) Tell {
	o = o.orUsual()
	place := func(p, q rally.Pose) bool { return p.Place.Distance(q.Place) > o.Apart }
	facing := func(p, q rally.Pose) bool {
		return math.Abs(math.Remainder(float64(p.Facing-q.Facing), 360)) > float64(o.Turned)
	}
	return Tell{signOf(a, b, team, o, place), signOf(a, b, team, o, facing)}
}

// contactAbout is the opponents' contact that a sign tells about: the first after
// the pair's last own contact before it or, where there is none yet, after the
// pair's first. In a play in which they do not strike it is the end.
func contactAbout(r *rally.Rally, team court.End, at units.Seconds) units.Seconds {
	struck, contact := false, r.To
	for _, s := range r.Strokes {
		switch own := s.By.Team() == team; {
		case own && struck && s.At > at:
			return contact
		case own:
			struck, contact = true, r.To
		case struck && contact == r.To:
			contact = s.At
		}
	}
	return contact
}

// signOf is the first moment at which a player of the pair differs.
func signOf(a, b *rally.Rally, team court.End, o TellOptions, differ func(p, q rally.Pose) bool) (first Sign) {
	for n := range 2 {
		id := game.PlayerOf(team, n+1)
		shows := func(at units.Seconds) bool { return differ(a.Tracks[id].RunAt(at), b.Tracks[id].RunAt(at)) }
		if at, ok := firstTime(max(a.From, b.From), max(a.To, b.To), shows); ok && (!first.Shows || at < first.At) {
			first = Sign{Shows: true, At: at, Before: contactAbout(a, team, at) - at, Who: id}
		}
	}
	first.Use = first.use(o.Needs)
	return first
}

func (s Sign) use(needs units.Seconds) Use {
	switch {
	case !s.Shows:
		return NeverShows
	case s.At < 0:
		return ShowsAtServe
	case s.Before <= 0:
		return AfterTheyHit
	case s.Before < needs:
		return TooLateToUse
	}
	return InTimeToUse
}

// firstTime is the first moment from one to another at which something shows.
func firstTime(from, to units.Seconds, shows func(units.Seconds) bool) (units.Seconds, bool) {
	if shows(from) {
		return from, true
	}
	for lo := from; lo < to; lo += tellStep {
		hi := min(lo+tellStep, to)
		if !shows(hi) {
			continue
		}
		for range tellHalves {
			if mid := (lo + hi) / 2; shows(mid) {
				hi = mid
			} else {
				lo = mid
			}
		}
		return hi, true
	}
	return 0, false
}

// Tell is what a written formation gives away against the play that it looks
// like: a switch against the stay, a stay against the switch, any other against
// the ordinary places. False for ordinary places, which pretend nothing.
func (w Written) Tell(o TellOptions) (Tell, bool, error) {
	like, ok := lookalike[w.Kind]
	if !ok {
		return Tell{}, false, nil
	}
	s := w.Situation
	s.Front = nil
	for _, id := range [2]game.Player{s.Lead(), s.Lead().Partner()} { // a wish forbids no comparison
		p := s.Lesson.Player(id)
		p.Serving, p.Receiving = 0, 0
		s.Lesson = s.Lesson.WithPlayer(id, p)
	}
	other, err := writeOnce(s, like, w.own())
	if err != nil {
		return Tell{}, false, err
	}
	return TellOf(w.Rally, other.Rally, s.Team, o), true, nil
}

// own is the height of the pair's own shot in a play where it was raised.
func (w Written) own() units.Feet {
	if w.Answer.Verdict == Raised {
		return w.Answer.Apex
	}
	return 0
}
