package gesture

import (
	"slices"

	"homeside/model/court"
)

// band is a rectangle that is drawn round what is to be picked.
type band struct {
	down     bool
	from, to court.Point
}

// Band is the rectangle being drawn; false while there is none, or before it is
// more than a click.
func (h *Hand) Band() (court.Rect, bool) {
	b := h.band
	return court.RectOf(b.from, b.to), b.down && b.from.Distance(b.to) >= Slack
}

// releaseBand picks what the band holds, or adds it to what is picked; a click
// on nothing picks nothing.
func (h *Hand) releaseBand() {
	area, ok := h.Band()
	if !ok {
		if !h.keys.Add {
			h.session.Pick()
		}
		return
	}
	found := h.session.Within(area)
	if h.keys.Add {
		for _, a := range h.session.Picked() {
			if !slices.Contains(found, a) {
				found = append(found, a)
			}
		}
	}
	h.session.Pick(found...)
}
