package courtview

import (
	"fyne.io/fyne/v2"

	"homeside/canvas"
	"homeside/canvas/compose"
)

// zoom is how much larger than fitted the court is drawn, and how far it is
// moved from there in shares of the picture. Court and height strip go together.
type zoom struct {
	scale       float64
	right, down float64
}

var fitted = zoom{scale: 1}

// mostZoom is about a foot to the inch on a screen.
const mostZoom = 8

// of is a layout drawn larger.
func (z zoom) of(l compose.Layout) compose.Layout {
	l.Court, l.Rise = z.view(l, l.Court), z.view(l, l.Rise)
	if l.Clip != (canvas.Clip{}) {
		l.Clip.Min, l.Clip.Max = z.px(l, l.Clip.Min), z.px(l, l.Clip.Max)
	}
	return l
}

func (z zoom) px(l compose.Layout, p canvas.Px) canvas.Px {
	return canvas.Px{X: p.X*z.scale + z.right*float64(l.Width), Y: p.Y*z.scale + z.down*float64(l.Height)}
}

func (z zoom) view(l compose.Layout, v canvas.View) canvas.View {
	v.PxPerFoot *= z.scale
	v.Origin = z.px(l, v.Origin)
	return v
}

// by is the zoom changed by a factor about a place, in shares of the picture,
// which stays where it is.
func (z zoom) by(factor, x, y float64) zoom {
	scale := min(max(z.scale*factor, 1), mostZoom)
	factor = scale / z.scale
	return zoom{scale, x + (z.right-x)*factor, y + (z.down-y)*factor}.kept()
}

// moved is the zoom with the court moved by shares of the picture.
func (z zoom) moved(right, down float64) zoom {
	return zoom{z.scale, z.right + right, z.down + down}.kept()
}

// kept moves the picture so that it covers the view.
func (z zoom) kept() zoom {
	least := 1 - z.scale
	return zoom{z.scale, min(max(z.right, least), 0), min(max(z.down, least), 0)}
}

// Zoom draws the court larger or smaller by a factor about the middle.
func (v *View) Zoom(factor float64) { v.setZoom(v.zoom.by(factor, 0.5, 0.5)) }

// Fit shows all of the court.
func (v *View) Fit() { v.setZoom(fitted) }

// Zoomed is how much larger than fitted the court is drawn.
func (v *View) Zoomed() float64 { return v.zoom.scale }

func (v *View) setZoom(z zoom) {
	if z != v.zoom {
		v.zoom = z
		v.Refresh()
		if v.events.Zoomed != nil {
			v.events.Zoomed(z.scale)
		}
	}
}

// share is a position in shares of the view.
func (v *View) share(p fyne.Position) (x, y float64) {
	size := v.Size()
	return float64(p.X / max(size.Width, 1)), float64(p.Y / max(size.Height, 1))
}

// A notch of the wheel scrolls by wheelNotch and zooms by wheelFactor.
const (
	wheelNotch  = 25
	wheelFactor = 1.2
)

// Scrolled implements fyne.Scrollable: the wheel zooms about the pointer.
func (v *View) Scrolled(e *fyne.ScrollEvent) {
	x, y := v.share(e.Position)
	factor := 1 + (wheelFactor-1)*min(max(float64(e.Scrolled.DY)/wheelNotch, -3), 3)
	if factor <= 0.1 {
		factor = 0.4
	}
	v.setZoom(v.zoom.by(factor, x, y))
}
