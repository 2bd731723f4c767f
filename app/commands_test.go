package app

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"homeside/words"
)

// menuOf is a menu of commands, one of them in a menu of its own.
func menuOf() *fyne.MainMenu {
	inner := fyne.NewMenuItem("Covered against", nil)
	inner.ChildMenu = fyne.NewMenu("", withShortcut("a drive", nil))
	return fyne.NewMainMenu(
		fyne.NewMenu("File", withShortcut("Export…", ctrl(fyne.KeyE)), fyne.NewMenuItemSeparator(), withShortcut("Open a roster…", nil)),
		fyne.NewMenu("Play", withShortcut("New play from the score…", ctrlShift(fyne.KeyN)), withShortcut("Reproducir más", nil)),
		fyne.NewMenu("View", inner, withShortcut("Undo", &fyne.ShortcutUndo{})),
	)
}

func TestFindCommands(t *testing.T) {
	all := commands(menuOf())
	for typed, want := range map[string]string{
		"":       "Export…, Open a roster…, New play from the score…, Reproducir más, a drive, Undo",
		"exp":    "Export…",
		"new sc": "New play from the score…",
		"scORE":  "New play from the score…",
		"ost":    "Open a roster…",
		"mas":    "Reproducir más",
		"cov dr": "a drive",
		"file":   "Export…, Open a roster…",
		"nps":    "New play from the score…", // its letters in their order
		"play":   "New play from the score…, Reproducir más",
		"zz":     "",
	} {
		var got []string
		for _, c := range find(all, typed) {
			got = append(got, c.item.Label)
		}
		if s := strings.Join(got, ", "); s != want {
			t.Errorf("find(%q) = %s, want %s", typed, s, want)
		}
	}
}

func TestShortcutsAreNamed(t *testing.T) {
	want := map[string]string{"Export…": "Ctrl+E", "New play from the score…": "Ctrl+Shift+N", "Undo": "Ctrl+Z", "a drive": "", "Open a roster…": ""}
	for _, c := range commands(menuOf()) {
		if w, ok := want[c.item.Label]; ok && c.shortcut() != w {
			t.Errorf("the shortcut of %q is %q, want %q", c.item.Label, c.shortcut(), w)
		}
	}
}

// A coach's own words lead to the command that is meant, in either language; every
// command with such words is there.
func TestCommandsByOtherWords(t *testing.T) {
	for language, all := range map[words.Language]map[string]string{
		words.English: {"stack": "New play from the score…", "switch": "New play from the score…", "clip": "Export…", "video": "Export…", "picture": "Export…",
			"still": "Export…", "print": "Handout…", "handout": "Handout…", "score": "Score", "starter": "Match plan…", "undo": "Undo", "drill": "Rehearse on court, full screen"},
		words.Spanish: {"apilar": "New play from the score…", "cambio": "New play from the score…", "video": "Export…", "pelicula": "Export…", "imprimir": "Handout…", "deshacer": "Undo"},
	} {
		words.Speak(language)
		t.Cleanup(func() { words.Speak(words.English) })
		b := newBench(t)
		b.wait()
		menus := commands(b.win.MainMenu())
		for typed, want := range all {
			if found := find(menus, typed); len(found) == 0 || !strings.HasPrefix(found[0].item.Label, words.Said(want)) {
				t.Errorf("%v: %q finds %v, want %q first", language, typed, labels(found), words.Said(want))
			}
		}
		for _, o := range otherWords {
			if !slices.ContainsFunc(menus, func(c command) bool { return c.also() == words.Said(o.also) }) {
				t.Errorf("%v: the menus have no %q", language, words.Said(o.label))
			}
		}
	}
}

func labels(all []command) []string {
	var names []string
	for _, c := range all {
		names = append(names, c.item.Label)
	}
	return names
}
