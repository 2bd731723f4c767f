package app

import (
	"strings"

	"fyne.io/fyne/v2"

	"homeside/words"
)

// findCommand finds a command of the menus by a few letters and does it.
func (e *Editor) findCommand() {
	all := commands(e.win.MainMenu())
	e.showFinder(words.T("Find a command"), words.T("Type a few letters"), func(typed string) []line {
		found := find(all, typed)
		lines := make([]line, len(found))
		for i, c := range found {
			lines[i] = e.commandLine(c)
		}
		e.trace.say("found %d %q", len(lines), first(lines))
		return lines
	})
	e.trace.say("finding a command")
}

func first(lines []line) string {
	if len(lines) == 0 {
		return ""
	}
	return lines[0].text
}

// commandLine is a command with its key, and with the reason where it cannot be
// done now.
func (e *Editor) commandLine(c command) line {
	l := line{text: c.menu + " › " + c.item.Label, key: c.shortcut(), off: c.item.Disabled, do: c.item.Action}
	if c.item.Checked {
		l.text += "  ✓"
	}
	return l
}

// showKeys lists all keys of the program: those of the table of bindings and those
// of the menus, so that nothing is listed that does not work.
func (e *Editor) showKeys() {
	all := keyLines(e.bindings, commands(e.win.MainMenu()))
	e.showFinder(words.T("Keys"), words.T("Type a few letters"), func(typed string) []line { return fitting(all, typed) })
	e.trace.say("showing %d keys", len(all))
}

// partName heads the keys of a part of the window.
func partName(p part) string {
	switch p {
	case onCourt:
		return words.T("On the court")
	case onStrip:
		return words.T("In the rally strip")
	case onPlays:
		return words.T("In the list of plays")
	case onMatchPlan:
		return words.T("In the match plan")
	case onPhoto:
		return words.T("On the photo")
	case onExports:
		return words.T("On the page of exports")
	case onReels:
		return words.T("On the page of reels")
	default:
		return words.T("Everywhere")
	}
}

// keyLines are the keys of every part of the window, then the shortcuts of the menus.
func keyLines(all []binding, menus []command) []line {
	var lines []line
	for p := range partCount {
		lines = append(lines, line{text: partName(p), heading: true})
		for _, b := range all {
			if b.where == p {
				lines = append(lines, line{text: b.says(), key: b.name()})
			}
		}
	}
	lines = append(lines, line{text: words.T("In the menus"), heading: true}, line{text: words.T("open the menus; the arrow keys go through them"), key: words.T("Alt")})
	for _, c := range menus {
		if key := c.shortcut(); key != "" && !c.plain() {
			lines = append(lines, line{text: c.menu + " › " + c.item.Label, key: key})
		}
	}
	return append(lines, line{text: words.T("In dialogs"), heading: true},
		line{text: words.T("close, and change nothing"), key: words.KeyName(string(fyne.KeyEscape))},
		line{text: words.T("what the last button says"), key: words.KeyName(string(fyne.KeyReturn))},
		line{text: words.T("likewise in a field of several lines"), key: "Ctrl+" + words.KeyName(string(fyne.KeyReturn))})
}

// name is a binding's keys as people read them: "Shift+Right", "Enter".
func (b binding) name() string {
	text := ""
	for i, k := range b.keys {
		name := words.KeyName(string(k))
		if i > 0 && words.KeyName(string(b.keys[i-1])) == name {
			continue // Enter is there twice
		}
		if i > 0 {
			text += ", "
		}
		if b.shift {
			text += "Shift+"
		}
		text += name
	}
	return text
}

// fitting are the lines that hold what is typed, in their words or their key, with
// the headings above them.
func fitting(all []line, typed string) []line {
	var lines []line
	var heading *line
	for i, l := range all {
		if l.heading {
			heading = &all[i]
			continue
		}
		if c := folded(l.text + " " + l.key); wordsBegin(c, folded(typed)) || strings.Contains(c, folded(typed)) {
			if heading != nil {
				lines, heading = append(lines, *heading), nil
			}
			lines = append(lines, l)
		}
	}
	return lines
}
