package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	tooltip "github.com/dweymouth/fyne-tooltip"
	tip "github.com/dweymouth/fyne-tooltip/widget"

	"homeside/app/courtview"
	"homeside/app/frameclock"
	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/present"
	"homeside/app/rallystrip"
	"homeside/words"
)

// makeCourt makes the court, the rally strip and what plays them.
func (e *Editor) makeCourt(o Options) {
	e.tabs = panel.NewTabs(e.desk, e.showLesson, e.closeLesson)
	e.court = courtview.New(e.session, e.courtEvents(o))
	e.strip = rallystrip.New(e.session, rallystrip.Events{
		Key: func(k *fyne.KeyEvent) { e.press(onStrip, k) }, Rune: func(r rune) { e.typed(onStrip, r) }, Status: e.say, Menu: e.stripMenu, Cue: e.askCue, Open: e.openThing, Focused: func() { e.reveal(e.strip); e.trace.say("focus strip") }, Painted: e.traceStrip,
	})
	e.eager = eager{look: o.Look, later: inStep}
	e.stripLater = lazily{refresh: e.strip.Refresh, pause: stripPause}
	e.bar = newPlaybar(e.session, e.say)
	e.status = tip.NewLabel("")
	e.status.Truncation = fyne.TextTruncateEllipsis
	e.say("")
	e.clock = frameclock.New(e.session.Playing, e.session.Advance)
}

// makeCards makes what stands beside the court.
func (e *Editor) makeCards() {
	e.plays = panel.NewPlays(e.session, func(k *fyne.KeyEvent) { e.press(onPlays, k) }, e.say)
	e.score = panel.NewScore(e.session)
	e.shot = panel.NewShot(e.session)
	e.match = panel.NewMatch(e.session)
	e.checks = panel.NewChecks(e.session, e.say)
	e.tell = panel.NewTell(e.session)
	e.bought = panel.NewBought(e.session, e.askSaveChart)
	e.player = panel.NewPlayer(e.session)
	e.notes = panel.NewNotes(e.session, e.guard(e.askDescribePlay))
}

// makePages makes what takes the court's place, and the windows beside this one.
func (e *Editor) makePages() {
	e.plan = e.newMatchPlan()
	e.reels = e.newReels()
	e.exports = e.newExports()
	e.photos = e.newPhotos()
	e.start = e.newStart()
	e.guide = newGuide(e)
	e.trace.heard = e.guide.hear
	e.presenter = present.New(e.app, e.session, e.tracePresenter)
	e.rehearsing = e.newRehearsing()
	e.win.SetOnClosed(func() { e.presenter.Close(); e.rehearsing.Close() })
}

// hang puts all into the window, which hears the keys from then on.
func (e *Editor) hang() {
	e.editing = panel.NewPage(e.content())
	e.editing.Show()
	all := container.NewBorder(e.tabs.Box, nil, nil, nil, container.NewStack(e.editing.Box, e.plan.Box, e.reels.Box, e.exports.Box, e.photos.page.Box, e.start.Box, e.guide.layer))
	c := &curtain{}
	e.win.SetContent(heard.NewWindow(container.New(c, tooltip.AddWindowToolTipLayer(all, e.win.Canvas())), e.hear).OnFocus(e.reveal))
	e.bindings = bindings()
	e.win.SetMainMenu(e.menu())
	e.win.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { e.press(onCourt, k) })
	e.plays.List.Typed = func(r rune) { e.typed(onPlays, r) }
	e.win.Canvas().SetOnTypedRune(func(r rune) { e.typed(onCourt, r) })
	e.win.SetCloseIntercept(e.quit)
	e.win.SetOnDropped(e.dropped)
	c.up = true
	e.win.Resize(fyne.NewSize(1280, 800))
}

// content lays the parts out: the score first, the plays beside the court, the
// rally strip under both, the cards on the right. The Tab key goes through them
// in this order.
func (e *Editor) content() fyne.CanvasObject {
	write := heard.NewButton(words.T("New play from the score…"), e.guard(e.askNewPlay))
	plays := container.New(layout.NewBorderLayout(nil, write, nil, nil), e.plays.Box, write)
	e.besides = newBesides(plays, e.court, e.side(), e.refreshReasons)
	bar := container.New(&barRow{}, e.bar.box, e.status, e.besides.change.Tell(e.say))
	e.besides.over(container.New(shelf{e.strip}, e.besides.middle, bar, e.strip))
	page := container.New(panel.Headed{}, e.score.Box, e.besides.box)
	e.score.Resized = func() { panel.Relay(page) }
	e.tall = panel.NewTall(page)
	return e.tall.Box
}

// Shares of the window's width: what is left of the cards, and of that the plays.
const (
	leftShare  = 0.78
	playsShare = 0.245
)
