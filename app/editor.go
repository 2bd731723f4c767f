package app

import (
	"cmp"
	"io"
	"time"

	"fyne.io/fyne/v2"
	tip "github.com/dweymouth/fyne-tooltip/widget"

	"homeside/app/courtview"
	"homeside/app/exporting"
	"homeside/app/frameclock"
	"homeside/app/panel"
	"homeside/app/present"
	"homeside/app/rallystrip"
	"homeside/app/rehearse"
	"homeside/app/session"
	"homeside/app/settings"
	"homeside/model/units"
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
	status     *tip.Label
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
	up         bool        // the window is there and laid out
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
	e.makeCourt(o)
	e.makeCards()
	e.makePages()
	e.hang()
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
	if e.desk.Blank() && !e.plan.Shown() { // where a roster was asked for its pairs are seen
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
	e.up = true
	e.focusStart()
}

// End cancels what is still being exported when the window is gone, and waits until
// nothing of it is left.
func (e *Editor) End() { e.exports.Work.End() }

// Window is the editor's window.
func (e *Editor) Window() fyne.Window { return e.win }

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
	e.status.SetToolTip(text) // where there is no room for all of it
}
