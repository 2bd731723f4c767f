package panel

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"homeside/canvas"
	"homeside/canvas/film"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/export"
	"homeside/model/units"
)

// FrameView shows a frame of a clip or a still in the shape that it will have.
type FrameView struct {
	Box     *fyne.Container
	Safe    bool   // the part that words stay in is outlined
	Painted func() // called from within a paint; nil means nobody asks

	picture *fynecanvas.Raster
	source  export.Source // nil shows nothing
	ground  export.Ground
	shape   fyne.Size
	at      units.Seconds

	frames *raster.Frames // of what is shown, at a size; nil for none yet
	drawn  image.Point
}

// NewFrameView is a view of nothing.
func NewFrameView() *FrameView {
	v := &FrameView{shape: fyne.NewSize(9, 16)}
	v.picture = fynecanvas.NewRaster(v.draw)
	v.picture.ScaleMode = fynecanvas.ImageScaleFastest
	v.Box = container.New(shaped{v}, v.picture)
	return v
}

// Show shows a moment of a source on a ground, in the shape of a size in pixels.
func (v *FrameView) Show(src export.Source, g export.Ground, width, height int, at units.Seconds) {
	shape := fyne.NewSize(float32(width), float32(height))
	resized := shape != v.shape
	v.source, v.ground, v.shape, v.at, v.frames = nil, g, shape, at, nil
	if src != nil {
		v.source = g.Of(src)
	}
	if resized {
		v.Box.Refresh()
	}
	v.picture.Refresh()
}

// Seek shows another moment.
func (v *FrameView) Seek(at units.Seconds) {
	v.at = at
	v.picture.Refresh()
}

// draw is called by the toolkit with the size in pixels.
func (v *FrameView) draw(w, h int) image.Image {
	if v.Painted != nil {
		defer v.Painted()
	}
	if v.source == nil || w < 2 || h < 2 {
		return image.NewRGBA(image.Rect(0, 0, max(w, 1), max(h, 1)))
	}
	if size := image.Pt(w, h); v.frames == nil || v.drawn != size {
		static := *v.ground.Under(v.source.Static(w, h))
		if static.Background.A == 0 {
			static.Background = look.Daylight.Paper
			static.Panels = append([]canvas.Panel{chequered(w, h, static.PxPerPoint)}, static.Panels...)
		}
		v.frames, v.drawn = raster.NewFrames(&static), size
	}
	s := v.source.Moving(w, h, v.at)
	if v.Safe {
		s.Panels = append(s.Panels, safeOutline(w, h, s.PxPerPoint))
	}
	return v.frames.Draw(s)
}

// chequer is the side of the squares that stand for what is transparent, in pixels.
const chequer = 12

// chequered is a ground that stands for a transparent one.
func chequered(w, h int, scale float64) canvas.Panel {
	var path canvas.Path
	at := func(x, y int) canvas.Pos {
		return canvas.Pos{Right: canvas.Points(float64(x) / scale), Down: canvas.Points(float64(y) / scale)}
	}
	for y := 0; y < h; y += chequer {
		for x := y / chequer % 2 * chequer; x < w; x += 2 * chequer {
			path = path.Move(at(x, y)).Line(at(x+chequer, y)).Line(at(x+chequer, y+chequer)).Line(at(x, y+chequer)).Close()
		}
	}
	grey := look.Daylight.Ink
	grey.A = 0x30
	return canvas.Panel{Name: "chequered", View: canvas.View{PxPerFoot: 1}, Shapes: []canvas.Shape{{ID: "chequered", Layer: canvas.Ground, Path: path, Style: canvas.Style{Fill: grey}}}}
}

// safeOutline outlines the part of a picture that words stay in.
func safeOutline(w, h int, scale float64) canvas.Panel {
	a := film.Safe(w, h)
	at := func(x, y float64) canvas.Pos {
		return canvas.Pos{Right: canvas.Points(x / scale), Down: canvas.Points(y / scale)}
	}
	path := canvas.Path{}.Move(at(a.Min.X, a.Min.Y)).Line(at(a.Max.X, a.Min.Y)).Line(at(a.Max.X, a.Max.Y)).Line(at(a.Min.X, a.Max.Y)).Close()
	dash := canvas.Points(6 / scale)
	return canvas.Panel{Name: "safe", View: canvas.View{PxPerFoot: 1}, Shapes: []canvas.Shape{{
		ID: "safe", Layer: canvas.Labels, Path: path,
		Style: canvas.Style{Stroke: look.Rust, Width: canvas.Pts(canvas.Points(1.5 / scale)), Dash: []canvas.Points{dash, dash}},
	}}}
}

// shaped gives its one part the shape of the view, as large as it goes.
type shaped struct{ view *FrameView }

// MinSize implements fyne.Layout.
func (shaped) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(120, 120) }

// Layout implements fyne.Layout.
func (s shaped) Layout(o []fyne.CanvasObject, room fyne.Size) {
	k := min(room.Width/s.view.shape.Width, room.Height/s.view.shape.Height)
	size := fyne.NewSize(s.view.shape.Width*k, s.view.shape.Height*k)
	o[0].Resize(size)
	o[0].Move(fyne.NewPos((room.Width-size.Width)/2, (room.Height-size.Height)/2))
}
