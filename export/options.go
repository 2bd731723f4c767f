package export

import "homeside/model/units"

// Options say what to export. The zero value is a whole play as it is, at the
// default size and rate.
type Options struct {
	Width, Height int                   // pixels; 0 means 720 x 1280
	FPS           int                   // frames a second of a clip; 0 means 25
	Speed         float64               // 0.5 is half speed; 0 means 1
	At            *units.Seconds        // the moment of a still; nil means the start
	From, To      *units.Seconds        // the stretch of a clip; nil means the play's own ends
	Progress      func(done, total int) // called after every frame; nil means nobody asks
}
