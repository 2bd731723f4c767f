package compose

import (
	"fmt"
	"strings"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/game"
)

// Sight is how the court is seen. The zero Sight is from straight above, all of
// it upright with the near team at the bottom.
type Sight struct {
	Turn   canvas.Turn
	End    court.End // the team at the bottom of an upright court, at the left of a lying one
	Half   Half
	Behind Behind // in perspective; the others count for nothing then
	Large  bool   // letters, and the marks that hold them, a quarter larger in exports
}

// Half is how much of the court is shown.
type Half uint8

// The halves. One half is shown with a little of the other, for the net.
const (
	BothHalves Half = iota
	NearHalf
	FarHalf
)

// Behind is whom the court is seen from behind of, in perspective.
type Behind uint8

// Who it is. Nobody is a view from straight above; the receiver is who hits the
// return.
const (
	Nobody Behind = iota
	TheReceiver
	TheServers
	firstPlayer // and three more: see BehindPlayer
)

// BehindPlayer is from behind of one of the four.
func BehindPlayer(id game.Player) Behind { return firstPlayer + Behind(id) }

// Sights are the ways of seeing by the names that they have on the command line.
var Sights = []struct {
	Name string
	Sight
}{
	{"upright", Sight{}},
	{"lying", Sight{Turn: canvas.Lying}},
	{"half-near", Sight{Half: NearHalf}},
	{"half-far", Sight{Half: FarHalf}},
	{"behind", Sight{Behind: TheReceiver}},
}

// ParseSight reads a name of Sights.
func ParseSight(name string) (Sight, error) {
	names := make([]string, len(Sights))
	for i, s := range Sights {
		if s.Name == name {
			return s.Sight, nil
		}
		names[i] = s.Name
	}
	return Sight{}, fmt.Errorf("%q: want one of %s", name, strings.Join(names, ", "))
}

// ParseBehind reads whom a view is from behind of: receiver, servers or one of
// the four, such as near1.
func ParseBehind(s string) (Behind, error) {
	switch s {
	case "receiver":
		return TheReceiver, nil
	case "servers":
		return TheServers, nil
	}
	id, err := game.ParsePlayer(s)
	if err != nil {
		return Nobody, fmt.Errorf("%q: want receiver, servers, near1, near2, far1 or far2", s)
	}
	return BehindPlayer(id), nil
}

// overNet is how much of the other half is shown with one.
const overNet feet = 4

// shown is the part of a surface that is shown.
func (s Sight) shown(surface court.Rect) court.Rect {
	switch s.Half {
	case NearHalf:
		surface.Max.Y = overNet
	case FarHalf:
		surface.Min.Y = -overNet
	}
	return surface
}
