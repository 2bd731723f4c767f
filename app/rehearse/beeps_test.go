package rehearse

import (
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"homeside/app/rehearsal"
	"homeside/export/sound"
)

// Every beep of a round is played, each kind from its own file, by whatever program
// the system has; silenced, none is.
func TestBeeps(t *testing.T) {
	folder := t.TempDir()
	log := filepath.Join(folder, "log")
	script := "#!/bin/sh\nbasename \"$1\" >>" + log + "\n"
	if err := os.WriteFile(filepath.Join(folder, "pw-play"), []byte(script), 0o700); err != nil {
		t.Fatal(err)
	}
	t.Setenv("PATH", folder+":"+os.Getenv("PATH"))
	b := opened(t)
	b.walk.choose(func(c *choices) { c.speed, c.rounds, c.count = rehearsal.Match, 1, 3 })
	b.press(fyne.KeyPageDown, fyne.KeySpace)
	b.pass(30)
	b.phase(rehearsal.Done)
	want := map[string]int{"count.wav": 3}
	for _, beep := range sound.Of(b.walk.rally).Beeps {
		want[beep.Kind.String()+".wav"]++
	}
	if len(want) != 4 {
		t.Fatalf("the play has the beeps %v, want all kinds", want)
	}
	var got map[string]int
	for late := time.Now().Add(20 * time.Second); !maps.Equal(got, want) && time.Now().Before(late); {
		got = playedBy(log)
	}
	if !maps.Equal(got, want) {
		t.Errorf("played are %v, want %v", got, want)
	}
	b.press(fyne.KeyM, fyne.KeySpace)
	b.pass(30)
	b.win.Close() // which waits for what plays
	if got := playedBy(log); !maps.Equal(got, want) {
		t.Errorf("silenced, it has played %v in all, want still %v", got, want)
	}
}

// playedBy counts the lines of a log.
func playedBy(log string) map[string]int {
	data, _ := os.ReadFile(log) // it may not be there yet
	played := map[string]int{}
	for _, line := range strings.Fields(string(data)) {
		played[line]++
	}
	return played
}
