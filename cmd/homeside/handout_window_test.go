//go:build window

package main

import (
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// A storyboard of all plays, printed from the window by its keys.
func TestPrintAHandout(t *testing.T) {
	path, l := copyLesson(t)
	out := filepath.Join(t.TempDir(), "board.pdf")
	w := openWindow(t, path)
	w.keys("ctrl+p")
	w.waitFor("asking A handout on paper")
	w.screenshot("handout.png")
	w.typeText(out)
	w.keys("Return")
	w.waitFor("exported " + out)
	w.screenshot("handout-done.png")
	text, err := exec.Command("pdftotext", "-raw", out, "-").Output()
	if err != nil {
		t.Fatalf("pdftotext (Debian package poppler-utils): %v", err)
	}
	for _, want := range []string{"Storyboard", l.Plays[0].Title, l.Plays[2].Title} {
		if !strings.Contains(string(text), want) {
			t.Errorf("the sheet lacks %q:\n%s", want, text)
		}
	}
}
