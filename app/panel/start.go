package panel

import (
	"image"
	"path/filepath"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/formation"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/words"
)

// StartEvents are what the start page asks of the window.
type StartEvents struct {
	Draw    func(l lesson.Lesson) // a pair's new lesson with its first play
	BuiltIn func(l lesson.Lesson)
	Recent  func(path string)
	Open    func() // ask for a file
	Empty   func() // an empty lesson
	Close   func() // back to the lessons that are open
	Brief   func(path string) string
	Painted func()
}

// Start is the page that a window begins with: a pair describes itself and gets
// its first play, beside it the lessons used last, below it the built-in ones.
type Start struct {
	*Page
	events  StartEvents
	form    *PairForm
	draw    *heard.Button
	back    *heard.Button
	small   *fynecanvas.Image
	said    *widget.Label
	wrong   *widget.Label
	line    *widget.Label // what the window says of files
	recent  *fyne.Container
	builtIn []lesson.Lesson
	gallery *Gallery
	pulse   *fynecanvas.Raster
	tall    *Tall
	lesson  lesson.Lesson     // what would be drawn
	written formation.Written // its first play
	untold  session.PairStart // what the form says before anybody has filled it in
	drawn   bool              // the built-in lessons' pictures are there
}

// Sizes of the page's pictures.
var (
	firstSize      = fyne.NewSize(165, 330)
	builtInPicture = fyne.NewSize(140, 180)
)

// builtInSize is the size of a built-in lesson's card, with three lines for its title.
var builtInSize = CardSize{Picture: builtInPicture, Title: 66, Text: 24}

// longestRecent is how many letters of a file's name stand on its button.
const longestRecent = 24

const (
	firstPoint   = 0.72 // a point of the first play's drawing
	builtInPoint = 0.5
	recentWidth  = 270
	leastForm    = 400 // the width that the form wants beside something else
)

// NewStart is the start page, hidden until Open.
func NewStart(builtIn []lesson.Lesson, events StartEvents) *Start {
	p := &Start{events: events, builtIn: builtIn, said: wrapped(), wrong: wrapped(), line: caption(""), recent: container.NewVBox(), small: fynecanvas.NewImageFromImage(nil)}
	p.small.FillMode = fynecanvas.ImageFillContain
	p.small.SetMinSize(firstSize)
	p.wrong.Importance = widget.DangerImportance
	p.draw = heard.NewButtonWithIcon(words.T("Draw our first play"), theme.ConfirmIcon(), p.take)
	p.draw.Importance = widget.HighImportance
	p.back = heard.NewButtonWithIcon(words.T("Back to the court"), theme.NavigateBackIcon(), events.Close)
	p.form = NewPairForm(p.refresh, p.take)
	p.untold, _ = p.form.Start() // an empty form has no number that could be wrong
	p.gallery = NewGallery(len(builtIn), builtInSize)
	p.gallery.OnAccept = p.openChosen
	p.gallery.OnTapped = func(int) { p.openChosen() }
	p.pulse = fynecanvas.NewRaster(func(int, int) image.Image { events.Painted(); return image.NewRGBA(image.Rect(0, 0, 1, 1)) })
	p.Page = NewPage(container.NewStack(container.NewGridWrap(fyne.NewSize(1, 1), p.pulse), p.layOut()))
	return p
}

func (p *Start) layOut() fyne.CanvasObject {
	first := container.NewVBox(
		whole(heading(words.T("Describe your pair: Homeside draws your first play"))), p.form.Box,
		container.New(&flow{}, p.draw, p.back), p.wrong, p.said)
	pair := NewSided(first, p.small, leastForm)
	whole(p.line)
	other := container.NewVBox(
		heard.NewButtonWithIcon(words.T("Open a file…"), theme.FolderOpenIcon(), p.events.Open),
		heard.NewButtonWithIcon(words.T("Empty lesson"), theme.DocumentCreateIcon(), p.events.Empty))
	files := container.NewVBox(heading(words.T("Recent lessons")), other, p.recent, p.line)
	top := NewSided(pair, container.New(&fixedWidth{recentWidth}, files), leastForm+firstSize.Width)
	all := container.NewVBox(top, whole(heading(words.T("Built-in lessons, with invented people"))), p.gallery.Box)
	p.tall = NewTall(container.New(layout.NewCustomPaddedLayout(0, 0, 12, 12), all))
	return container.New(layout.NewCustomPaddedLayout(6, 6, 0, 0), p.tall.Box)
}

func heading(text string) *widget.Label {
	return widget.NewLabelWithStyle(text, fyne.TextAlignLeading, fyne.TextStyle{Bold: true})
}

// whole breaks a caption into lines instead of cutting it off.
func whole(l *widget.Label) *widget.Label {
	l.Wrapping, l.Truncation = fyne.TextWrapWord, fyne.TextTruncateOff
	return l
}

// Reveal scrolls so that a control of the page can be seen.
func (p *Start) Reveal(o fyne.CanvasObject) { p.tall.Reveal(o) }

// fixedWidth gives what it holds a width.
type fixedWidth struct{ width float32 }

// MinSize implements fyne.Layout.
func (f *fixedWidth) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(f.width, o[0].MinSize().Height)
}

// Layout implements fyne.Layout.
func (f *fixedWidth) Layout(o []fyne.CanvasObject, size fyne.Size) { o[0].Resize(size) }

// Open shows the page with the lessons used last; back says whether there is a
// lesson to go back to.
func (p *Start) Open(recent []string, back bool) {
	show(p.back, back)
	p.recent.RemoveAll()
	for _, path := range recent {
		b := heard.NewButton(brief(filepath.Base(path), longestRecent), func() { p.events.Recent(path) })
		b.Importance, b.Alignment = widget.LowImportance, widget.ButtonAlignLeading
		p.recent.Add(container.New(layout.NewCustomPaddedVBoxLayout(-6), b, caption(p.events.Brief(filepath.Dir(path)))))
	}
	if len(recent) == 0 {
		p.recent.Add(whole(caption(words.T("Lessons you open or save stand here."))))
	}
	if !p.drawn {
		p.drawn = true
		p.gallery.Show(pictured(p.builtIn))
	}
	p.refresh()
	p.Show()
}

// Say shows a line on the page.
func (p *Start) Say(text string) { p.line.SetText(text) }

// pictured are lessons as small courts of their first plays.
func pictured(all []lesson.Lesson) []Choice {
	choices := make([]Choice, len(all))
	for i, l := range all {
		choices[i] = Choice{Title: l.Title, Text: words.Plays(len(l.Plays))}
		if r, err := rally.Solve(l, 0); err == nil {
			choices[i].Picture = smallCourt(r, l.Venue.Surface(), builtInPicture, builtInPoint, 0)
		}
	}
	return choices
}

// refresh shows the play that would be drawn, or what is missing for one.
func (p *Start) refresh() {
	s, err := p.form.Start()
	p.lesson = lesson.Lesson{}
	if err == nil {
		err = p.write(s)
	}
	p.draw.Unless(sentence(err))
	show(p.wrong, err != nil)
	if err != nil {
		p.said.SetText("")
		p.small.Image = nil
		p.small.Refresh()
		p.wrong.SetText(words.Sentence(err))
	}
}

func (p *Start) take() {
	if len(p.lesson.Plays) > 0 {
		p.events.Draw(p.lesson)
	}
}

func (p *Start) openChosen() {
	if i, ok := p.gallery.Chosen(); ok {
		p.events.BuiltIn(p.builtIn[i])
	}
}

// FocusOn is what takes the keys first.
func (p *Start) FocusOn() fyne.Focusable { return p.form.who[0].name }

// Named are the page's controls by name, for tests of the window.
func (p *Start) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{"start-draw": p.draw, "start-back": p.back, "start-call": p.form.call, "start-goal": p.form.goal, "start-serving": p.form.serving, "start-lead": p.form.lead,
		"start-name-1": p.form.who[0].name, "start-name-2": p.form.who[1].name, "start-hand-2": p.form.who[1].hand}
	for i := range p.builtIn {
		named["built-in-"+string(rune('1'+i))] = p.gallery.Card(i)
	}
	return named
}

// CanClose says whether there was a lesson to go back to when the page was opened.
func (p *Start) CanClose() bool { return p.back.Visible() }

// Describe names the pair, for tests.
func (p *Start) Describe(first, second string) {
	p.form.who[0].name.SetText(first)
	p.form.who[1].name.SetText(second)
}

// Take draws the play that is shown, for tests.
func (p *Start) Take() { p.take() }
