package export

import (
	"cmp"
	"errors"
	"fmt"
	"math"

	"homeside/model/units"
)

// Options say what to export. The zero value is a whole play as it is, at the
// default size and rate.
type Options struct {
	Width, Height int                   // pixels; both 0 means 720 x 1280
	FPS           int                   // frames a second of a clip; 0 means 25
	Speed         float64               // 0.5 is half speed; 0 means 1
	At            *units.Seconds        // the moment of a still; nil means the start
	From, To      *units.Seconds        // the stretch of a clip; nil means the play's own ends
	FullColour    bool                  // an AVI has a colour sample for every pixel, not for every four
	Ground        Ground                // what the picture stands on; the zero Ground is the scene's own
	Scratch       string                // a folder for files that are gone when all is written; "" means the system's
	Made          string                // 32 hexadecimal digits that say how the file is made, kept in it where its format has room; "" keeps none
	Track         Track                 // what is heard of an MP4, or of a WebM on a ground; nil means silence
	Progress      func(done, total int) // called after every frame; nil means nobody asks
	Note          func(string)          // told of what paper had no room for, after writing; nil means nobody asks
	Lacks         func(letters []rune)  // told once after writing, in order, if no font has some letters; nil means nobody asks
}

// What the zero Options stand for.
const (
	DefaultWidth  = 720
	DefaultHeight = 1280
	DefaultFPS    = 25
)

// Bounds of Options. A format may set closer ones.
const (
	MinSide     = 16   // px
	MaxSide     = 8192 // px of a still
	MaxClipSide = 4096 // px of a clip, whose frames are held several at a time
	MaxFPS      = 60
	MinSpeed    = 0.05
	MaxSpeed    = 8
)

// OptionError is an option outside its bounds.
type OptionError struct {
	Option        string // "width", "height", "fps", "speed", "at", "from", "to"
	Got, Min, Max float64
	Unit          string // "px", "s" or ""
	Of            string // what sets the bounds: "" for this package, "a GIF", "the play"
}

// Error says what was given and what is possible.
func (e *OptionError) Error() string {
	of := ""
	if e.Of != "" {
		of = " of " + e.Of
	}
	return fmt.Sprintf("%s %s is outside the %s to %s%s", e.Option, number(e.Got, e.Unit), number(e.Min, ""), number(e.Max, e.Unit), of)
}

// EvenError is a picture with an odd side in a format that packs two pixels by two.
type EvenError struct {
	Width, Height int    // px
	Of            string // "MP4"
}

// Even is the next smaller size that the format can have, in pixels.
func (e *EvenError) Even() (width, height int) { return e.Width &^ 1, e.Height &^ 1 }

// Error says which size would do.
func (e *EvenError) Error() string {
	w, h := e.Even()
	return fmt.Sprintf("%d x %d px: the sides of a clip as %s must be even, such as %d x %d", e.Width, e.Height, e.Of, w, h)
}

// number is rounded to milliseconds, so that a bound can be typed back.
func number(v float64, unit string) string {
	if unit != "" {
		unit = " " + unit
	}
	return fmt.Sprint(math.Round(v*1000)/1000) + unit
}

// Between is an OptionError if v is not in [low, high]; NaN never is.
func Between(option string, v, low, high float64, unit, of string) error {
	if v >= low && v <= high {
		return nil
	}
	return &OptionError{option, v, low, high, unit, of}
}

// Checked is o with its zero values filled in, or what is wrong with it. It
// knows no play: Moment and Times hold the times against one. o may be nil.
func (o *Options) Checked() (Options, error) {
	c := Options{}
	if o != nil {
		c = *o
	}
	if (c.Width == 0) != (c.Height == 0) {
		return c, errors.New("a picture needs both a width and a height")
	}
	c.fill()
	return c, cmp.Or(
		Between("width", float64(c.Width), MinSide, MaxSide, "px", ""),
		Between("height", float64(c.Height), MinSide, MaxSide, "px", ""),
		Between("fps", float64(c.FPS), 1, MaxFPS, "", ""),
		Between("speed", c.Speed, MinSpeed, MaxSpeed, "", ""),
		c.checkOrder(),
	)
}

func (o *Options) fill() {
	if o.Width == 0 {
		o.Width, o.Height = DefaultWidth, DefaultHeight
	}
	if o.FPS == 0 {
		o.FPS = DefaultFPS
	}
	if o.Speed == 0 {
		o.Speed = 1
	}
	if o.Progress == nil {
		o.Progress = func(int, int) {}
	}
}

func (o *Options) checkOrder() error {
	if o.From == nil || o.To == nil || *o.From < *o.To {
		return nil
	}
	return fmt.Errorf("from %s is not before to %s", number(float64(*o.From), "s"), number(float64(*o.To), "s"))
}
