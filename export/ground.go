package export

import (
	"fmt"
	"image/color"
	"strconv"
	"strings"

	"homeside/canvas"
	"homeside/model/units"
)

// Ground is what a picture stands on. The zero Ground is the scene's own.
type Ground struct {
	Clear bool        // nothing, for laying over something else; Flat does not count then
	Flat  color.NRGBA // one colour, such as one to be keyed out; none if A is 0
}

// Colours that are easily keyed out in an edit. Green and blue are those of
// painted screens (common practice); no mark comes near the magenta.
var (
	KeyGreen   = color.NRGBA{0x00, 0xB1, 0x40, 0xFF}
	KeyBlue    = color.NRGBA{0x00, 0x47, 0xBB, 0xFF}
	KeyMagenta = color.NRGBA{0xFF, 0x00, 0xFF, 0xFF}
)

// groundNames are grounds in words.
var groundNames = map[string]Ground{
	"paper": {}, "clear": {Clear: true}, "green": {Flat: KeyGreen}, "blue": {Flat: KeyBlue}, "magenta": {Flat: KeyMagenta},
}

// ParseGround reads paper (the scene's own), clear, green, blue, magenta or a
// colour such as #00B140.
func ParseGround(s string) (Ground, error) {
	if g, ok := groundNames[strings.ToLower(s)]; ok {
		return g, nil
	}
	hex, ok := strings.CutPrefix(s, "#")
	v, err := strconv.ParseUint(hex, 16, 24)
	if !ok || err != nil || len(hex) != 6 {
		return Ground{}, fmt.Errorf("background %q: want paper, clear, green, blue, magenta or a colour such as #00B140", s)
	}
	return Ground{Flat: color.NRGBA{uint8(v >> 16), uint8(v >> 8), uint8(v), 0xFF}}, nil
}

// Under is a scene on the ground; s itself is left as it is.
func (g Ground) Under(s *canvas.Scene) *canvas.Scene {
	if g == (Ground{}) {
		return s
	}
	c := *s
	switch {
	case g.Clear:
		c.Background = color.NRGBA{}
	case g.Flat.A > 0:
		c.Background = g.Flat
	}
	return &c
}

// Overlay is a source that looks otherwise when it is laid over something else.
type Overlay interface {
	Source
	// Over is Moving without what would hide all that is under it.
	Over(width, height int, t units.Seconds) *canvas.Scene
}

// Of is a source as it is seen on the ground.
func (g Ground) Of(src Source) Source {
	if o, ok := src.(Overlay); ok && g != (Ground{}) {
		return laid{o}
	}
	return src
}

// laid is a source over something else.
type laid struct{ Overlay }

// Moving implements Source.
func (l laid) Moving(width, height int, t units.Seconds) *canvas.Scene {
	return l.Over(width, height, t)
}

// ClearError is a transparent ground in a format that has none.
type ClearError struct{ Of string } // "a GIF"

// Error says what can be done instead.
func (e *ClearError) Error() string {
	return e.Of + " cannot be transparent: choose .png, .svg, .pdf, .apng, .webm, .mov or .frames, or a background of one colour"
}
