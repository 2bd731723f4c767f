package app

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"homeside/app/ring"
	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// timeMenu holds what is done in time: playing, texts, a shot's time, the loop, the strip.
func (e *Editor) timeMenu() *fyne.Menu {
	e.loopItem = e.item(words.T("Loop"), func() { e.session.ToggleLoop(); e.sayLoop() }, plain(fyne.KeyL))
	return fyne.NewMenu(words.T("Time"),
		e.needs(e.noPlay, e.item(words.T("Play or pause"), e.session.TogglePlay, plain(fyne.KeySpace))),
		e.needs(e.noPlay, e.item(words.T("Next event"), e.session.NextEvent, plain(fyne.KeyRight))),
		e.needs(e.noPlay, e.item(words.T("Previous event"), e.session.PreviousEvent, plain(fyne.KeyLeft))),
		fyne.NewMenuItemSeparator(),
		e.needs(e.noPlay, e.item(words.T("Add a caption here…"), func() { e.askCue(lesson.Caption, e.session.Now()) }, plain(fyne.KeyC))),
		e.needs(e.noPlay, e.item(words.T("Add a signal here…"), func() { e.askCue(lesson.Signal, e.session.Now()) }, plain(fyne.KeyS))),
		fyne.NewMenuItemSeparator(),
		e.needs(e.saidByTime, e.item(words.T("Say this shot by its time"), e.sayByTime, nil)),
		e.needs(e.noPlay, e.item(words.T("Time before the serve…"), e.askLead, nil)),
		fyne.NewMenuItemSeparator(),
		e.needs(e.noPlay, e.item(words.T("Loop starts here"), func() { e.session.LoopFrom(); e.sayLoop() }, plain(fyne.KeyI))),
		e.needs(e.noPlay, e.item(words.T("Loop ends here"), func() { e.session.LoopTo(); e.sayLoop() }, plain(fyne.KeyO))),
		e.loopItem,
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Rally strip: show less time, larger"), func() { e.strip.Zoom(keyZoom) }, nil),
		e.needs(e.whollyShown, e.item(words.T("Rally strip: show more time"), func() { e.strip.Zoom(1 / keyZoom) }, nil)),
		e.needs(e.whollyShown, e.item(words.T("Rally strip: show the whole play"), e.strip.Fit, nil)),
	)
}

// refreshLoop marks in the menu whether a loop is played.
func (e *Editor) refreshLoop() {
	if _, _, on := e.session.Loop(); e.loopItem != nil && e.loopItem.Checked != on {
		e.loopItem.Checked = on
		e.win.MainMenu().Refresh()
	}
}

// traceLoop tells when a play that runs has gone back to the start of its loop.
func (e *Editor) traceLoop() {
	now := e.session.Now()
	if e.session.Playing() && e.playing && now < e.was {
		e.trace.say("looped to %.2f", float64(now))
	}
	e.was = now
}

// goMenu gives the keys to a part of the window.
func (e *Editor) goMenu() *fyne.Menu {
	to := func(name string, key fyne.KeyName, o func() fyne.Focusable) *fyne.MenuItem {
		return e.item(name, func() {
			if f := o(); f != nil {
				ring.Take(f)
			}
		}, ctrl(key))
	}
	return fyne.NewMenu(words.T("Go"),
		to(words.T("Score"), fyne.Key1, func() fyne.Focusable { return firstControl(e.score.Box) }),
		to(words.T("Plays"), fyne.Key2, func() fyne.Focusable { e.besides.show(false); return e.plays.List }),
		to(words.T("Court"), fyne.Key3, func() fyne.Focusable { return e.court }),
		to(words.T("Rally strip"), fyne.Key4, func() fyne.Focusable { return e.strip }),
		to(words.T("Shot card"), fyne.Key5, func() fyne.Focusable { e.cards.open(e.cards.shot); return nil }),
		to(words.T("Player card"), fyne.Key6, func() fyne.Focusable { e.cards.open(e.cards.player); return nil }),
	)
}

// helpMenu finds commands and lists keys.
func (e *Editor) helpMenu() *fyne.Menu {
	return fyne.NewMenu(words.T("Help"),
		e.item(words.T("Find a command…"), e.findCommand, ctrl(fyne.KeyK)),
		e.item(words.T("Keys…"), e.showKeys, plain(fyne.KeyF1)),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Guided first play"), e.showGuide, nil),
	)
}

// askLead asks how long the play is shown before the serve.
func (e *Editor) askLead() {
	e.rest()
	p, ok := e.session.Play()
	if !ok {
		e.say(words.T("There is no play."))
		return
	}
	long := filledEntry(strconv.FormatFloat(float64(p.Lead), 'f', -1, 64))
	change := func() {
		t, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(long.Text), ",", ".", 1), 64)
		if lead := units.Seconds(t); err != nil || !(lead >= 0 && lead <= lesson.MaxOffset) {
			e.say(words.T("Please give seconds from 0 to %.0f.", float64(lesson.MaxOffset)))
		} else if lead != p.Lead {
			e.replacePlay(words.T("change the time before the serve"), edit.StartAt(p, lead))
		}
	}
	form := widget.NewForm(widget.NewFormItem(words.T("Seconds"), long))
	q := e.askWith(words.T("Time before the serve"), form, answer{label: words.T("Cancel")}, answer{label: words.T("Change"), do: change})
	q.size(420, 160).focus(long)
	long.SelectAll()
	e.trace.say("asking the lead")
}
