package panel

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"homeside/app/looks"
	"homeside/canvas/compose"
	"homeside/canvas/raster"
)

// chartSharp is how much larger than in print the words of a chart are in the
// window.
const chartSharp = 1.35

// chart shows bars in the width it is given.
type chart struct {
	*fynecanvas.Raster
	bars compose.BarChart
}

func newChart() *chart {
	c := &chart{}
	c.Raster = fynecanvas.NewRaster(c.draw)
	return c
}

func (c *chart) show(b compose.BarChart) {
	c.bars = b
	c.SetMinSize(fyne.NewSize(320, float32(b.Height())*chartSharp))
	c.Refresh()
}

// draw is called from within a paint with the size in device pixels.
func (c *chart) draw(w, h int) image.Image {
	size := c.Size()
	if w < 1 || h < 1 || size.Width < 1 {
		return image.NewRGBA(image.Rect(0, 0, 1, 1))
	}
	b := c.bars
	b.Look = looks.Now()
	b.Width, b.PxPerPoint = w, chartSharp*float64(w)/float64(size.Width)
	scene := b.Scene()
	scene.Height = h
	return raster.Scene(scene)
}
