package exporting

import (
	"context"
	"image"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/words"
)

// Offer is something that can be exported. Make may take a moment.
type Offer struct {
	Name string
	File string // a name for its file, without folder and ending
	Make func() (Subject, error)
}

// Events are what the page asks of the window.
type Events struct {
	Offers  func() []Offer                   // the likeliest first
	Folder  func() string                    // where files are suggested
	Close   func()                           // back to where it was opened
	Painted func()                           // called from within a paint
	Trace   func(format string, args ...any) // told what happens
	Unless  func(path string, goOn func())   // asks before a file is replaced
	Fail    func(err error)                  // tells of a failure
	Browse  func(from string, taken func(folder string))
	Show    func(folder string) error // opens a folder
}

// Page is the page of exports.
type Page struct {
	*panel.Page
	tall    *panel.Tall
	Work    *Work // in the background
	events  Events
	prefs   fyne.Preferences
	outputs []Output
	offers  []Offer
	subject Subject
	ready   bool // there is a subject
	choice  Choice
	folder  string

	what, output, size, rate, speed, ground *panel.Dropdown
	beeps                                   *heard.Check
	presets                                 []*heard.Button
	form                                    *fyne.Container // with all beside the frame
	path                                    *heard.Entry
	frame                                   *panel.FrameView
	moment                                  *heard.Slider
	clock, dashes                           *widget.Label // of the moment; what is outlined
	text                                    *widget.Label // of words
	textBox                                 fyne.CanvasObject
	needs, estimate, line                   *widget.Label
	export, cancel, show, back, browse      *heard.Button
	bar                                     *widget.ProgressBar
	rows                                    map[*panel.Dropdown]*widget.Label
	pulse                                   *fynecanvas.Raster

	measuring context.CancelFunc
	job       *job // under way; nil for none
	written   string
}

// New is the page, hidden until Open. The last choice is kept in p.
func New(p fyne.Preferences, e Events) *Page {
	g := &Page{Work: newWork(), events: e, prefs: p, outputs: Outputs(), frame: panel.NewFrameView(), measuring: func() {}}
	g.choice, g.folder = kept(p, g.outputs), p.String(keptFolder)
	g.pulse = fynecanvas.NewRaster(func(int, int) image.Image { e.Painted(); return image.NewRGBA(image.Rect(0, 0, 1, 1)) })
	g.make()
	g.layOut()
	return g
}

// Open shows what can be exported now, offer i chosen.
func (g *Page) Open(i int) {
	g.offers = g.events.Offers()
	names := make([]string, len(g.offers))
	for k, o := range g.offers {
		names[k] = o.Name
	}
	g.what.Options = names
	g.what.ClearSelected()
	g.Page.Show()
	g.say("")
	g.show.Hide() // it goes with the line that said what was written
	if i < len(names) {
		g.what.SetSelectedIndex(i)
	}
	g.refresh()
	c := g.choice
	g.events.Trace("export choice %s %s %d %s %s", g.chosenOutput().Key, sizeKey(Sizes[c.Size]), Rates[c.Rate], Grounds[c.Ground], filepath.Dir(g.path.Text))
}

// Exporter is the button that exports.
func (g *Page) Exporter() fyne.CanvasObject { return g.export }

// Close goes back. An export under way goes on.
func (g *Page) Close() {
	g.measuring()
	g.Hide()
	g.events.Close()
}

// chosenOutput is the output chosen.
func (g *Page) chosenOutput() Output { return g.outputs[g.choice.Output] }

// choose takes what is to be exported.
func (g *Page) choose() {
	i := g.what.SelectedIndex()
	if i < 0 || i >= len(g.offers) {
		return
	}
	s, err := g.offers[i].Make()
	g.ready = err == nil
	if err != nil {
		g.say(words.Sentence(err))
	}
	g.subject = s
	g.suggest()
	g.refresh()
}

// suggest names the file after what is exported, in the folder used last.
func (g *Page) suggest() {
	folder := g.folder
	if folder == "" {
		folder = g.events.Folder()
	}
	name := "export"
	if i := g.what.SelectedIndex(); i >= 0 && i < len(g.offers) {
		name = g.offers[i].File
	}
	g.path.SetText(filepath.Join(folder, name+g.chosenOutput().Ext))
}

// changed takes what the controls say, keeps it and shows it.
func (g *Page) changed() {
	g.choice = Choice{
		Output: max(g.output.SelectedIndex(), 0), Size: max(g.size.SelectedIndex(), 0), Rate: max(g.rate.SelectedIndex(), 0),
		Speed: max(g.speed.SelectedIndex(), 0), Ground: max(g.ground.SelectedIndex(), 0), Beeps: g.beeps.Checked,
	}
	g.choice.keep(g.prefs, g.outputs)
	g.path.SetText(g.withExt(g.path.Text))
	g.refresh()
}

// byName chooses the format whose ending the typed name has: whoever ends a name
// with .png wants a picture.
func (g *Page) byName(path string) {
	all, name := longestFirst(g.outputs), strings.ToLower(path)
	i := slices.IndexFunc(all, func(o Output) bool { return strings.HasSuffix(name, o.Ext) })
	if i < 0 || all[i].Ext == g.chosenOutput().Ext {
		return
	}
	g.choice.Output = slices.IndexFunc(g.outputs, func(o Output) bool { return o.Key == all[i].Key })
	g.choice.keep(g.prefs, g.outputs)
	g.refresh()
	g.say(words.T("The name's ending chose the format: %s.", all[i].Name))
}

// withExt is a path with the ending of the output, another output's ending taken off.
func (g *Page) withExt(path string) string {
	for _, o := range longestFirst(g.outputs) {
		if strings.HasSuffix(strings.ToLower(path), o.Ext) {
			path = path[:len(path)-len(o.Ext)]
			break
		}
	}
	return path + g.chosenOutput().Ext
}

// preset takes a choice by purpose.
func (g *Page) preset(p Preset) {
	beeps := g.choice.Beeps
	g.choice = p.choice(g.outputs)
	g.choice.Beeps = beeps // a matter of taste, not of purpose
	g.choice.keep(g.prefs, g.outputs)
	g.path.SetText(g.withExt(g.path.Text))
	g.refresh()
	g.events.Trace("preset %s", p.Name)
}

// refresh shows the choice, the frame, and what the file will take.
func (g *Page) refresh() {
	g.showChoice()
	g.showPurpose()
	g.showFrame()
	g.showNeeds()
	g.remeasure()
	g.pulse.Refresh()
}

// showNeeds says what this machine lacks for the output.
func (g *Page) showNeeds() {
	text := ""
	if o := g.chosenOutput(); o.Needs != nil && o.Needs() != nil {
		text = words.T("This format needs the program ffmpeg, which is not on this machine. Debian and Ubuntu: apt install ffmpeg; others: ffmpeg.org. GIF, AVI and animated PNG work without it.")
	}
	g.needs.SetText(text)
	visible(g.needs, text != "")
	g.export.Unless(g.hindered())
}

// hindered is why nothing can be exported now; "" where something can.
func (g *Page) hindered() string {
	switch {
	case g.job != nil:
		return words.T("An export is under way; it can be cancelled.")
	case !g.ready:
		return words.T("There is nothing to export: choose what on the left.")
	}
	return g.needs.Text
}

func (g *Page) say(text string) { g.line.SetText(text) }
