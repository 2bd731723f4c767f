package photopage

import (
	"image"
	"math"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
	"golang.org/x/image/draw"

	"homeside/app/looks"
	"homeside/app/ring"
	"homeside/app/session"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/export/photo"
	"homeside/model/court"
	"homeside/model/homography"
	"homeside/words"
)

// view is the photo with its points and the play over it.
type view struct {
	widget.BaseWidget
	session *session.Session
	events  viewEvents
	raster  *fynecanvas.Raster
	ring    *ring.Ring

	photo  photo.Picture
	base   *image.RGBA // paper with the photo on it, at the view's size
	frame  *image.RGBA
	area   compose.Area // of the photo in it
	chosen int          // the point that keys move
	feet   *feet        // the player's that they move instead; nil for none
	close  bool         // keys are at work: what they move is shown larger
	drag   bool
	grab   canvas.Px // from the pointer to the point it drags
}

// viewEvents are what the view tells its page.
type viewEvents struct {
	placed  func(x, y float64) // a click on the ground, in the photo's pixels
	chosen  func()             // another point
	painted func()
	key     func(*fyne.KeyEvent)
	rune    func(rune)
}

var (
	_ desktop.Mouseable = (*view)(nil)
	_ fyne.Draggable    = (*view)(nil)
	_ fyne.Focusable    = (*view)(nil)
)

func newView(s *session.Session, e viewEvents) *view {
	v := &view{session: s, events: e, ring: ring.New()}
	v.raster = fynecanvas.NewRaster(v.paint)
	v.ExtendBaseWidget(v)
	return v
}

// CreateRenderer implements fyne.Widget.
func (v *view) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(v.ring.Over(v.raster))
}

// MinSize implements fyne.Widget.
func (v *view) MinSize() fyne.Size { return fyne.NewSize(320, 240) }

// Refresh asks for a paint.
func (v *view) Refresh() { v.raster.Refresh() }

// show shows another picture; the zero Picture is none.
func (v *view) show(p photo.Picture) {
	v.photo, v.base = p, nil
	v.Refresh()
}

// paint draws the page's picture at a size in device pixels. The image is the
// view's own and is drawn over by the next paint.
func (v *view) paint(w, h int) image.Image {
	w, h = max(w, 1), max(h, 1)
	if v.base == nil || v.base.Rect.Dx() != w || v.base.Rect.Dy() != h {
		v.lay(w, h)
	}
	copy(v.frame.Pix, v.base.Pix)
	at := v.session.Photo()
	if at == nil || v.photo.Image == nil {
		raster.New(v.frame).Draw(v.invitation(w, h))
	} else {
		raster.New(v.frame).Draw(v.scene(w, h))
		if x, y, ok := v.closeUp(); ok {
			v.magnify(x, y)
		}
	}
	if v.events.painted != nil {
		v.events.painted()
	}
	return v.frame
}

// invitation is where a picture may be dropped.
func (v *view) invitation(w, h int) *canvas.Scene {
	lk, pt := looks.Now(), v.scale()*looks.Point()
	s := &canvas.Scene{Width: w, Height: h, PxPerPoint: pt, Panels: []canvas.Panel{{View: canvas.View{PxPerFoot: 1}}}}
	mid := canvas.Pos{Right: canvas.Points(float64(w) / pt / 2), Down: canvas.Points(float64(h) / pt / 2)}
	const half, high = 150, 90
	frame := canvas.Path{}.Move(mid.Shift(-half, -high)).Line(mid.Shift(half, -high)).Line(mid.Shift(half, high)).Line(mid.Shift(-half, high)).Close()
	s.Panels[0].Add(
		canvas.Shape{ID: "frame", Path: frame, Style: canvas.Style{Fill: lk.Surface, Stroke: lk.Quiet, Width: canvas.Pts(1.5), Dash: []canvas.Points{6, 5}}},
		canvas.Shape{ID: "text", Layer: canvas.Labels, Text: &canvas.Text{At: mid.Shift(0, look.TitleSize/3), Text: words.T("Drop a picture of a court here"), Size: look.TitleSize, Colour: lk.Quiet}},
	)
	return s
}

// lay puts the photo in the middle of the view.
func (v *view) lay(w, h int) {
	v.base, v.frame = image.NewRGBA(image.Rect(0, 0, w, h)), image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(v.base, v.base.Rect, image.NewUniform(looks.Now().Paper), image.Point{}, draw.Src)
	v.area = compose.Area{}
	if v.photo.Image == nil {
		return
	}
	k := math.Min(float64(w)/float64(v.photo.Width), float64(h)/float64(v.photo.Height))
	pw, ph := int(k*float64(v.photo.Width)), int(k*float64(v.photo.Height))
	corner := image.Pt((w-pw)/2, (h-ph)/2)
	draw.BiLinear.Scale(v.base, image.Rectangle{Min: corner, Max: corner.Add(image.Pt(pw, ph))}, v.photo.Image, v.photo.Image.Rect, draw.Src, nil)
	low := canvas.Px{X: float64(corner.X), Y: float64(corner.Y)}
	v.area = compose.Area{Min: low, Max: canvas.Px{X: low.X + float64(pw), Y: low.Y + float64(ph)}}
}

// scene is what is drawn over the photo.
func (v *view) scene(w, h int) *canvas.Scene {
	l := compose.PhotoLayout{Width: w, Height: h, PxPerPoint: v.scale() * looks.Point(), Photo: v.area, Lines: true}
	s := &canvas.Scene{Width: w, Height: h, PxPerPoint: l.PxPerPoint}
	at := v.session.Photo()
	m, err := v.session.PhotoMap()
	if r := v.session.Current(); r != nil && err == nil {
		if over, ok := l.Over(m, at.Width, at.Height, middle(at.Pairs())); ok {
			p := compose.Of(r, v.session.Lesson().Venue.Surface(), canvas.Upright)
			p.Look = &look.Daylight // a photo is as light as it is
			s = p.OnPhoto(over, v.session.Now())
		}
	}
	var points []compose.PhotoPoint
	for i, q := range at.Points {
		p := compose.PhotoPoint{At: v.toView(q.X, q.Y), Chosen: i == v.chosen && v.feet == nil}
		if fitted, ok := m.ToPx(q.Court); ok && err == nil {
			p.Fitted, p.Fits = v.toView(fitted.X, fitted.Y), true
		}
		points = append(points, p)
	}
	if v.feet != nil {
		points = append(points, v.sign())
	}
	l.Points(s, &look.Daylight, points)
	return s
}

// middle is a point of the court among those that a photo shows.
func middle(pairs []homography.Pair) (at court.Point) {
	for _, p := range pairs {
		at = at.Add(p.Court.Times(1 / float64(len(pairs))))
	}
	return at
}

// Sizes of the magnified part of the photo, in the toolkit's units, and how much
// larger it is than the photo on the screen.
const (
	magnified = 150
	magnifies = 4
)

// magnify shows the photo round a point larger, in the corner that is farther
// from it.
func (v *view) magnify(x, y float64) {
	side := int(magnified * v.scale())
	at := v.toView(x, y)
	corner := image.Pt(8, 8)
	if at.X < float64(v.frame.Rect.Dx())/2 {
		corner.X = v.frame.Rect.Dx() - side - 8
	}
	k := float64(v.photo.Image.Rect.Dx()) / float64(v.photo.Width) // kept pixels for one of the photo
	half := float64(side) / magnifies / 2 / (v.area.Width() / float64(v.photo.Image.Rect.Dx()))
	from := image.Rect(int(x*k-half), int(y*k-half), int(x*k+half)+1, int(y*k+half)+1)
	to := image.Rectangle{Min: corner, Max: corner.Add(image.Pt(side, side))}
	frame := image.Rect(to.Min.X-2, to.Min.Y-2, to.Max.X+2, to.Max.Y+2)
	lk := looks.Now()
	draw.Draw(v.frame, frame, image.NewUniform(lk.Ink), image.Point{}, draw.Src)
	draw.Draw(v.frame, to, image.NewUniform(lk.Paper), image.Point{}, draw.Src)
	draw.NearestNeighbor.Scale(v.frame, to, v.photo.Image, from, draw.Src, nil)
	mid := corner.Add(image.Pt(side/2, side/2))
	for _, line := range []image.Rectangle{image.Rect(to.Min.X, mid.Y, to.Max.X, mid.Y+1), image.Rect(mid.X, to.Min.Y, mid.X+1, to.Max.Y)} {
		draw.Draw(v.frame, line, image.NewUniform(lk.Ball), image.Point{}, draw.Src)
	}
}

// scale is how many device pixels make one of the toolkit's units.
func (v *view) scale() float64 {
	if width := v.Size().Width; width > 0 && v.base != nil {
		return float64(v.base.Rect.Dx()) / float64(width)
	}
	return 1
}

// toView is a place of the photo in the view, in device pixels.
func (v *view) toView(x, y float64) canvas.Px {
	kx, ky := v.area.Width()/float64(max(v.photo.Width, 1)), v.area.Height()/float64(max(v.photo.Height, 1))
	return canvas.Px{X: v.area.Min.X + x*kx, Y: v.area.Min.Y + y*ky}
}

// toPhoto is a place of the view in the photo's pixels; false without a photo.
func (v *view) toPhoto(px canvas.Px) (x, y float64, ok bool) {
	if v.area.Empty() {
		return 0, 0, false
	}
	x = (px.X - v.area.Min.X) / v.area.Width() * float64(v.photo.Width)
	y = (px.Y - v.area.Min.Y) / v.area.Height() * float64(v.photo.Height)
	return x, y, true
}

func (v *view) toPx(p fyne.Position) canvas.Px {
	k := v.scale()
	return canvas.Px{X: float64(p.X) * k, Y: float64(p.Y) * k}
}

// reach is how far beside a point, in the toolkit's units, the pointer still
// takes hold of it.
const reach = 14

// MouseDown implements desktop.Mouseable: it takes hold of a point or, on the
// ground, says where the feet of the player are.
func (v *view) MouseDown(e *desktop.MouseEvent) {
	ring.Take(v)
	v.close = false
	at := v.session.Photo()
	if at == nil || v.photo.Image == nil || e.Button != desktop.MouseButtonPrimary {
		return
	}
	px := v.toPx(e.Position)
	best, found := reach*v.scale(), false
	for i, q := range at.Points {
		p := v.toView(q.X, q.Y)
		if d := math.Hypot(p.X-px.X, p.Y-px.Y); d <= best {
			best, found, v.chosen, v.feet = d, true, i, nil
			v.grab = canvas.Px{X: p.X - px.X, Y: p.Y - px.Y}
		}
	}
	if v.drag = found; found {
		v.events.chosen()
		v.Refresh()
		return
	}
	if x, y, ok := v.toPhoto(px); ok {
		v.events.placed(x, y)
	}
}

// Dragged implements fyne.Draggable.
func (v *view) Dragged(e *fyne.DragEvent) {
	if !v.drag {
		return
	}
	px := v.toPx(e.Position)
	if x, y, ok := v.toPhoto(canvas.Px{X: px.X + v.grab.X, Y: px.Y + v.grab.Y}); ok {
		v.session.MovePhotoPoint(v.chosen, within(x, v.photo.Width), within(y, v.photo.Height))
	}
}

// within keeps a coordinate near the photo: a corner may lie a little outside it.
func within(x float64, side int) float64 {
	return min(max(x, -float64(side)/2), 1.5*float64(side))
}

// MouseUp implements desktop.Mouseable.
func (v *view) MouseUp(*desktop.MouseEvent) { v.release() }

// DragEnd implements fyne.Draggable.
func (v *view) DragEnd() { v.release() }

func (v *view) release() {
	if !v.drag {
		return
	}
	v.drag = false
	v.session.Commit(session.PhotoPointStep(v.chosen))
	v.Refresh()
}

// cancel drops a drag under way and says whether there was one.
func (v *view) cancel() bool {
	if !v.drag {
		return false
	}
	v.drag = false
	v.session.Cancel()
	return true
}

// FocusGained implements fyne.Focusable.
func (v *view) FocusGained() { v.ring.Show(true) }

// FocusLost implements fyne.Focusable.
func (v *view) FocusLost() {
	v.ring.Show(false)
	v.close = false
	v.Refresh()
}

// TypedRune implements fyne.Focusable.
func (v *view) TypedRune(r rune) { v.events.rune(r) }

// TypedKey implements fyne.Focusable.
func (v *view) TypedKey(k *fyne.KeyEvent) { v.events.key(k) }
