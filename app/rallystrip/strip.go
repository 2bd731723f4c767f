package rallystrip

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"homeside/app/looks"
	"homeside/app/ring"
	"homeside/app/session"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/formation"
	"homeside/words"
)

// stripHeight is the room of the strip in points: seven lanes below the ruler.
const stripHeight = 131

// Strip is the widget.
type Strip struct {
	widget.BaseWidget
	session *session.Session
	raster  *fynecanvas.Raster
	ring    *ring.Ring
	keys    func(*fyne.KeyEvent) // takes what the strip has no use for

	noMargins bool
	scene     compose.Strip
	frames    *raster.Frames
	drawn     key
}

// key is everything the still part depends on.
type key struct {
	revision, width, height int
	noMargins               bool
	look                    *look.Look
	point                   float64
}

var (
	_ desktop.Mouseable = (*Strip)(nil)
	_ fyne.Draggable    = (*Strip)(nil)
)

// New is the strip of a session; keys takes the keys that it has no use for.
func New(s *session.Session, keys func(*fyne.KeyEvent)) *Strip {
	v := &Strip{session: s, ring: ring.New(), keys: keys}
	v.raster = fynecanvas.NewRaster(v.paint)
	v.ExtendBaseWidget(v)
	return v
}

// CreateRenderer implements fyne.Widget.
func (v *Strip) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(v.ring.Over(v.raster))
}

// MinSize implements fyne.Widget.
func (v *Strip) MinSize() fyne.Size { return fyne.NewSize(300, stripHeight*float32(looks.Point())) }

// Refresh asks for a paint; many calls before it make one.
func (v *Strip) Refresh() { v.raster.Refresh() }

// ShowMargins says whether the time to spare is shown.
func (v *Strip) ShowMargins(yes bool) {
	v.noMargins = !yes
	v.Refresh()
}

func (v *Strip) paint(w, h int) image.Image {
	r := v.session.Current()
	if r == nil || w < 2 || h < 2 {
		return image.NewRGBA(image.Rect(0, 0, max(w, 1), max(h, 1)))
	}
	if k := (key{v.session.Revision(), w, h, v.noMargins, looks.Now(), looks.Point()}); v.frames == nil || k != v.drawn {
		v.scene = compose.Strip{Rally: r, Width: w, Height: h, PxPerPoint: v.scale(w) * looks.Point(), Look: k.look, NoMargins: v.noMargins, Signs: v.signs()}
		v.frames = raster.NewFrames(v.scene.Static())
		v.drawn = k
	}
	return v.frames.Draw(v.scene.Moving(v.session.Now()))
}

// signs mark where the play shown first differs from the one it is compared with.
func (v *Strip) signs() []compose.StripSign {
	t, ok := v.session.Tell()
	if !ok {
		return nil
	}
	var all []compose.StripSign
	for _, s := range []struct {
		formation.Sign
		text string
	}{{t.Place, words.PlaceShows()}, {t.Facing, words.FacingShows()}} {
		if s.Shows {
			all = append(all, compose.StripSign{At: s.At, Who: s.Who, Text: s.text})
		}
	}
	return all
}

func (v *Strip) scale(w int) float64 {
	if width := v.Size().Width; width > 0 {
		return float64(w) / float64(width)
	}
	return 1
}

func (v *Strip) seek(p fyne.Position) {
	if v.frames != nil {
		v.session.Pause()
		v.session.Seek(v.scene.Snapped(float64(p.X) * v.scale(v.scene.Width)))
	}
}

// MouseDown implements desktop.Mouseable.
func (v *Strip) MouseDown(e *desktop.MouseEvent) {
	ring.Take(v)
	v.seek(e.Position)
}

// MouseUp implements desktop.Mouseable.
func (v *Strip) MouseUp(*desktop.MouseEvent) {}

// Dragged implements fyne.Draggable.
func (v *Strip) Dragged(e *fyne.DragEvent) { v.seek(e.Position) }

// DragEnd implements fyne.Draggable.
func (v *Strip) DragEnd() {}
