package app

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
)

// The Tab key goes through the score, the plays, the court, the rally strip and
// the cards in this order, and round again.
func TestTabOrder(t *testing.T) {
	b := newBench(t)
	b.wait()
	b.newLesson()
	parts := []fyne.Focusable{firstControl(b.score.Box), b.plays.List, b.court, b.strip, firstControl(b.cards.shot.Detail)}
	var order []int
	c := b.win.Canvas()
	c.Focus(parts[0])
	if c.Focused() == nil || c.Focused() != parts[0] {
		t.Fatalf("the score does not take the keys: %v", c.Focused())
	}
	for range 200 {
		if i := slices.Index(parts, c.Focused()); i >= 0 {
			order = append(order, i)
		}
		c.FocusNext()
		if c.Focused() == parts[0] {
			break
		}
	}
	if want := []int{0, 1, 2, 3, 4}; !slices.Equal(order, want) {
		t.Errorf("the Tab key goes through the parts as %v, want %v", order, want)
	}
}

// No two commands of the menus have the same key, and every command says something.
func TestShortcutsAreClear(t *testing.T) {
	b := newBench(t)
	b.wait()
	seen := map[string]string{}
	for _, c := range commands(b.win.MainMenu()) {
		if c.item.Label == "" {
			t.Errorf("a command of the menu %s says nothing", c.menu)
		}
		key := c.shortcut()
		if other, taken := seen[key]; taken && key != "" {
			t.Errorf("%s does %q and %q", key, other, c.item.Label)
		}
		seen[key] = c.item.Label
	}
	for _, c := range commands(b.win.MainMenu()) {
		if c.plain() && !slices.ContainsFunc(b.bindings, func(g binding) bool {
			return slices.Contains(strings.Split(g.name(), ", "), c.shortcut()) && (g.where == anywhere || g.where == onCourt)
		}) {
			t.Errorf("the menu shows the key %s for %q, which no binding has", c.shortcut(), c.item.Label)
		}
	}
	if seen["Ctrl+K"] == "" || seen["Ctrl+Z"] == "" {
		t.Errorf("the shortcuts are %v, want Ctrl+K and Ctrl+Z among them", seen)
	}
}

// A command that cannot be done says why: greyed out with the reason beside its
// name, and in the status line where its key is pressed all the same.
func TestCommandsSayWhyNot(t *testing.T) {
	b := newBench(t)
	b.wait()
	b.newLesson()
	labels := func() map[string]bool {
		all := map[string]bool{}
		for _, c := range commands(b.win.MainMenu()) {
			all[c.item.Label] = c.item.Disabled
		}
		return all
	}
	for label, off := range map[string]bool{
		"Undo (there is nothing to undo)":                                    true,
		"Stop comparing (no play is compared with this one)":                 true,
		"Compare with another play… (there is no other play in this lesson)": true,
		"Duplicate this play":                                                false,
	} {
		if got, ok := labels()[label]; !ok || got != off {
			t.Errorf("the menus have %q: %v, off %v, want off %v", label, ok, got, off)
		}
	}
	for _, c := range commands(b.win.MainMenu()) {
		if c.shortcut() == "Ctrl+Z" {
			c.item.Action()
		}
	}
	if got, want := b.status.Text, "There is nothing to undo."; got != want {
		t.Errorf("Ctrl+Z says %q, want %q", got, want)
	}
	b.session.DuplicatePlay()
	for label, off := range map[string]bool{"Undo: duplicate a play": false, "Compare with another play…": false} {
		if got, ok := labels()[label]; !ok || got != off {
			t.Errorf("after duplicating, the menus have %q: %v, off %v, want off %v", label, ok, got, off)
		}
	}
}
