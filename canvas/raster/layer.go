package raster

import (
	"image"
	"image/draw"

	"homeside/canvas"
)

// layer is shapes drawn over what lies under them, each time from the time before:
// only the tiles in which a shape or what lies under it has changed are drawn
// again. It is not safe for two goroutines at once.
type layer struct {
	under    image.Image
	top      *Raster
	old, new *marks
	stale    *Tiles // see draw
}

// newLayer is a layer that img becomes; img holds what lies under it already.
func newLayer(under image.Image, img *image.RGBA) *layer {
	l := &layer{under: under, top: New(img), stale: NewTiles(img.Rect.Dx(), img.Rect.Dy())}
	l.old, l.new = newMarks(l.top), newMarks(l.top)
	return l
}

// draw draws the shapes of a scene instead of the last one's in the stale tiles and
// in those that go stale by it. They stay stale until whoever asks for them has
// cleared them.
func (l *layer) draw(s *canvas.Scene) {
	l.note(s)
	l.redraw()
}

// note takes over the shapes of a scene and finds what goes stale by them.
func (l *layer) note(s *canvas.Scene) {
	l.old, l.new = l.new, l.old
	l.new.record(s)
	l.spoil()
}

// redraw draws the shapes noted last in the stale tiles.
func (l *layer) redraw() {
	for box := range l.stale.Stretches(l.top.img.Rect) {
		draw.Draw(l.top.img, box, l.under, box.Min, draw.Src)
	}
	l.top.only = l.stale
	for i := range l.new.list {
		if m := &l.new.list[i]; m.touches(l.stale) {
			m.draw(l.top)
		}
	}
}

// spoil adds the tiles under marks that came, went or changed. Marks that stay
// are paired in the order of both scenes, so that what lies over what stays too.
func (l *layer) spoil() {
	old := l.old.list
	for i := range l.new.list {
		m := &l.new.list[i]
		at := 0
		for at < len(old) && !old[at].sameID(m) {
			at++
		}
		if at == len(old) {
			m.addTo(l.stale)
			continue
		}
		l.drop(old[:at])
		if !old[at].same(m) {
			l.drop(old[at : at+1])
			m.addTo(l.stale)
		}
		old = old[at+1:]
	}
	l.drop(old)
}

func (l *layer) drop(gone []mark) {
	for i := range gone {
		gone[i].addTo(l.stale)
	}
}
