package app

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
)

// No item of the menus goes beyond the edge of the smallest window; what a command
// cannot do is said beside it where there is room.
func TestMenusFitTheSmallestWindow(t *testing.T) {
	inLargeLetters(t, func(t *testing.T, b *bench) {
		b.refreshReasons()
		reasons := 0
		for _, m := range b.win.MainMenu().Items {
			for _, item := range m.Items {
				if !b.menuFits(item, item.Label) {
					t.Errorf("%s: %q goes beyond the edge", m.Label, item.Label)
				}
				if item.Disabled && strings.HasSuffix(item.Label, ")") {
					reasons++
				}
			}
		}
		if reasons == 0 {
			t.Error("no reason is said beside a command")
		}
		b.resize(fyne.NewSize(1280, 760))
		b.refreshReasons()
		for _, r := range b.reasons {
			if reason := r.why(); !strings.HasSuffix(r.item.Label, "("+reason+")") && reason != "" {
				t.Errorf("in a large window %q does not say: %s", r.item.Label, reason)
			}
		}
	})
}
