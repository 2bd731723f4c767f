package app

import (
	"slices"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// part is a part of the window that keys may be meant for.
type part uint8

const (
	anywhere part = iota
	onCourt
	onStrip
	onPlays
	onMatchPlan
	onPhoto
	onReels
	onExports
	partCount
)

// binding is one key of the window. The page of keys and what the keys do both
// come from the table of bindings, so that the page cannot be wrong. Shortcuts
// with Ctrl stand in the menus.
type binding struct {
	where part
	keys  []fyne.KeyName // any of them
	shift bool
	says  func() string
	do    func(e *Editor) bool // false: the key is meant for another binding or for nothing
}

// Steps of the keys in time.
const (
	frameStep units.Seconds = 1.0 / 30
	moveStep  units.Seconds = 0.05 // of what is chosen in the rally strip
	keyZoom                 = 1.5
)

// always is what a binding does that has a use for its key every time.
func always(do func(e *Editor)) func(*Editor) bool {
	return func(e *Editor) bool { do(e); return true }
}

func one(k ...fyne.KeyName) []fyne.KeyName { return k }

// bindings are all keys without Ctrl, those of a part before those of everywhere.
func bindings() []binding {
	return append(slices.Concat(courtBindings(), stripBindings(), playsBindings(), photoBindings()),
		binding{onMatchPlan, one(fyne.KeyEscape), false, func() string { return words.T("close the match plan") }, func(e *Editor) bool { e.plan.Close(); return true }},
		binding{onExports, one(fyne.KeyEscape), false, func() string { return words.T("close the page of exports") }, always(func(e *Editor) { e.exports.Close() })},
		onReel(fyne.KeyEscape, func() string { return words.T("close the page of reels") }),
		onReel(fyne.KeySpace, func() string { return words.T("play or pause the reel") }),
		onReel(fyne.KeyRight, func() string { return words.T("pick the next take") }),
		onReel(fyne.KeyLeft, func() string { return words.T("pick the previous take") }),
		onReel(fyne.KeyDelete, func() string { return words.T("delete the take picked") }),

		binding{anywhere, one(fyne.KeySpace), false, func() string { return words.T("play or pause") }, always(func(e *Editor) { e.session.TogglePlay() })},
		binding{anywhere, one(fyne.KeyRight), false, func() string { return words.T("next event") }, always(func(e *Editor) { e.session.NextEvent() })},
		binding{anywhere, one(fyne.KeyLeft), false, func() string { return words.T("previous event") }, always(func(e *Editor) { e.session.PreviousEvent() })},
		binding{anywhere, one(fyne.KeyRight), true, func() string { return words.T("a frame later") }, always(func(e *Editor) { e.session.Seek(e.session.Now() + frameStep) })},
		binding{anywhere, one(fyne.KeyLeft), true, func() string { return words.T("a frame earlier") }, always(func(e *Editor) { e.session.Seek(e.session.Now() - frameStep) })},
		binding{anywhere, one(fyne.KeyHome), false, func() string { return words.T("beginning of the play") }, always(func(e *Editor) { e.session.Seek(-lesson.MaxOffset) })},
		binding{anywhere, one(fyne.KeyEnd), false, func() string { return words.T("end of the play") }, always((*Editor).seekEnd)},
		binding{anywhere, one(fyne.KeyI), false, func() string { return words.T("loop starts here") }, always(func(e *Editor) { e.session.LoopFrom(); e.sayLoop() })},
		binding{anywhere, one(fyne.KeyO), false, func() string { return words.T("loop ends here") }, always(func(e *Editor) { e.session.LoopTo(); e.sayLoop() })},
		binding{anywhere, one(fyne.KeyL), false, func() string { return words.T("loop on or off") }, always(func(e *Editor) { e.session.ToggleLoop(); e.sayLoop() })},
		binding{anywhere, one(fyne.KeyComma), false, func() string { return words.T("play slower") }, always(func(e *Editor) { e.bar.step(1) })},
		binding{anywhere, one(fyne.KeyPeriod), false, func() string { return words.T("play faster") }, always(func(e *Editor) { e.bar.step(-1) })},
		binding{anywhere, one(fyne.KeyC), false, func() string { return words.T("add a caption here") }, always(func(e *Editor) { e.askCue(lesson.Caption, e.session.Now()) })},
		binding{anywhere, one(fyne.KeyS), false, func() string { return words.T("add a signal here") }, always(func(e *Editor) { e.askCue(lesson.Signal, e.session.Now()) })},
		binding{anywhere, one(fyne.KeyF1), false, func() string { return words.T("show this page of keys") }, always((*Editor).showKeys)},
		binding{anywhere, one(fyne.KeyEscape), false, func() string { return words.T("cancel a drag") }, always(func(e *Editor) { e.cancelDrags() })},
	)
}

// stripBindings are the keys of the rally strip.
func stripBindings() []binding {
	return []binding{
		{onStrip, one(fyne.KeyDown), false, func() string { return words.T("choose in the lane below") }, always(func(e *Editor) { e.session.ChooseLane(1); e.sayChosen() })},
		{onStrip, one(fyne.KeyUp), false, func() string { return words.T("choose in the lane above") }, always(func(e *Editor) { e.session.ChooseLane(-1); e.sayChosen() })},
		{onStrip, one(fyne.KeyN), false, func() string { return words.T("choose the next in the lane") }, always(func(e *Editor) { e.session.ChooseNext(1); e.sayChosen() })},
		{onStrip, one(fyne.KeyN), true, func() string { return words.T("choose the previous in the lane") }, always(func(e *Editor) { e.session.ChooseNext(-1); e.sayChosen() })},
		{onStrip, one(fyne.KeyRight), false, func() string { return words.T("move what is chosen 0.05 s later") }, func(e *Editor) bool { return e.moveChosen(moveStep) }},
		{onStrip, one(fyne.KeyLeft), false, func() string { return words.T("move what is chosen 0.05 s earlier") }, func(e *Editor) bool { return e.moveChosen(-moveStep) }},
		{onStrip, one(fyne.KeyRight), true, func() string { return words.T("move what is chosen to the next event") }, func(e *Editor) bool { return e.snapChosen(1) }},
		{onStrip, one(fyne.KeyLeft), true, func() string { return words.T("move what is chosen to the previous event") }, func(e *Editor) bool { return e.snapChosen(-1) }},
		{onStrip, one(fyne.KeyReturn, fyne.KeyEnter), false, func() string { return words.T("open what is chosen") }, (*Editor).openChosen},
		{onStrip, one(fyne.KeyDelete, fyne.KeyBackspace), false, func() string { return words.T("delete what is chosen") }, (*Editor).deleteChosen},
		{onStrip, one(desktop.KeyMenu), false, func() string { return words.T("menu of what is chosen") }, always(func(e *Editor) { e.stripMenu(e.strip.Middle(), e.session.Now()) })},
		{onStrip, one(fyne.KeyPlus, fyne.KeyEqual), false, func() string { return words.T("show less time, larger") }, always(func(e *Editor) { e.strip.Zoom(keyZoom) })},
		{onStrip, one(fyne.KeyPlus, fyne.KeyEqual), true, func() string { return words.T("show less time, larger") }, always(func(e *Editor) { e.strip.Zoom(keyZoom) })},
		{onStrip, one(fyne.KeyMinus), false, func() string { return words.T("show more time") }, always(func(e *Editor) { e.strip.Zoom(1 / keyZoom) })},
		{onStrip, one(fyne.Key0), false, func() string { return words.T("show the whole play") }, always(func(e *Editor) { e.strip.Fit() })},
		{onStrip, one(fyne.KeyPageDown), false, func() string { return words.T("a page later") }, always(func(e *Editor) { e.strip.Page(1) })},
		{onStrip, one(fyne.KeyPageUp), false, func() string { return words.T("a page earlier") }, always(func(e *Editor) { e.strip.Page(-1) })},
		{onStrip, one(fyne.KeyEscape), false, func() string { return words.T("cancel a drag, or choose nothing") }, (*Editor).cancelInStrip},
	}
}

// playsBindings are the keys of the list of plays.
func playsBindings() []binding {
	return []binding{
		{onPlays, one(fyne.KeyDown), false, func() string { return words.T("show the next play of the list") }, always(func(e *Editor) { e.plays.Step(1) })},
		{onPlays, one(fyne.KeyUp), false, func() string { return words.T("show the previous play of the list") }, always(func(e *Editor) { e.plays.Step(-1) })},
		{onPlays, one(fyne.KeyPageDown), false, func() string { return words.T("a page of the list further down") }, always(func(e *Editor) { e.plays.Page(1) })},
		{onPlays, one(fyne.KeyPageUp), false, func() string { return words.T("a page of the list further up") }, always(func(e *Editor) { e.plays.Page(-1) })},
		{onPlays, one(fyne.KeyReturn, fyne.KeyEnter), false, func() string { return words.T("go to the court") }, always(func(e *Editor) { e.win.Canvas().Focus(e.court) })},
	}
}

// press does what a key is bound to in a part of the window, or anywhere. Letters
// wait for typed: what one of them opens would find it typed into its field.
func (e *Editor) press(where part, k *fyne.KeyEvent) {
	if !letter(k.Name) {
		e.act(where, k.Name)
	}
}

// typed does what a letter is bound to.
func (e *Editor) typed(where part, r rune) {
	if k := fyne.KeyName(unicode.ToUpper(r)); letter(k) {
		e.act(where, k)
	}
}

// hear is offered the keys of the window's controls. In a dialog they are its own.
// Elsewhere Escape closes the page, or leaves the control for the court.
func (e *Editor) hear(k *fyne.KeyEvent) bool {
	if q := e.question(); q != nil {
		return q.hear(k.Name)
	}
	if k.Name != fyne.KeyEscape || e.win.Canvas().Overlays().Top() != nil {
		return false
	}
	if e.pageOr(anywhere) == anywhere && !e.start.Shown() {
		e.cancelDrags()
		e.win.Canvas().Focus(e.court)
		return true
	}
	e.act(anywhere, k.Name)
	return true
}

func letter(k fyne.KeyName) bool { return len(k) == 1 && k[0] >= 'A' && k[0] <= 'Z' }

func (e *Editor) act(where part, k fyne.KeyName) {
	if e.win.Canvas().Overlays().Top() != nil { // a dialog in which nothing has the keys
		if q := e.question(); q != nil {
			q.hear(k)
		}
		return
	}
	if e.start.Shown() {
		if k == fyne.KeyEscape && e.start.CanClose() {
			e.closeStart()
		}
		return
	}
	if e.dragging() && k != fyne.KeyEscape {
		return // the hand first: what it holds would change under it
	}
	where = e.pageOr(where)
	shift := shiftHeld()
	for _, b := range e.bindings {
		if b.fits(where, k, shift) && b.do(e) {
			return
		}
	}
}

// pageOr is the page that takes the place of the other parts, if one is open.
func (e *Editor) pageOr(where part) part {
	switch {
	case e.plan.Shown():
		return onMatchPlan
	case e.photos.page.Shown():
		return onPhoto
	case e.reels.Shown():
		return onReels
	case e.exports.Shown():
		return onExports
	}
	return where
}

// page says whether a part takes the place of the others.
func (p part) page() bool { return p == onMatchPlan || p == onPhoto || p == onReels || p == onExports }

// leavePages closes the page that is open. The start page stays where there is no
// lesson to see behind it.
func (e *Editor) leavePages() {
	if e.plan.Shown() {
		e.plan.Close()
	}
	if e.reels.Shown() {
		e.reels.Close()
	}
	if e.exports.Shown() {
		e.toReels = false
		e.exports.Close()
	}
	e.photos.page.Close()
	e.leaveStart()
}

// fits says whether a key pressed in a part is the binding's. A page takes the
// place of the others: their keys do nothing there.
func (b binding) fits(where part, k fyne.KeyName, shift bool) bool {
	if b.where != where && (b.where != anywhere || where.page()) || b.shift != shift {
		return false
	}
	for _, own := range b.keys {
		if own == k {
			return true
		}
	}
	return false
}

func shiftHeld() bool {
	d, ok := fyne.CurrentApp().Driver().(desktop.Driver)
	return ok && d.CurrentKeyModifiers()&fyne.KeyModifierShift != 0
}

// dragging says whether the hand holds something on the court or in the strip.
func (e *Editor) dragging() bool { return e.court.Dragging() || e.strip.Dragging() }

// cancelDrags drops whatever the hand is doing, and says whether it did anything.
func (e *Editor) cancelDrags() bool {
	plays, reels, court, strip := e.plays.CancelDrag(), e.reels.CancelDrag(), e.court.Cancel(), e.strip.Cancel()
	return plays || reels || court || strip
}

func (e *Editor) seekEnd() {
	if r := e.session.Current(); r != nil {
		e.session.Seek(r.To)
	}
}

func (e *Editor) sayLoop() {
	if from, to, on := e.session.Loop(); on {
		e.say(words.LoopSays(from, to))
		e.trace.say("loop %.3f %.3f", float64(from), float64(to))
		return
	}
	e.say(words.T("The play stops at its end."))
	e.trace.say("no loop")
}
