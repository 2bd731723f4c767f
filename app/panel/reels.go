package panel

import (
	"fmt"
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/canvas/film"
	"homeside/words"
)

// ReelEvents are what the page of reels asks of the window. All may be nil.
type ReelEvents struct {
	Close   func()
	Export  func() // the reel worked on
	Logo    func() // asks for another picture
	Painted func() // the page has been painted
	Plays   func(bool)
}

// Reels is the page where a clip is put together: on top which reel and how long,
// below it the preview and what is picked, at the bottom the running order.
type Reels struct {
	*Page
	session *session.Session
	events  ReelEvents
	back    *heard.Button
	which   *Dropdown
	name    *commitEntry
	seconds *heard.Entry
	recipe  *Dropdown
	corner  *Dropdown
	line    *widget.Label
	said    string // on the line, when no tip stands there
	preview *reelPreview
	strip   *takeStrip
	take    *takeForm
	card    *cardForm
	none    *widget.Label
	worked  *fyne.Container     // all that needs a reel
	ofReel  []fyne.CanvasObject // of the head, likewise
	export  *heard.Button
	pulse   *fynecanvas.Raster
	tall    *Tall
	order   *takeButtons
	named   map[string]fyne.CanvasObject
	film    *film.Film
	made    int // the revision shown
	picked  int // what of the reel was shown last
	reel    int // the reel shown last
}

// NewReels is the page of a session's reels, hidden until Open.
func NewReels(s *session.Session, events ReelEvents) *Reels {
	p := &Reels{session: s, events: events, made: -1, named: map[string]fyne.CanvasObject{}}
	p.line = widget.NewLabel("")
	p.line.Truncation = fyne.TextTruncateEllipsis
	p.preview = newReelPreview(func() { p.refreshStrip() }, p.played)
	p.preview.frame.Safe = true
	p.pulse = fynecanvas.NewRaster(func(int, int) image.Image { invoke(p.events.Painted); return image.NewRGBA(image.Rect(0, 0, 1, 1)) })
	p.strip = newTakeStrip(s, p.key, p.Say, p.hint)
	p.take, p.card = newTakeForm(s, p.Say, p.slowHere, p.freezeHere), newCardForm(s, p.Say)
	p.none = wrapped()
	p.none.SetText(words.T("A reel is a clip made of takes: stretches of plays, each with its own camera and speed. Begin with a new reel, or let one be made of the play shown that lasts as long as you want."))
	p.layOut()
	return p
}

// button is a button that tests can press by a name.
func (p *Reels) button(name, text string, icon fyne.Resource, do func()) *heard.Button {
	b := heard.NewButtonWithIcon(text, icon, do).Tell(p.hint)
	b.Keys = p.key
	p.named[name] = b
	return b
}

// formWidth is the room of what is picked.
const formWidth = 380

// leastPreview is the height that the reel is shown in where it stands alone in its row.
const leastPreview = 260

func (p *Reels) layOut() {
	picked := container.NewPadded(container.NewVBox(p.take.box, p.card.box))
	p.order = p.newTakeButtons()
	order := container.NewBorder(nil, nil, nil, p.order.box, p.strip.box)
	p.worked = container.NewBorder(nil, order, nil, nil, NewColumns(Column{Content: p.preview.box, Least: leastPreview}, Column{Content: picked, Width: formWidth}).Box)
	p.named["reel-play"], p.named["reel-shape"], p.named["reel-camera"] = p.preview.play, p.preview.shape, p.take.camera
	p.named["reel-caption"], p.named["reel-freeze"] = p.take.caption, p.take.freeze
	p.named["reel-slow"] = p.take.slow
	p.tall = NewTall(container.New(Headed{}, p.head(), container.NewStack(container.NewPadded(p.none), p.worked)))
	p.Page = NewPage(p.tall.Box)
}

// Reveal scrolls so that a control of the page can be seen.
func (p *Reels) Reveal(o fyne.CanvasObject) { p.tall.Reveal(o) }

// Open shows the page as the lesson is now.
func (p *Reels) Open() {
	p.Show()
	p.made, p.picked = -1, nothingPicked
	p.Say("") // what was said of the court
	p.Refresh()
}

// nothingPicked is no place of a reel.
const nothingPicked = session.EndCard - 1

// Close goes back to the court.
func (p *Reels) Close() {
	p.preview.stop()
	p.Hide()
	invoke(p.events.Close)
}

// Refresh shows the reel again if the page is shown and something has changed.
func (p *Reels) Refresh() {
	if !p.Shown() || p.made == p.session.Revision() {
		return
	}
	p.made = p.session.Revision()
	r, ok := p.session.Reel()
	if i := p.session.ReelIndex(); i != p.reel {
		p.reel = i
		p.Say("") // that was about another reel
	}
	show(p.none, !ok)
	for _, o := range append([]fyne.CanvasObject{p.worked, p.export}, p.ofReel...) {
		show(o, ok)
	}
	p.pulse.Refresh()
	var names []string
	for i, one := range p.session.Lesson().Reels {
		names = append(names, words.ReelName(i, one.Name))
	}
	relabel(p.which, names, p.session.ReelIndex())
	p.name.show(r.Name)
	relabel(p.corner, words.Corners(), int(r.Logo))
	if !ok {
		p.film = nil
		p.preview.show(nil)
		p.strip.refresh(nil, 9, 16)
		return
	}
	p.film = film.Of(p.session.Lesson(), p.session.SolvedReel())
	p.refreshStrip()
	p.refreshPicked()
	p.preview.show(p.film)
	p.showPicked()
	p.tellLeft()
}

func (p *Reels) refreshStrip() {
	if p.film != nil {
		w, h := p.preview.size()
		p.strip.refresh(p.film, w, h)
	}
}

// refreshPicked shows the form of what is picked.
func (p *Reels) refreshPicked() {
	_, isTake := p.session.Take()
	show(p.take.box, isTake)
	show(p.card.box, !isTake)
	p.take.refresh()
	p.card.refresh()
	p.order.refresh(p.session)
}

// showPicked shows the beginning of what is picked when that is another.
func (p *Reels) showPicked() {
	pick := p.session.ReelPick()
	if pick == p.picked || p.preview.playing {
		return
	}
	p.picked = pick
	switch k := shownTake(p.film.Reel, pick); {
	case pick == session.TitleCard:
		p.preview.seek(0)
	case pick == session.EndCard:
		p.preview.seek(p.film.Reel.Length())
	case k >= 0:
		p.preview.seek(p.film.Reel.Takes[k].Start)
	}
}

// tellLeft says which takes cannot be shown.
func (p *Reels) tellLeft() {
	if left := p.film.Reel.Left; len(left) > 0 {
		p.Say(words.TakesLeft(left))
	}
}

func (p *Reels) played(on bool) {
	if p.events.Plays != nil {
		p.events.Plays(on)
	}
}

// Say shows a line on the page.
func (p *Reels) Say(text string) {
	p.said = text
	p.line.SetText(text)
}

// hint shows a button's tip in place of what was said, which "" shows again.
func (p *Reels) hint(tip string) {
	if tip == "" {
		tip = p.said
	}
	p.line.SetText(tip)
}

// Shape is the size in pixels of the shape that is previewed.
func (p *Reels) Shape() (width, height int) { return p.preview.size() }

// Named are the page's controls by name, for tests of the window.
func (p *Reels) Named() map[string]fyne.CanvasObject {
	for i, c := range p.strip.cards {
		p.named[takeControl(i)] = c
	}
	for i, r := range p.take.slowRows {
		name := fmt.Sprintf("slow-%d-", i)
		p.named[name+"from"], p.named[name+"to"], p.named[name+"speed"], p.named[name+"delete"] = r.from.Dropdown, r.to.Dropdown, r.speed.Dropdown, r.remove
	}
	return p.named
}
