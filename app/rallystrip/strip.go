package rallystrip

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"homeside/app/looks"
	"homeside/app/ring"
	"homeside/app/session"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/formation"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Room of the strip in points: seven lanes below the ruler, and what it makes do
// with in a low window.
const (
	usualHeight = 131
	leastHeight = 88
)

// Strip is the widget.
type Strip struct {
	widget.BaseWidget
	session *session.Session
	raster  *fynecanvas.Raster
	ring    *ring.Ring
	events  Events

	noMargins bool
	scene     compose.Strip
	frames    *raster.Frames
	drawn     key

	shown compose.Span // the zero Span is the whole rally
	play  int          // that shown belongs to
	seen  units.Seconds
	hand  hand
}

// Events are what the strip tells the window.
type Events struct {
	Key     func(*fyne.KeyEvent)
	Rune    func(rune)
	Status  func(text string)                       // what the pointer is on or the hand is doing, "" otherwise
	Menu    func(at fyne.Position, t units.Seconds) // asked for a menu, of what is chosen
	Cue     func(k lesson.CueKind, t units.Seconds) // asked for a new caption or signal
	Open    func(what rally.Timed)                  // asked to edit a thing
	Focused func()                                  // has got the keys; nil means nobody asks
	Painted func()                                  // the strip shows something else; nil means nobody asks
}

// key is everything the still part depends on.
type key struct {
	revision, width, height int
	noMargins               bool
	look                    *look.Look
	point                   float64
	shown, loop             compose.Span
}

// New is the strip of a session.
func New(s *session.Session, e Events) *Strip {
	v := &Strip{session: s, ring: ring.New(), events: e}
	v.raster = fynecanvas.NewRaster(v.paint)
	v.raster.ScaleMode = fynecanvas.ImageScalePixels // it is drawn pixel for pixel
	v.ExtendBaseWidget(v)
	return v
}

// CreateRenderer implements fyne.Widget.
func (v *Strip) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(v.ring.Over(v.raster))
}

// MinSize implements fyne.Widget.
func (v *Strip) MinSize() fyne.Size { return fyne.NewSize(300, leastHeight*float32(looks.Point())) }

// HeightIn is how much of a height shared with the court the strip takes.
func (v *Strip) HeightIn(shared float32) float32 {
	const share = 0.26
	point := float32(looks.Point())
	return min(max(shared*share, leastHeight*point), usualHeight*point)
}

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
	v.follow(r)
	from, to, _ := v.session.Loop()
	if k := (key{v.session.Revision(), w, h, v.noMargins, looks.Now(), looks.Point(), v.shown, compose.Span{From: from, To: to}}); v.frames == nil || k != v.drawn {
		v.scene = compose.Strip{
			Rally: r, Width: w, Height: h, PxPerPoint: v.scale(w) * looks.Point(), Look: k.look, NoMargins: v.noMargins,
			Signs: v.signs(), Shown: k.shown, Loop: k.loop,
		}
		if v.frames == nil {
			v.frames = raster.NewFrames(v.scene.Static())
		} else {
			v.frames.Restart(v.scene.Static())
		}
		v.drawn = k
		if v.events.Painted != nil {
			v.events.Painted()
		}
	}
	s := v.scene
	s.Held = v.held()
	if e, ok := v.session.Chosen(); ok {
		s.Chosen = &e.What
	}
	return v.frames.Draw(s.Moving(v.session.Now()))
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
