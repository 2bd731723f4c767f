package panel

import "fyne.io/fyne/v2"

// drags passes on a drag of what can be put in another place.
type drags struct {
	OnDrag    func(at fyne.Position) // in the window; nil if it cannot be dragged
	OnDragEnd func()
}

// Dragged implements fyne.Draggable.
func (d *drags) Dragged(e *fyne.DragEvent) {
	if d.OnDrag != nil {
		d.OnDrag(e.AbsolutePosition)
	}
}

// DragEnd implements fyne.Draggable.
func (d *drags) DragEnd() {
	if d.OnDragEnd != nil {
		d.OnDragEnd()
	}
}

// reorder is a drag that puts one of several things in the place of another.
type reorder struct {
	from, to int  // -1 while nothing is dragged
	off      bool // cancelled, until the pointer lets go
}

func newReorder() reorder { return reorder{from: -1, to: -1} }

// over says that thing from is dragged over place to, and tells whether that is new.
func (r *reorder) over(from, to int) bool {
	if r.off || r.from == from && r.to == to {
		return false
	}
	r.from, r.to = from, to
	return true
}

// under says whether something is dragged.
func (r *reorder) under() bool { return r.from >= 0 }

// drop ends the drag: false if there is none any more.
func (r *reorder) drop() (from, to int, ok bool) {
	from, to, ok = r.from, r.to, r.from >= 0
	*r = newReorder()
	return from, to, ok
}

// cancel lets what is dragged go where it was, and says whether anything was.
func (r *reorder) cancel() bool {
	was := r.under()
	*r = reorder{-1, -1, was}
	return was
}

// before and after say on which side of thing i what is dragged would come in.
func (r *reorder) before(i int) bool { return r.from >= 0 && r.to == i && r.to < r.from }
func (r *reorder) after(i int) bool  { return r.from >= 0 && r.to == i && r.to > r.from }

// placeAt is which of n things of a size, one behind the other, is at a distance from
// the first one's beginning; beyond their ends the nearest.
func placeAt(distance, size float32, n int) int {
	return min(max(int(distance/size), 0), max(n-1, 0))
}
