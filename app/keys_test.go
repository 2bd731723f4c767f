package app

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"homeside/words"
)

// No key means two things in one part of the window, and each says what it does.
func TestBindingsAreClear(t *testing.T) {
	type press struct {
		where part
		key   fyne.KeyName
		shift bool
	}
	seen := map[press]string{}
	for _, b := range bindings() {
		if b.says() == "" || b.name() == "" || b.do == nil {
			t.Errorf("%v in part %d: says %q, named %q", b.keys, b.where, b.says(), b.name())
		}
		for _, k := range b.keys {
			p := press{b.where, k, b.shift}
			if other, taken := seen[p]; taken {
				t.Errorf("%+v means %q and %q", p, other, b.says())
			}
			seen[p] = b.says()
		}
	}
}

// A key of a part is not one of another part; those of everywhere are every
// part's but the match plan's, which hides the rest.
func TestBindingFits(t *testing.T) {
	strip := binding{where: onStrip, keys: one(fyne.KeyN)}
	every := binding{where: anywhere, keys: one(fyne.KeyI, fyne.KeyO), shift: true}
	for _, c := range []struct {
		name  string
		b     binding
		where part
		key   fyne.KeyName
		shift bool
		want  bool
	}{
		{"its part", strip, onStrip, fyne.KeyN, false, true},
		{"another part", strip, anywhere, fyne.KeyN, false, false},
		{"with Shift", strip, onStrip, fyne.KeyN, true, false},
		{"everywhere, in a part", every, onStrip, fyne.KeyO, true, true},
		{"everywhere, without Shift", every, onStrip, fyne.KeyO, false, false},
		{"everywhere, under the match plan", every, onMatchPlan, fyne.KeyI, true, false},
	} {
		if got := c.b.fits(c.where, c.key, c.shift); got != c.want {
			t.Errorf("%s: fits = %v, want %v", c.name, got, c.want)
		}
	}
}

// The page of keys lists every binding and every shortcut of the menus, each once.
func TestPageOfKeysIsWhole(t *testing.T) {
	menu := fyne.NewMainMenu(fyne.NewMenu("File", withShortcut("Save", ctrl(fyne.KeyS)), withShortcut("Pairs", nil)))
	lines := keyLines(bindings(), commands(menu))
	for _, want := range append(bindings(), binding{keys: one("x"), says: func() string { return "File › Save" }}) {
		n := 0
		for _, l := range lines {
			if l.text == want.says() && !l.heading && (want.keys[0] == "x" && l.key == "Ctrl+S" || l.key == want.name()) {
				n++
			}
		}
		if n != 1 {
			t.Errorf("%q (%v) is listed %d times, want once", want.says(), want.keys, n)
		}
	}
	if slices.ContainsFunc(lines, func(l line) bool { return l.text == "File › Pairs" }) {
		t.Error("a command without a key is listed among the keys")
	}
}

// What is typed leaves the keys that fit, under their heading.
func TestPageOfKeysIsSearched(t *testing.T) {
	lines := []line{{text: "Everywhere", heading: true}, {text: "next event", key: "Right"}, {text: "In the strip", heading: true}, {text: "a page later", key: "Page Down"}}
	for typed, want := range map[string]int{"": 4, "right": 2, "even": 2, "page": 2, "PAGE LAT": 2, "xyz": 0} {
		if got := fitting(lines, typed); len(got) != want {
			t.Errorf("fitting(%q) = %v, want %d lines", typed, got, want)
		}
	}
}

func withShortcut(label string, s fyne.Shortcut) *fyne.MenuItem {
	m := fyne.NewMenuItem(label, func() {})
	m.Shortcut = s
	return m
}

// The menus end with a command that closes the window, in the language spoken, so that
// the toolkit adds none of its own, and call keys as the page of keys does.
func TestMenusInSpanish(t *testing.T) {
	words.Speak(words.Spanish)
	t.Cleanup(func() { words.Speak(words.English) })
	b := newBench(t)
	b.wait()
	file := b.win.MainMenu().Items[0].Items
	if last := file[len(file)-1]; !last.IsQuit || last.Label != "Salir" || last.Action == nil {
		t.Errorf("the first menu ends with %q, quit %v", last.Label, last.IsQuit)
	}
	for k, want := range map[fyne.KeyName]fyne.KeyName{fyne.KeySpace: "Espacio", fyne.KeyRight: fyne.KeyRight, fyne.KeyDelete: "Supr"} {
		if got := plain(k).(*desktop.CustomShortcut).KeyName; got != want {
			t.Errorf("the menus call %s %q, want %q", k, got, want)
		}
	}
}
