package sound

import (
	"cmp"
	"slices"

	"homeside/model/reel"
)

// OfReel is a reel in beeps, on the clip's own clock: every beep as often as the
// clip shows its moment. Pitches do not follow the speed. Of two plays side by
// side only the first is heard.
func OfReel(r *reel.Reel) Play {
	p := Play{To: r.Length()}
	for i := range r.Takes {
		for _, b := range Of(r.Takes[i].Rally).Beeps {
			for _, at := range r.Times(i, b.At) {
				p.Beeps = append(p.Beeps, Beep{at, b.Kind})
			}
		}
	}
	slices.SortStableFunc(p.Beeps, func(a, b Beep) int { return cmp.Compare(a.At, b.At) })
	return p
}
