package app

import (
	"cmp"
	"io"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
	tooltip "github.com/dweymouth/fyne-tooltip"

	"homeside/app/courtview"
	"homeside/app/exporting"
	"homeside/app/frameclock"
	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/present"
	"homeside/app/rallystrip"
	"homeside/app/rehearse"
	"homeside/app/session"
	"homeside/app/settings"
	"homeside/model/units"
	"homeside/words"
)

// Options say how the editor starts. The zero value shows the start page.
type Options struct {
	Files  []string  // lessons to open; what cannot be read is said in the window
	Trace  io.Writer // told what the window does; nil means nobody asks
	Frames bool      // the trace is told of every frame and when it was seen
	Look   func()    // handles what the hand has done and waits to be handled; nil leaves that to the toolkit

	State    string         // the folder for unsaved lessons, see StateFolder; empty keeps none
	within   time.Duration  // changes are kept there; 0 means keepWithin
	Settings *settings.Held // from OpenSettings; nil means the usual ones
}

// Editor is the window and what it shows.
type Editor struct {
	app        fyne.App
	settings   *settings.Held
	win        fyne.Window
	session    *session.Session // the lesson shown
	desk       *session.Desk    // all that are open
	tabs       *panel.Tabs
	stamps     map[int]stamp // of the open lessons' files, by the lessons' ids
	state      string        // the folder for unsaved lessons
	autosave   *autosave     // nil without one
	asking     []*question   // those open, and some that were
	working    bool          // a file is being read or written
	inWindow   func(func())  // does something on the window's own goroutine
	court      *courtview.View
	strip      *rallystrip.Strip
	plays      *panel.Plays
	score      *panel.Score
	shot       *panel.Shot
	match      *panel.Match
	checks     *panel.Checks
	tell       *panel.Tell
	bought     *panel.Bought
	player     *panel.Player
	notes      *panel.Notes
	bar        *playbar
	status     *widget.Label
	clock      *frameclock.Clock
	trace      *Trace
	held       courtview.Snapshot // a cover to compare with
	shown      int                // the revision the words were made for
	unseen     []string           // frames that are not yet told of, see frameFor
	stripLater lazily
	eager      eager
	timing     bool        // every frame is told to the trace
	painted    whereabouts // as it was last traced
	cards      cards
	besides    *besides
	tall       *panel.Tall      // holds court and all that is beside it
	sights     []*fyne.MenuItem // the ways of seeing the court
	bindings   []binding
	reasons    []reasoned

	loopItem   *fyne.MenuItem
	recentItem *fyne.MenuItem
	waiting    [][]string        // files that were dropped and are not taken yet
	onPicture  func(path string) // takes a picture that is dropped; nil while nobody wants one
	plan       *panel.MatchPlan
	reels      *panel.Reels
	exports    *exporting.Page
	toReels    bool // the page of exports goes back to that of reels
	start      *panel.Start
	guide      *guide
	pairs      keptPairs
	photos     photos
	presenter  *present.Presenter
	rehearsing *rehearse.Window
	editing    *panel.Page // court and all that is beside it
	playing    bool
	lacks      string        // the letters that were said to be in no font
	was        units.Seconds // the moment last shown
}

// New makes the editor's window; Show it and run the app.
func New(a fyne.App, o Options) *Editor {
	e := &Editor{app: a, settings: o.Settings, win: a.NewWindow("Homeside"), trace: NewTrace(o.Trace), shown: -1, stamps: map[int]stamp{}, inWindow: fyne.Do}
	if e.settings == nil {
		e.settings = settings.Hold(settings.Settings{})
	}
	e.session = session.New(session.Blank(), "", func() { e.changed() })
	e.session.SetCuts(e.settings.Now().ReducedMotion)
	e.desk = session.NewDesk(e.session)
	e.tabs = panel.NewTabs(e.desk, e.showLesson, e.closeLesson)
	e.court = courtview.New(e.session, e.courtEvents(o))
	e.strip = rallystrip.New(e.session, rallystrip.Events{
		Key: func(k *fyne.KeyEvent) { e.press(onStrip, k) }, Rune: func(r rune) { e.typed(onStrip, r) }, Status: e.say, Menu: e.stripMenu, Cue: e.askCue, Open: e.openThing, Focused: func() { e.reveal(e.strip); e.trace.say("focus strip") }, Painted: e.traceStrip,
	})
	e.eager = eager{look: o.Look, later: inStep}
	e.stripLater = lazily{refresh: e.strip.Refresh, pause: stripPause}
	e.plays = panel.NewPlays(e.session, e.key, e.say)
	e.score = panel.NewScore(e.session)
	e.shot = panel.NewShot(e.session)
	e.match = panel.NewMatch(e.session)
	e.checks = panel.NewChecks(e.session, e.say)
	e.tell = panel.NewTell(e.session)
	e.bought = panel.NewBought(e.session, e.askSaveChart)
	e.player = panel.NewPlayer(e.session)
	e.notes = panel.NewNotes(e.session, e.guard(e.askDescribePlay))
	e.bar = newPlaybar(e.session, e.say)
	e.status = widget.NewLabel(words.Caution())
	e.status.Truncation = fyne.TextTruncateEllipsis
	e.clock = frameclock.New(e.session.Playing, e.session.Advance)
	e.plan = e.newMatchPlan()
	e.reels = e.newReels()
	e.exports = e.newExports()
	e.photos = e.newPhotos()
	e.start = e.newStart()
	e.guide = newGuide(e)
	e.trace.heard = e.guide.hear
	e.presenter = present.New(a, e.session, e.tracePresenter)
	e.rehearsing = e.newRehearsing()
	e.win.SetOnClosed(func() { e.presenter.Close(); e.rehearsing.Close() })
	e.editing = panel.NewPage(e.content())
	e.editing.Show()
	all := container.NewBorder(e.tabs.Box, nil, nil, nil, container.NewStack(e.editing.Box, e.plan.Box, e.reels.Box, e.exports.Box, e.photos.page.Box, e.start.Box, e.guide.layer))
	hung := &curtain{}
	e.win.SetContent(heard.NewWindow(container.New(hung, tooltip.AddWindowToolTipLayer(all, e.win.Canvas())), e.hear).OnFocus(e.reveal))
	e.bindings = bindings()
	e.win.SetMainMenu(e.menu())
	e.win.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { e.press(onCourt, k) })
	e.plays.List.Typed = func(r rune) { e.typed(anywhere, r) }
	e.win.Canvas().SetOnTypedRune(func(r rune) { e.typed(onCourt, r) })
	e.win.SetCloseIntercept(e.quit)
	e.win.SetOnDropped(e.dropped)
	hung.up = true
	e.win.Resize(fyne.NewSize(1280, 800))
	e.settings.OnChange(e.follow)
	e.begin(o)
	e.changed()
	return e
}

// begin shows what the editor starts with.
func (e *Editor) begin(o Options) {
	if len(o.Files) > 0 {
		e.showRead(readAll(o.Files))
	}
	if e.desk.Blank() {
		e.openStart()
	}
	if e.state = o.State; e.state != "" {
		e.offerLeft()
		e.autosave = newAutosave(e.state, cmp.Or(o.within, keepWithin), e.unkept, e.keptUnsaved)
	}
}

// Show shows the window.
func (e *Editor) Show() {
	e.win.Show()
	e.focusStart() // could not take the keys before it was laid out
}

// End cancels what is still being exported when the window is gone, and waits until
// nothing of it is left.
func (e *Editor) End() { e.exports.Work.End() }

// Window is the editor's window.
func (e *Editor) Window() fyne.Window { return e.win }

// content lays the parts out: the score first, the plays beside the court, the
// rally strip under both, the cards on the right. The Tab key goes through them
// in this order.
func (e *Editor) content() fyne.CanvasObject {
	write := heard.NewButton(words.T("New play from the score…"), e.guard(e.askNewPlay))
	plays := container.New(layout.NewBorderLayout(nil, write, nil, nil), e.plays.Box, write)
	e.besides = newBesides(plays, e.court, e.side(), e.refreshReasons)
	bar := container.New(&barRow{}, e.bar.box, e.status, e.besides.change.Tell(e.say))
	e.besides.over(container.New(shelf{e.strip}, e.besides.middle, bar, e.strip))
	e.tall = panel.NewTall(container.New(panel.Headed{}, e.score.Box, e.besides.box))
	return e.tall.Box
}

// reveal scrolls the page shown, or the dialog over it, to a control that has the keys.
func (e *Editor) reveal(o fyne.CanvasObject) {
	if q := e.question(); q != nil {
		q.content.Reveal(o)
		return
	}
	for _, page := range []interface{ Reveal(fyne.CanvasObject) }{e.tall, e.start, e.plan, e.reels, e.exports, e.photos.page} {
		page.Reveal(o)
	}
}

// Shares of the window's width: what is left of the cards, and of that the plays.
const (
	leftShare  = 0.78
	playsShare = 0.245
)

// changed shows the session as it is now. While a play runs only the pictures
// change; words and lists follow when the lesson or the play does.
func (e *Editor) changed() {
	if e.court == nil {
		return
	}
	e.presenter.Refresh()
	e.rehearsing.Refresh()
	if e.presenter.Shown() && e.session.Playing() {
		e.clock.Follow()
		return // the window below follows when the play stands
	}
	e.court.Refresh()
	e.stripLater.ask(!e.court.Dragging())
	e.bar.refresh()
	e.clock.Follow()
	e.refreshLoop()
	e.traceLoop()
	if e.playing != e.session.Playing() {
		e.playing = e.session.Playing()
		e.trace.say("playing=%v", e.playing)
	}
	if !e.playing {
		e.player.Refresh()
	}
	e.shot.Follow(e.playing) // the moment and the hand
	if !e.playing && !e.session.Previewing() {
		e.refreshReasons()
	}
	if e.shown == e.session.Revision() {
		return
	}
	e.shown = e.session.Revision()
	e.refreshChecks()
	e.tell.Refresh()
	if !e.session.Previewing() {
		e.plays.Refresh()
		e.score.Refresh()
		e.match.Refresh()
		e.notes.Refresh()
		e.cards.refresh(e.session)
		e.bought.Refresh()
		e.plan.Refresh()
		e.reels.Refresh()
		e.followPhoto()
		e.title()
		e.traceStep()
		e.noteUnsaved()
		e.tellLacks()
		e.leaveStart()
	}
}

// traceStep tells the state of the history: the last step done and whether the
// lesson differs from its file.
func (e *Editor) traceStep() {
	step, _ := e.session.CanUndo()
	e.trace.say("step %q modified=%v", step, e.session.Modified())
}

// title names the lesson and marks one that differs from its file.
func (e *Editor) title() {
	name := panel.LessonTitle(e.session.Lesson().Title) + " - Homeside"
	switch {
	case e.session.Modified():
		name = "• " + name
	case e.desk.Blank():
		name = "Homeside"
	}
	e.win.SetTitle(name)
	e.tabs.Refresh()
}

// say shows a line below the court; while there is nothing to say the caution
// stands there.
func (e *Editor) say(text string) {
	if e.plan != nil {
		e.plan.Say(text)
		e.reels.Say(text)
	}
	if e.start != nil {
		e.start.Say(text)
	}
	if text == "" {
		text = e.idleLine()
	}
	e.status.SetText(text)
}

// paintedRevision is called from within a paint. It tells where the players
// are in the window, in pixels.
func (e *Editor) paintedRevision(revision int) {
	if e.beingTimed() {
		return
	}
	now := e.whereabouts(revision)
	if now == e.painted || !e.trace.written() {
		return
	}
	e.painted = now
	for id, at := range e.court.OnScreen() {
		e.trace.say("at %v %.0f %.0f", id, at.X, at.Y)
	}
	e.traceControls()
	e.trace.say("painted %d", revision)
}

// traceStrip tells where things are in the rally strip; it is called from within
// its paint.
func (e *Editor) traceStrip() {
	if e.trace == nil || e.beingTimed() {
		return
	}
	for thing, at := range e.strip.OnScreen() {
		e.trace.say("at %s %.0f %.0f", thing, at.X, at.Y)
	}
	e.trace.say("strip shown %d", e.session.Revision())
}
