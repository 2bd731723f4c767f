package raster

import (
	"image"
	"iter"
)

// TileSide is the side of a tile in pixels: that of the squares in which a JPEG
// with halved colours is packed.
const TileSide = 16

// Tiles is a set of the squares into which a picture is divided; those at its
// right and lower edges may stand over.
type Tiles struct {
	picture image.Rectangle
	across  int
	set     []bool // row by row
}

// NewTiles is the empty set for a picture.
func NewTiles(width, height int) *Tiles {
	across, down := ceil(width), ceil(height)
	return &Tiles{image.Rect(0, 0, width, height), across, make([]bool, across*down)}
}

func ceil(px int) int { return (px + TileSide - 1) / TileSide }

// Has says whether the tile in a column and row is in the set.
func (t *Tiles) Has(column, row int) bool { return t.set[row*t.across+column] }

// Clear empties the set.
func (t *Tiles) Clear() { clear(t.set) }

// Fill puts every tile into the set.
func (t *Tiles) Fill() {
	for i := range t.set {
		t.set[i] = true
	}
}

// Join puts the tiles of another set into this one.
func (t *Tiles) Join(other *Tiles) {
	for i, in := range other.set {
		t.set[i] = t.set[i] || in
	}
}

// Add puts the tiles that a box touches into the set.
func (t *Tiles) Add(box image.Rectangle) {
	for row := range t.rows(box) {
		for i := range row {
			row[i] = true
		}
	}
}

// Touches says whether a tile of the set touches a box.
func (t *Tiles) Touches(box image.Rectangle) bool {
	for row := range t.rows(box) {
		for _, in := range row {
			if in {
				return true
			}
		}
	}
	return false
}

// rows are the parts of the set's rows that a box touches.
func (t *Tiles) rows(box image.Rectangle) iter.Seq[[]bool] {
	return func(yield func([]bool) bool) {
		b := box.Intersect(t.picture)
		if b.Empty() {
			return
		}
		from, to := b.Min.X/TileSide, ceil(b.Max.X)
		for y := b.Min.Y / TileSide; y < ceil(b.Max.Y); y++ {
			if !yield(t.set[y*t.across+from : y*t.across+to]) {
				return
			}
		}
	}
}

// Boxes are the tiles of the set, row by row, as far as they are in the picture.
func (t *Tiles) Boxes() iter.Seq[image.Rectangle] {
	return func(yield func(image.Rectangle) bool) {
		for i, in := range t.set {
			if in && !yield(t.box(i)) {
				return
			}
		}
	}
}

// Stretches are what a box holds of the tiles of the set, those side by side as
// one, row by row.
func (t *Tiles) Stretches(box image.Rectangle) iter.Seq[image.Rectangle] {
	return func(yield func(image.Rectangle) bool) {
		b := box.Intersect(t.picture)
		for y := b.Min.Y; y < b.Max.Y; y = (y/TileSide + 1) * TileSide {
			for x := b.Min.X; x < b.Max.X; {
				from := x
				for x < b.Max.X && t.Has(x/TileSide, y/TileSide) {
					x = min((x/TileSide+1)*TileSide, b.Max.X)
				}
				if x == from {
					x = (x/TileSide + 1) * TileSide
				} else if !yield(image.Rect(from, y, x, min((y/TileSide+1)*TileSide, b.Max.Y))) {
					return
				}
			}
		}
	}
}

func (t *Tiles) box(i int) image.Rectangle {
	x, y := i%t.across*TileSide, i/t.across*TileSide
	return image.Rect(x, y, x+TileSide, y+TileSide).Intersect(t.picture)
}

// Bounds is the smallest box round the set, as far as it is in the picture.
func (t *Tiles) Bounds() image.Rectangle {
	var all image.Rectangle
	for b := range t.Boxes() {
		all = all.Union(b)
	}
	return all
}

// Pixels is how many pixels the tiles of the set hold.
func (t *Tiles) Pixels() (n int) {
	for box := range t.Boxes() {
		n += box.Dx() * box.Dy()
	}
	return n
}
