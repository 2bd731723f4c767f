package exporting

import (
	"fmt"
	"strconv"

	"fyne.io/fyne/v2"

	"homeside/export"
	"homeside/words"
)

// Size is a picture's size by what it is for.
type Size struct {
	name          string
	Width, Height int
}

// Sizes are the sizes offered, for feeds and edits of every common shape.
var Sizes = []Size{
	{words.Text("Phone, 720 x 1280"), 720, 1280},
	{words.Text("Phone, 1080 x 1920"), 1080, 1920},
	{words.Text("Video, 1280 x 720"), 1280, 720},
	{words.Text("Video, 1920 x 1080"), 1920, 1080},
	{words.Text("Video 4K, 3840 x 2160"), 3840, 2160},
	{words.Text("Square, 1080 x 1080"), 1080, 1080},
	{words.Text("Portrait, 1080 x 1350"), 1080, 1350},
	{words.Text("Message, 480 x 854"), 480, 854},
	{words.Text("Page, 1654 x 2339"), 1654, 2339}, // A4 at 200 dots to the inch
}

// Rates are frames a second of clips.
var Rates = []int{10, 15, 25, 30, 50, 60}

// Speeds are speeds of clips.
var Speeds = []float64{1, 0.5, 0.25, 2}

// Grounds are backgrounds by the names that export.ParseGround reads.
var Grounds = []string{words.Text("paper"), words.Text("clear"), words.Text("green"), words.Text("blue"), words.Text("magenta")}

// Choice is all that can be chosen but what and where to. Numbers are places in
// the tables.
type Choice struct {
	Output, Size, Rate, Speed, Ground int
	Beeps                             bool // are heard of a clip that can be heard
}

// usual is what is chosen at first: the first purpose, a clip for a phone, with beeps.
func usual(outputs []Output) Choice { return Presets[0].choice(outputs) }

// options are the export's options of a choice, of the output only what it has.
func (c Choice) options(o Output, s Subject) *export.Options {
	size := Sizes[c.Size]
	g, _ := export.ParseGround(Grounds[c.Ground]) // one of the table
	if g.Clear && !o.Clear {
		g = export.Ground{}
	}
	out := &export.Options{Width: size.Width, Height: size.Height, Ground: g}
	switch o.Kind {
	case Clip:
		out.FPS, out.Speed = min(Rates[c.Rate], o.MaxFPS), Speeds[c.Speed]
		if c.Beeps && c.heard(o) {
			out.Track = s.Told.Beeps.WriteTrack
		}
	case Words:
		out.Speed = Speeds[c.Speed]
	case Still:
		out.At = &s.At
	}
	return out
}

// heard says whether an output of the choice can be heard: what is laid over
// footage is silent.
func (c Choice) heard(o Output) bool { return o.Heard && Grounds[c.Ground] != "clear" }

// Keys of the choice in the toolkit's preferences. Values are words and figures,
// so that the tables may change.
const (
	keptOutput = "export output"
	keptSize   = "export size"
	keptRate   = "export rate"
	keptSpeed  = "export speed"
	keptGround = "export background"
	keptSound  = "export sound"
	keptFolder = "export folder"
)

func (c Choice) keep(p fyne.Preferences, outputs []Output) {
	p.SetString(keptOutput, outputs[c.Output].Key)
	p.SetString(keptSize, sizeKey(Sizes[c.Size]))
	p.SetString(keptRate, strconv.Itoa(Rates[c.Rate]))
	p.SetString(keptSpeed, fmt.Sprint(Speeds[c.Speed]))
	p.SetString(keptGround, Grounds[c.Ground])
	p.SetString(keptSound, sounds[c.Beeps])
}

// sounds is what is heard as it is kept.
var sounds = map[bool]string{true: "beeps", false: "none"}

func sizeKey(s Size) string { return fmt.Sprintf("%dx%d", s.Width, s.Height) }

// kept is the choice kept; what is not kept, or is not offered any more, is as usual.
func kept(p fyne.Preferences, outputs []Output) Choice {
	c := usual(outputs)
	find := func(place *int, n int, key string, of func(i int) string) {
		for i := range n {
			if of(i) == p.String(key) {
				*place = i
			}
		}
	}
	find(&c.Output, len(outputs), keptOutput, func(i int) string { return outputs[i].Key })
	find(&c.Size, len(Sizes), keptSize, func(i int) string { return sizeKey(Sizes[i]) })
	find(&c.Rate, len(Rates), keptRate, func(i int) string { return strconv.Itoa(Rates[i]) })
	find(&c.Speed, len(Speeds), keptSpeed, func(i int) string { return fmt.Sprint(Speeds[i]) })
	find(&c.Ground, len(Grounds), keptGround, func(i int) string { return Grounds[i] })
	c.Beeps = p.String(keptSound) != sounds[false]
	return c
}
