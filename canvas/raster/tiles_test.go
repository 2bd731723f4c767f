package raster

import (
	"image"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// A set of tiles is that of the pixels' tiles.
func TestTiles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, h := rapid.IntRange(1, 70).Draw(t, "w"), rapid.IntRange(1, 70).Draw(t, "h")
		box := func(name string) image.Rectangle {
			at := func(axis string) int { return rapid.IntRange(-20, 90).Draw(t, name+axis) }
			return image.Rect(at("x0"), at("y0"), at("x1"), at("y1"))
		}
		tiles, want := NewTiles(w, h), map[image.Point]bool{}
		a, b := box("a"), box("b")
		tiles.Add(a)
		for y := range h {
			for x := range w {
				if image.Pt(x, y).In(a) {
					want[image.Pt(x/16, y/16)] = true
				}
			}
		}
		var all image.Rectangle
		touches, boxes := false, []image.Rectangle{}
		for row := range (h + 15) / 16 {
			for column := range (w + 15) / 16 {
				if got := tiles.Has(column, row); got != want[image.Pt(column, row)] {
					t.Fatalf("after Add(%v) to %dx%d, Has(%d, %d) = %v", a, w, h, column, row, got)
				}
				if tile := image.Rect(column*16, row*16, min(w, column*16+16), min(h, row*16+16)); tiles.Has(column, row) {
					all = all.Union(tile)
					touches = touches || tile.Overlaps(b) || wideTile(column, row).Overlaps(b.Intersect(image.Rect(0, 0, w, h)))
					boxes = append(boxes, tile)
				}
			}
		}
		if got := slices.Collect(tiles.Boxes()); !slices.Equal(got, boxes) || tiles.Bounds() != all {
			t.Fatalf("Boxes() = %v, Bounds() = %v, want %v and %v", got, tiles.Bounds(), boxes, all)
		}
		if got := tiles.Touches(b); got != touches {
			t.Fatalf("%v with %v: Touches(%v) = %v, want %v", image.Pt(w, h), a, b, got, touches)
		}
		tiles.Clear()
		if !tiles.Bounds().Empty() {
			t.Fatal("something is left after Clear")
		}
		if tiles.Fill(); tiles.Bounds() != image.Rect(0, 0, w, h) {
			t.Fatalf("after Fill, Bounds() = %v, want the picture", tiles.Bounds())
		}
	})
}

func wideTile(column, row int) image.Rectangle {
	return image.Rect(column*16, row*16, column*16+16, row*16+16)
}
