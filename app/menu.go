package app

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"homeside/app/courtview"
	"homeside/model/cover"
	"homeside/words"
)

// menu is the main menu.
func (e *Editor) menu() *fyne.MainMenu {
	return fyne.NewMainMenu(e.fileMenu(), e.editMenu(), e.playMenu(), e.timeMenu(), e.viewMenu(), e.goMenu(), e.helpMenu())
}

// item is a menu item that does nothing under an open dialog.
func (e *Editor) item(label string, do func(), shortcut fyne.Shortcut) *fyne.MenuItem {
	m := fyne.NewMenuItem(label, e.guard(do))
	m.Shortcut = shortcut
	return m
}

// fileMenu holds lessons, exports and rosters.
func (e *Editor) fileMenu() *fyne.Menu {
	e.recentItem = fyne.NewMenuItem(words.T("Open recent"), nil)
	e.recentItem.ChildMenu = fyne.NewMenu("")
	e.refreshRecent()
	return fyne.NewMenu(words.T("File"),
		e.item(words.T("New lesson"), e.newLesson, ctrl(fyne.KeyN)),
		e.item(words.T("Start page"), e.openStart, ctrlShift(fyne.KeyH)),
		e.item(words.T("Open…"), e.askOpen, ctrl(fyne.KeyO)),
		e.recentItem,
		e.item(words.T("Save"), e.save, ctrl(fyne.KeyS)),
		e.item(words.T("Save as…"), e.askSaveAs, ctrlShift(fyne.KeyS)),
		e.item(words.T("Close this lesson"), func() { e.closeLesson(e.desk.Shown()) }, ctrl(fyne.KeyW)),
		fyne.NewMenuItemSeparator(),
		e.needs(e.noOtherLesson, e.item(words.T("Next lesson"), func() { e.stepLesson(1) }, ctrl(fyne.KeyPageDown))),
		e.needs(e.noOtherLesson, e.item(words.T("Previous lesson"), func() { e.stepLesson(-1) }, ctrl(fyne.KeyPageUp))),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Export…"), e.askExport, ctrl(fyne.KeyE)),
		e.item(words.T("Handout…"), e.askHandout, ctrl(fyne.KeyP)),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Pairs…"), e.showPairs, nil),
		e.item(words.T("Open a roster…"), func() { e.showPairs(); e.askOpenRoster() }, nil),
		e.item(words.T("Save the roster as…"), e.askSaveRosterAs, nil),
		fyne.NewMenuItemSeparator(),
		e.quitItem(),
	)
}

// quitItem closes the window also while a dialog is open, as its frame does. Without
// it the toolkit would add one of its own, in the language of the system.
func (e *Editor) quitItem() *fyne.MenuItem {
	m := fyne.NewMenuItem(words.T("Quit"), e.quit)
	m.IsQuit = true
	return m
}

// editMenu holds undo and redo, by the toolkit's own shortcuts: other ones with
// Ctrl+Z do not arrive.
func (e *Editor) editMenu() *fyne.Menu {
	items := []*fyne.MenuItem{e.undoItem(), e.redoItem(), fyne.NewMenuItemSeparator()}
	items = append(items, e.clipItems()...)
	return fyne.NewMenu(words.T("Edit"), append(items,
		e.needs(e.nonePicked, e.item(words.T("Delete what is picked"), e.deletePicked, plain(fyne.KeyDelete))),
		e.markMenu(),
		e.snapMenu(),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("The lesson: scoring, ball, court…"), e.askLesson, nil),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Settings…"), e.askSettings, ctrl(fyne.KeyComma)),
	)...)
}

// playMenu holds what is done with plays.
func (e *Editor) playMenu() *fyne.Menu {
	items := []*fyne.MenuItem{
		e.item(words.T("New play from the score…"), e.askNewPlay, ctrlShift(fyne.KeyN)),
		e.needs(e.noPlay, e.item(words.T("Duplicate this play"), e.session.DuplicatePlay, ctrl(fyne.KeyD))),
		e.needs(e.noPlay, e.item(words.T("Title, notes and tags…"), e.askDescribePlay, nil)),
		e.needs(e.noOtherPlay, e.item(words.T("Move up in the list"), func() { e.plays.Move(-1) }, alt(fyne.KeyUp))),
		e.needs(e.noOtherPlay, e.item(words.T("Move down in the list"), func() { e.plays.Move(1) }, alt(fyne.KeyDown))),
		e.item(words.T("Find a play"), func() { e.besides.show(false); e.plays.FocusSearch() }, ctrl(fyne.KeyF)),
		e.item(words.T("Import plays…"), e.askImport, ctrlShift(fyne.KeyI)),
		e.needs(e.noPlay, e.item(words.T("Delete this play"), e.session.DeletePlay, nil)),
		fyne.NewMenuItemSeparator(),
		e.needs(e.noPlay, e.item(words.T("Add a shot"), e.addShot, ctrlShift(fyne.KeyA))),
	}
	items = append(items, e.transformItems()...)
	return fyne.NewMenu(words.T("Play‖noun"), append(items,
		fyne.NewMenuItemSeparator(),
		e.needs(e.noPlay, e.item(words.T("What if…"), e.askWhatIf, nil)),
		e.needs(e.noPlay, e.item(words.T("As it was, as it should be…"), e.askMistakes, nil)),
		fyne.NewMenuItemSeparator(),
		e.needs(e.noOtherPlay, e.item(words.T("Compare with another play…"), e.askCompare, ctrlShift(fyne.KeyC))),
		e.needs(e.notComparing, e.item(words.T("Stop comparing"), e.stopComparing, nil)),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Match plan…"), e.openMatchPlan, ctrl(fyne.KeyM)),
		e.item(words.T("Reels…"), e.openReels, ctrl(fyne.KeyR)),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Before you run it…"), e.showCautions, nil),
	)...)
}

// viewMenu holds what is shown and how.
func (e *Editor) viewMenu() *fyne.Menu {
	items := append(e.sightItems(), fyne.NewMenuItemSeparator())
	return fyne.NewMenu(words.T("View"), append(append(items, e.zoomItems()...),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Present, full screen"), e.present, ctrl(fyne.KeyF5)),
		e.item(words.T("Rehearse on court, full screen"), e.rehearse, ctrl(fyne.KeyF6)),
		e.item(words.T("A photo under the court…"), e.openPhoto, ctrl(fyne.KeyU)),
		fyne.NewMenuItemSeparator(),
		e.toggle(words.T("Half-second ticks"), true, func(on bool) { e.show(func(s *courtview.Show) { s.NoTicks = !on }) }),
		e.toggle(words.T("Ghost of the plan"), true, func(on bool) { e.show(func(s *courtview.Show) { s.NoGhosts = !on }) }),
		e.toggle(words.T("Time to spare"), true, e.strip.ShowMargins),
		e.toggle(words.T("Court covered"), false, func(on bool) { e.show(func(s *courtview.Show) { s.Cover = on }) }),
		e.coverMenu(),
		e.item(words.T("Hold this cover"), e.holdCover, nil),
		e.needs(e.noHeldCover, e.item(words.T("Compare with the held cover…"), e.compareCover, nil)),
	)...)
}

// toggle is a menu item with a mark that turns on and off.
func (e *Editor) toggle(label string, on bool, set func(bool)) *fyne.MenuItem {
	m := fyne.NewMenuItem(label, nil)
	m.Checked = on
	m.Action = e.guard(func() {
		m.Checked = !m.Checked
		set(m.Checked)
		e.win.MainMenu().Refresh()
	})
	return m
}

// coverMenu chooses the shot that the cover is shown against.
func (e *Editor) coverMenu() *fyne.MenuItem {
	m := fyne.NewMenuItem(words.T("Covered against"), nil)
	m.ChildMenu = fyne.NewMenu("")
	for i, shot := range cover.Shots {
		m.ChildMenu.Items = append(m.ChildMenu.Items, fyne.NewMenuItem(words.CoverShot(shot), e.guard(func() {
			e.show(func(s *courtview.Show) { s.CoverShot = shot })
			mark(m.ChildMenu.Items, i)
			e.win.MainMenu().Refresh()
		})))
	}
	mark(m.ChildMenu.Items, slices.Index(cover.Shots[:], cover.Shot{Drive: cover.DefaultDrive}))
	return m
}

// mark marks one of the items as chosen.
func mark(items []*fyne.MenuItem, chosen int) {
	for i, m := range items {
		m.Checked = i == chosen
	}
}

func (e *Editor) show(change func(*courtview.Show)) {
	s := e.court.Shown()
	change(&s)
	e.court.SetShow(s)
}

// undoItem names what undo would do.
func (e *Editor) undoItem() *fyne.MenuItem {
	return e.needsNamed(func() string { step, _ := e.session.CanUndo(); return named(words.T("Undo"), step) }, e.noUndo,
		e.item(words.T("Undo"), e.undo, &fyne.ShortcutUndo{}))
}

// redoItem names what redo would do.
func (e *Editor) redoItem() *fyne.MenuItem {
	return e.needsNamed(func() string { step, _ := e.session.CanRedo(); return named(words.T("Redo"), step) }, e.noRedo,
		e.item(words.T("Redo"), e.redo, &fyne.ShortcutRedo{}))
}

// named is what a menu says of a step: "Undo: move Tobin".
func named(what, step string) string {
	if step == "" {
		return what
	}
	return what + ": " + step
}

// guard keeps a menu's shortcut from acting under an open dialog.
func (e *Editor) guard(do func()) func() {
	return func() {
		if e.win.Canvas().Overlays().Top() == nil {
			do()
		}
	}
}

// undo takes back what the hand is doing now or, while it rests, the last step.
func (e *Editor) undo() {
	if !e.cancelDrags() {
		e.session.Undo()
	}
	e.trace.say("undone")
}

func (e *Editor) redo() {
	e.cancelDrags()
	e.session.Redo()
	e.trace.say("redone")
}

func ctrl(k fyne.KeyName) fyne.Shortcut {
	return &desktop.CustomShortcut{KeyName: k, Modifier: fyne.KeyModifierShortcutDefault}
}

// plain shows a key of the table of bindings beside a command. The menus never
// act on it: without Ctrl or Alt the toolkit gives keys to the part of the window
// that has them. The names of some keys it says in English only; where another
// language is spoken they are called as in the page of keys.
func plain(k fyne.KeyName) fyne.Shortcut {
	if named := k == fyne.KeySpace || k == fyne.KeyDelete; named && words.Spoken() != words.English {
		k = fyne.KeyName(words.KeyName(string(k)))
	}
	return &desktop.CustomShortcut{KeyName: k}
}

func alt(k fyne.KeyName) fyne.Shortcut {
	return &desktop.CustomShortcut{KeyName: k, Modifier: fyne.KeyModifierAlt}
}

func ctrlShift(k fyne.KeyName) fyne.Shortcut {
	return &desktop.CustomShortcut{KeyName: k, Modifier: fyne.KeyModifierShortcutDefault | fyne.KeyModifierShift}
}
