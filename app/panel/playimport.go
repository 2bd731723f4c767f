package panel

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/lesson"
	"homeside/words"
)

// Source is a lesson that plays can be imported from.
type Source struct {
	Name   string
	Lesson lesson.Lesson
}

// PlayImport lets plays of other lessons be ticked, by picture.
type PlayImport struct {
	Box     fyne.CanvasObject
	sources []Source
	from    *Dropdown
	search  *searchEntry
	list    *keyList
	all     *heard.Check
	note    *widget.Label
	shown   []int
	ticked  map[int]bool // by the play's number in its lesson
	pick    func()       // a file to import from is wanted
	cancel  func()
	changed func()
}

// NewPlayImport lets plays of some lessons be ticked. changed is called when others are;
// pick is asked for a file's lesson, which comes by Add; accept and cancel are called on Enter and Escape.
func NewPlayImport(sources []Source, changed func(), pick, accept, cancel func()) *PlayImport {
	p := &PlayImport{sources: sources, ticked: map[int]bool{}, changed: changed, pick: pick, cancel: cancel}
	p.from = NewDropdown(nil, func(string) { p.choose(p.from.SelectedIndex()) })
	p.list = &keyList{keys: func(k *fyne.KeyEvent) {
		switch k.Name {
		case fyne.KeyEscape:
			cancel()
		case fyne.KeyReturn, fyne.KeyEnter:
			accept()
		case fyne.KeySpace:
			p.list.List.TypedKey(k)
		}
	}}
	p.list.Length = func() int { return len(p.shown) }
	p.list.CreateItem = func() fyne.CanvasObject { return newPlayRow(true) }
	p.list.UpdateItem = p.fill
	p.list.ExtendBaseWidget(p.list)
	p.list.OnSelected = p.tick
	p.search = newSearchEntry(func(string) { p.find() }, p.leaveSearch)
	p.all = heard.NewCheck(words.T("All"), p.tickAll)
	from := container.NewBorder(nil, nil, widget.NewLabel(words.T("From")), heard.NewButton(words.T("A file…"), func() { p.pick() }), p.from)
	p.note = caption("")
	p.Box = container.NewBorder(container.NewVBox(from, container.NewBorder(nil, nil, nil, p.all, p.search)), p.note, nil, nil, p.list)
	p.refill(0)
	return p
}

// Add puts a lesson to the sources and shows it.
func (p *PlayImport) Add(s Source) {
	p.sources = append(p.sources, s)
	p.refill(len(p.sources) - 1)
}

// refill lists the sources and shows one.
func (p *PlayImport) refill(i int) {
	p.from.Options = nil
	for n, s := range p.sources { // numbered, as two may have the same name
		p.from.Options = append(p.from.Options, fmt.Sprintf("%d. %s", n+1, s.Name))
	}
	if i < len(p.sources) {
		p.from.Selected = p.from.Options[i]
	}
	p.from.Refresh()
	p.choose(i)
}

func (p *PlayImport) choose(i int) {
	if i < 0 || i >= len(p.sources) {
		return
	}
	p.ticked = map[int]bool{}
	p.find()
}

func (p *PlayImport) lesson() lesson.Lesson {
	if i := p.from.SelectedIndex(); i >= 0 && i < len(p.sources) {
		return p.sources[i].Lesson
	}
	return lesson.Lesson{}
}

// find lists the plays that are searched for; those ticked stay so.
func (p *PlayImport) find() {
	p.shown = session.FindPlays(p.lesson(), p.search.Text)
	p.list.UnselectAll()
	p.tell()
}

func (p *PlayImport) fill(row widget.ListItemID, o fyne.CanvasObject) {
	r := o.(*playRow)
	if row >= len(p.shown) {
		return
	}
	l, i := p.lesson(), p.shown[row]
	r.set(fmt.Sprintf("%d. %s", i+1, l.Plays[i].Title), l.Plays[i], Thumb(l, i))
	r.check.SetResource(map[bool]fyne.Resource{true: theme.CheckButtonCheckedIcon(), false: theme.CheckButtonIcon()}[p.ticked[i]])
}

// tick turns a row's tick on or off.
func (p *PlayImport) tick(row widget.ListItemID) {
	if row < len(p.shown) {
		i := p.shown[row]
		p.ticked[i] = !p.ticked[i]
	}
	p.list.UnselectAll() // so that the same row can be ticked again
	p.tell()
}

func (p *PlayImport) tickAll(yes bool) {
	for _, i := range p.shown {
		p.ticked[i] = yes
	}
	p.tell()
}

func (p *PlayImport) tell() {
	p.list.Refresh()
	text := words.T("The players of the plays are those of this lesson, by their places in the teams.")
	if hindered := p.Hindered(); hindered != "" {
		text = hindered
	}
	p.note.SetText(text)
	p.changed()
}

// Hindered is why nothing can be imported; "" where something can.
func (p *PlayImport) Hindered() string {
	if len(p.Plays()) == 0 {
		return words.T("Tick the plays to import first.")
	}
	return ""
}

// Plays are those ticked, in their lesson's order.
func (p *PlayImport) Plays() (all []lesson.Play) {
	for i, play := range p.lesson().Plays {
		if p.ticked[i] {
			all = append(all, play)
		}
	}
	return all
}

// FocusOn is what takes the keys.
func (p *PlayImport) FocusOn() fyne.Focusable { return p.list }

func (p *PlayImport) leaveSearch(all bool) {
	if all {
		p.cancel()
		return
	}
	if c := fyne.CurrentApp().Driver().CanvasForObject(p.list); c != nil {
		c.Focus(p.list)
	}
}

// Sources are the lessons that can be chosen.
func (p *PlayImport) Sources() []Source { return p.sources }

// TickAll ticks all plays listed.
func (p *PlayImport) TickAll() { p.tickAll(true) }
