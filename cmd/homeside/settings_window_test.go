//go:build window

package main

import (
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2/theme"

	"homeside/app/looks"
	"homeside/app/settings"
)

// The settings are chosen by keys alone, hold at once where they can, and hold at
// the next start: language, look, motion, measures.
func TestSettingsByKeys(t *testing.T) {
	path, _ := copyLesson(t)
	w := openWindow(t, path)
	w.screenshot("settings-before.png")
	w.looks(t, "settings-before.png", settings.Light) // the desktop here says nothing

	w.keys("ctrl+comma")
	w.waitFor("asking the settings")
	w.keys("Right")                                  // the other language
	w.keys("Tab", "Right", "Right")                  // by the desktop, light, dark
	w.keys("Tab", "space", "Down", "Down", "Return") // from the list of measures
	w.keys("Tab", "Tab", "space")                    // past large text to reduced motion
	w.screenshot("settings-asking.png")
	w.keys("Return")
	w.waitFor("settings es dark large=false reduced=true m")
	w.waitFor("painted")
	w.screenshot("settings-dark.png")
	w.looks(t, "settings-dark.png", settings.Dark)
	w.keys("alt+F4")
	w.waitFor("closed")
	if err := w.editor.Wait(); err != nil {
		t.Fatalf("the editor ends with %v", err)
	}
	w.keptSettings(t, map[string]any{"language": "es", "look": "dark", "large text": false, "reduced motion": true, "measures": "m"})

	w.open(path)
	w.waitFor("painted")
	w.activate()
	w.keys("ctrl+comma")
	w.waitFor("asking Ajustes")
	w.waitFor("asking the settings")
	w.screenshot("settings-spanish.png")
	w.looks(t, "settings-spanish.png", settings.Dark)
	w.keys("Escape")
	w.keys("ctrl+3", "2", "Up")
	w.waitFor(`step "mover`)
	w.screenshot("settings-metres.png")
}

// keptSettings compares settings with the file that they are kept in.
func (w *window) keptSettings(t *testing.T, want map[string]any) {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(w.home, "config", "fyne", appID, "preferences.json"))
	kept := map[string]any{}
	if err == nil {
		err = json.Unmarshal(text, &kept)
	}
	if err != nil {
		t.Fatal(err)
	}
	maps.DeleteFunc(kept, func(name string, _ any) bool { _, asked := want[name]; return !asked })
	if !maps.Equal(kept, want) {
		t.Errorf("the settings kept are %v, want %v", kept, want)
	}
}

// looks fails unless a tenth of a screenshot at least is paper of a look, within 2
// of 255 in every channel.
func (w *window) looks(t *testing.T, screenshot string, l settings.Look) {
	t.Helper()
	const tolerance = 2
	picture := readPicture(t, filepath.Join(screenshots, screenshot))
	paper := looks.Of(settings.Settings{Look: l}).Color(theme.ColorNameBackground, theme.VariantLight)
	r, g, b, _ := paper.RGBA()
	n, all := 0, picture.Bounds()
	for y := all.Min.Y; y < all.Max.Y; y++ {
		for x := all.Min.X; x < all.Max.X; x++ {
			pr, pg, pb, _ := picture.At(x, y).RGBA()
			if apart(uint8(pr>>8), uint8(r>>8)) <= tolerance && apart(uint8(pg>>8), uint8(g>>8)) <= tolerance && apart(uint8(pb>>8), uint8(b>>8)) <= tolerance {
				n++
			}
		}
	}
	if share := float64(n) / float64(all.Dx()*all.Dy()); share < 0.1 {
		t.Errorf("%s: %.3f of it is paper of the look %d, want 0.1", screenshot, share, l)
	}
}
