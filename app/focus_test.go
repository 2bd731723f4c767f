package app

import (
	"slices"
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
	if seen["Ctrl+K"] == "" || seen["Ctrl+Z"] == "" {
		t.Errorf("the shortcuts are %v, want Ctrl+K and Ctrl+Z among them", seen)
	}
}
