package rules

import (
	"slices"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Room that a fix leaves: our choice.
const (
	BodyMargin units.Feet = 0.5 // from a body to the ball's way
	BackMargin units.Feet = 1   // behind the baseline, until the return has bounced
)

// shot is the shot a finding is about, the serve if it names none.
func (m *mend) shot() int {
	v, _ := m.f.Args.Get("shot")
	i, _ := v.(finding.Shot)
	return min(max(int(i), 0), len(m.play.Shots)-1)
}

// letBounce takes the ball at the top of its first bounce.
func (m *mend) letBounce() []lesson.Play {
	i := m.shot() - 1
	if i < 0 {
		return nil
	}
	s := m.play.Shots[i]
	s.Meet = lesson.Meet{}
	return []lesson.Play{m.play.WithShot(i, s)}
}

// behindTheLine volleys from behind the kitchen line, or else not at all.
func (m *mend) behindTheLine() []lesson.Play {
	return append([]lesson.Play{m.volleyFrom(0)}, m.letBounce()...)
}

// stopShort has the volleyer stop at the contact or come to it less far, or else
// lets the ball bounce.
func (m *mend) stopShort() []lesson.Play {
	v, _ := m.f.Args.Get("stop")
	stop, _ := v.(units.Feet)
	id, k := m.f.Player, m.contact()
	k.keyframe.Through = false
	return append([]lesson.Play{withContact(m.play, id, k), m.volleyFrom(stop)}, m.letBounce()...)
}

// volleyFrom puts the volleyer so far behind the kitchen line at the contact, or
// leaves one who is farther back.
func (m *mend) volleyFrom(behind units.Feet) lesson.Play {
	k := m.contact()
	e := m.f.Player.Team()
	_, along := footprint(k.keyframe.Facing)
	k.keyframe.Place.Y = e.Sign() * max(k.keyframe.Place.Y*e.Sign(), court.Kitchen+along+behind+FootMargin)
	return withContact(m.play, m.f.Player, k)
}

// contactPlace is a keyframe at a contact and its place in the track: it replaces
// the one there or, if there is none, goes before it.
type contactPlace struct {
	keyframe lesson.Keyframe
	index    int
	there    bool
}

// contact is where the striker of the finding's shot is drawn at the contact.
func (m *mend) contact() contactPlace {
	at := lesson.At(lesson.ContactOf(m.shot()))
	track := m.play.Tracks[m.f.Player]
	if i := slices.IndexFunc(track, func(k lesson.Keyframe) bool { return k.At == at }); i >= 0 {
		return contactPlace{track[i], i, true}
	}
	t := m.TimeAt(at)
	drawn := m.Tracks[m.f.Player].At(t)
	after := slices.IndexFunc(track, func(k lesson.Keyframe) bool { return m.TimeAt(k.At) > t })
	if after < 0 {
		after = len(track)
	}
	return contactPlace{lesson.Keyframe{At: at, Place: drawn.Place, Facing: drawn.Facing}, after, false}
}

func withContact(p lesson.Play, id game.Player, k contactPlace) lesson.Play {
	if k.there {
		return withKeyframe(p, id, k.index, k.keyframe)
	}
	return p.WithTrack(id, slices.Insert(slices.Clone(p.Tracks[id]), k.index, k.keyframe))
}

func withKeyframe(p lesson.Play, id game.Player, i int, k lesson.Keyframe) lesson.Play {
	track := slices.Clone(p.Tracks[id])
	track[i] = k
	return p.WithTrack(id, track)
}

// moved is the play with all places of the finding's player changed.
func (m *mend) moved(change func(lesson.Keyframe) lesson.Keyframe) []lesson.Play {
	track := slices.Clone(m.play.Tracks[m.f.Player])
	for i, k := range track {
		track[i] = change(k)
	}
	return []lesson.Play{m.play.WithTrack(m.f.Player, track)}
}

// ontoOwnSide moves every place over the net to the other side of it.
func (m *mend) ontoOwnSide() []lesson.Play {
	e := m.f.Player.Team()
	return m.moved(func(k lesson.Keyframe) lesson.Keyframe {
		_, along := footprint(k.Facing)
		k.Place.Y = ownY(e, k.Place.Y, along+FootMargin)
		if k.Via != nil {
			k.Via = new(court.Pt(k.Via.X, ownY(e, k.Via.Y, along+FootMargin)))
		}
		return k
	})
}

// ownY is y on the own side, at least so far from the net.
func ownY(e court.End, y, least units.Feet) units.Feet { return e.Sign() * max(y, -y, least) }

// ontoSurface moves every place to the nearest on the playing surface.
func (m *mend) ontoSurface() []lesson.Play {
	surface := m.lesson.Venue.Surface()
	return m.moved(func(k lesson.Keyframe) lesson.Keyframe {
		across, along := footprint(k.Facing)
		room := court.Rect{Min: surface.Min.Add(court.Pt(across, along)), Max: surface.Max.Sub(court.Pt(across, along))}
		k.Place = nearest(room, k.Place)
		if k.Via != nil {
			k.Via = new(nearest(room, *k.Via))
		}
		return k
	})
}

// stayBack keeps a server or the partner behind the baseline until the return
// has bounced: places until then move back, later runs leave then.
func (m *mend) stayBack() []lesson.Play {
	bounce := lesson.At(lesson.Event{Shot: 1, Moment: lesson.Bounce})
	until := units.Seconds(0)
	if len(m.Strokes) > 1 {
		until = m.TimeAt(bounce)
	}
	e, first := m.f.Player.Team(), true
	return m.moved(func(k lesson.Keyframe) lesson.Keyframe {
		if m.TimeAt(k.At) <= until || len(m.Strokes) < 2 {
			k.Place.Y = e.Sign() * max(k.Place.Y*e.Sign(), court.Baseline+BackMargin)
			return k
		}
		if first && (k.Leave == nil || m.TimeAt(*k.Leave) < until) {
			k.Leave = new(bounce)
		}
		first = false
		return k
	})
}

// outOfTheWay moves who is hit aside of the ball's way, to the nearer side or
// else to the other: the place where the player is and all others at the same.
func (m *mend) outOfTheWay() []lesson.Play {
	frame := m.At(m.f.When)
	ball := frame.Ball
	next := m.BallAt(m.f.When + headingStep)
	way, ok := next.Ground().Sub(ball.Ground()).Unit()
	if !ok {
		return nil
	}
	right := court.Pt(way.Y, -way.X)
	place := frame.Players[m.f.Player].Run.Place
	off := place.Sub(ball.Ground())
	aside := off.X*right.X + off.Y*right.Y
	room := bodyOf(m.Player(m.f.Player)).radius + BodyMargin
	near, far := room-aside, -room-aside
	if aside < 0 {
		near, far = far, near
	}
	return append(m.shifted(place, right.Times(float64(near))), m.shifted(place, right.Times(float64(far)))...)
}

// besidePlace is how near a keyframe is to where a player is hit for it to be
// moved with it.
const besidePlace units.Feet = 1

func (m *mend) shifted(place, by court.Point) []lesson.Play {
	return m.moved(func(k lesson.Keyframe) lesson.Keyframe {
		if k.Place.Distance(place) <= besidePlace {
			k.Place = k.Place.Add(by)
		}
		return k
	})
}
