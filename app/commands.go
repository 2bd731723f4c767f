package app

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"homeside/words"
)

// command is an entry of the menus as the search and the page of keys show it.
type command struct {
	menu string // the menus it is in: "File", "View › Covered against"
	item *fyne.MenuItem
}

// commands lists the entries of a menu and of the menus in it.
func commands(m *fyne.MainMenu) []command {
	var all []command
	for _, menu := range m.Items {
		all = addCommands(all, menu.Label, menu)
	}
	return all
}

func addCommands(all []command, path string, menu *fyne.Menu) []command {
	for _, item := range menu.Items {
		switch {
		case item.IsSeparator:
		case item.ChildMenu != nil:
			all = addCommands(all, path+" › "+item.Label, item.ChildMenu)
		case item.Action != nil:
			all = append(all, command{path, item})
		}
	}
	return all
}

// shortcut is a command's key as people read it: "Ctrl+S"; empty if it has none.
func (c command) shortcut() string {
	switch s := c.item.Shortcut.(type) {
	case *desktop.CustomShortcut:
		return modifiers(s.Modifier) + words.KeyName(string(s.KeyName))
	case *fyne.ShortcutUndo:
		return "Ctrl+Z"
	case *fyne.ShortcutRedo:
		return "Ctrl+Y"
	case *fyne.ShortcutCopy:
		return "Ctrl+C"
	case *fyne.ShortcutCut:
		return "Ctrl+X"
	case *fyne.ShortcutPaste:
		return "Ctrl+V"
	case *fyne.ShortcutSelectAll:
		return "Ctrl+A"
	}
	return ""
}

// plain says whether the command's key is one of the table of bindings.
func (c command) plain() bool {
	s, ok := c.item.Shortcut.(*desktop.CustomShortcut)
	return ok && s.Modifier == 0
}

func modifiers(m fyne.KeyModifier) string {
	var s string
	for _, each := range []struct {
		m    fyne.KeyModifier
		name string
	}{{fyne.KeyModifierControl, "Ctrl+"}, {fyne.KeyModifierAlt, "Alt+"}, {fyne.KeyModifierShift, "Shift+"}, {fyne.KeyModifierSuper, "Super+"}} {
		if m&each.m != 0 {
			s += each.name
		}
	}
	return s
}

// folded is a text as it is searched for: small letters without accents.
func folded(s string) string {
	return strings.NewReplacer("á", "a", "é", "e", "í", "i", "ó", "o", "ú", "u", "ü", "u", "ñ", "n").Replace(strings.ToLower(s))
}

// Ranks of a command among those found; less comes first.
const (
	beginsWith = iota // the command's name begins with what is typed
	byWords           // every word typed begins a word of it
	inside            // what is typed stands somewhere in it
	byOthers          // every word typed begins one of the other words for it
	byMenu            // likewise with its menu
	scattered         // its letters come in this order: only where nothing fits better
	notFound
)

// rank says how well a command fits what is typed.
func (c command) rank(typed string) int {
	typed, name := folded(strings.TrimSpace(typed)), folded(c.item.Label)
	whole := folded(c.menu) + " " + name
	switch {
	case strings.HasPrefix(name, typed):
		return beginsWith
	case wordsBegin(name, typed):
		return byWords
	case strings.Contains(name, typed):
		return inside
	case wordsBegin(folded(c.also()), typed):
		return byOthers
	case wordsBegin(whole, typed):
		return byMenu
	case inOrder(name, typed):
		return scattered
	}
	return notFound
}

func wordsBegin(text, typed string) bool {
	have := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" :,(…)›", r) })
	for _, want := range strings.Fields(typed) {
		found := false
		for _, w := range have {
			found = found || strings.HasPrefix(w, want)
		}
		if !found {
			return false
		}
	}
	return true
}

func inOrder(text, typed string) bool {
	for _, r := range typed {
		i := strings.IndexRune(text, r)
		if i < 0 {
			return false
		}
		text = text[i+len(string(r)):]
	}
	return true
}

// find are the commands that fit what is typed, the best first, in the order of
// the menus where they fit alike.
func find(all []command, typed string) []command {
	var found []command
	for rank := range notFound {
		if rank == scattered && len(found) > 0 {
			break
		}
		for _, c := range all {
			if c.rank(typed) == rank {
				found = append(found, c)
			}
		}
	}
	return found
}
