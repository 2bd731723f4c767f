package app

import (
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
)

// buttonsIn are the buttons shown in a part of the window.
func buttonsIn(o fyne.CanvasObject) (all []*heard.Button) {
	if o == nil || !o.Visible() {
		return nil
	}
	var inner []fyne.CanvasObject
	switch o := o.(type) {
	case *heard.Button:
		return []*heard.Button{o}
	case *fyne.Container:
		inner = o.Objects
	case *container.Scroll:
		inner = []fyne.CanvasObject{o.Content}
	case *container.Split:
		inner = []fyne.CanvasObject{o.Leading, o.Trailing}
	case *container.ThemeOverride:
		inner = []fyne.CanvasObject{o.Content}
	case *widget.PopUp:
		inner = []fyne.CanvasObject{o.Content}
	}
	for _, i := range inner {
		all = append(all, buttonsIn(i)...)
	}
	return all
}

// offButtons are those shown in the window, or in the dialog over it, that are off.
// It fails on any that does not say why, and on any with neither text nor tip.
func (b *bench) offButtons(where string) (off int) {
	b.t.Helper()
	var over fyne.CanvasObject = container.NewStack(b.tabs.Box, b.editing.Box, b.plan.Box, b.reels.Box, b.exports.Box, b.photos.page.Box, b.start.Box)
	if q := b.question(); q != nil {
		over = q.overlay
	}
	all := buttonsIn(over)
	if len(all) == 0 {
		b.t.Errorf("%s: no button is found", where)
	}
	for _, one := range all {
		if one.Text == "" && one.Tip() == "" {
			b.t.Errorf("%s: a button with a sign alone says nothing", where)
		}
		if !one.Disabled() {
			continue
		}
		off++
		if !strings.HasSuffix(one.Tip(), ".") {
			b.t.Errorf("%s: %q is off and says %q, want a reason", where, one.Text, one.Tip())
		}
	}
	return off
}

// Every button that is off says why, on every page and in every dialog.
func TestButtonsThatAreOffSayWhy(t *testing.T) {
	b := dialogBench(t)
	pages := []struct {
		name string
		open func()
		off  int // at least
	}{
		{"court", func() {}, 0},
		{"match plan", b.openMatchPlan, 0},
		{"pairs", b.showPairs, 3},
		{"chances that are none", func() { b.openMatchPlan(); typeInto(b.plan.Named()["plan-near"], "many") }, 1},
		{"signals that are none", func() {
			b.openMatchPlan()
			press(b.plan.Named()["plan-view-3"])
			typeInto(b.plan.Named()["signals-length"], "0")
		}, 1},
		{"no reel", b.openReels, 0},
		{"a reel of nothing", func() { b.openReels(); b.session.AddReel(); b.emptyReel() }, 4},
		{"a reel's card", func() { b.openReels(); b.session.AddReel(); b.session.PickTake(session.TitleCard) }, 4},
		{"a reel's only take", func() { b.openReels(); b.session.AddReel(); b.emptyReel(); b.session.AddTake() }, 2},
		{"exports", b.askExport, 0},
		{"photo", b.openPhoto, 0},
		{"photo that is not there", func() { b.openPhoto(); b.session.PutPhoto("gone.png", 400, 300) }, 5},
		{"start", func() { b.openStart(); typeInto(b.start.Named()["start-call"], "4-7") }, 1},
	}
	for _, p := range pages {
		b.anew()
		p.open()
		b.wait()
		if off := b.offButtons(p.name); off < p.off {
			t.Errorf("%s: %d buttons are off, want %d or more", p.name, off, p.off)
		}
	}
	off := 0
	for _, name := range slices.Sorted(maps.Keys(dialogs)) {
		b.openDialog(name)
		off += b.offButtons(name)
		b.escapeAll(name)
	}
	if off == 0 {
		t.Error("in no dialog is a button off, want the one that imports")
	}
}

// emptyReel takes all takes out of the reel worked on.
func (b *bench) emptyReel() {
	for range 20 {
		b.session.PickTake(0)
		b.session.DeleteTake()
	}
}

func press(o fyne.CanvasObject) { o.(*heard.Button).OnTapped() }

// typeInto types a text in place of a field's own and leaves it.
func typeInto(o fyne.CanvasObject, text string) {
	e := o.(interface {
		fyne.Focusable
		SetText(string)
	})
	e.FocusGained()
	e.SetText(text)
	e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	e.FocusLost()
}

// A button is turned off by its reason, never without one.
func TestNoButtonIsOffWithoutAReason(t *testing.T) {
	others := map[string]int{ // what is turned off that is no button
		"panel/takeform.go": 2, "photopage/page.go": 1, "handout.go": 1,
	}
	seen := 0
	for _, pattern := range []string{"*.go", "*/*.go"} {
		files, err := filepath.Glob(pattern)
		if err != nil {
			t.Fatal(err)
		}
		for _, path := range files {
			if strings.HasSuffix(path, "_test.go") || path == filepath.Join("heard", "button.go") {
				continue
			}
			text, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			n := strings.Count(string(text), ".Disable()") + strings.Count(string(text), ".Disable,")
			if want := others[filepath.ToSlash(path)]; n != want {
				t.Errorf("%s turns off %d controls, want %d: buttons are turned off by Unless", path, n, want)
			}
			seen += n
		}
	}
	if seen != 4 {
		t.Errorf("%d controls are found, want 4", seen)
	}
}
