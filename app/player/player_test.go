package player

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export/sound"
)

// script is a program of these lines that stands for a player.
func script(t testing.TB, lines string) [][]string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "play")
	if err := os.WriteFile(path, []byte("#!/bin/sh\n"+lines+"\n"), 0o700); err != nil {
		t.Fatal(err)
	}
	return [][]string{{"no-such-player"}, {path, "-q"}}
}

// heard lets a player finish what it was given and closes it.
func heard(t testing.TB, p *Player) {
	t.Helper()
	p.playing.Wait()
	if err := p.Close(); err != nil {
		t.Fatal(err)
	}
}

// Each kind is played from a file of its own by the first program there is.
func TestBeep(t *testing.T) {
	log := filepath.Join(t.TempDir(), "log")
	p := newPlayer(script(t, `head -c 4 "$2" >>`+log+`; basename "$2" >>`+log))
	for _, k := range sound.Kinds() {
		p.Beep(k, 0.01)
	}
	heard(t, p)
	got, err := os.ReadFile(log)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"contact.wav", "bounce.wav", "arrival.wav", "count.wav"} {
		if strings.Count(string(got), want) != 1 {
			t.Errorf("played %q, want %s once", got, want)
		}
	}
	if strings.Count(string(got), "RIFF") != len(sound.Kinds()) || p.Why() != nil {
		t.Errorf("played %q (%v), want WAV files each time", got, p.Why())
	}
	if _, err := os.Stat(p.folder); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("the folder of beeps is still there: %v", err)
	}
}

// Without a program, or with one that fails, there is silence and a reason.
func TestSilence(t *testing.T) {
	none := newPlayer([][]string{{"no-such-player"}})
	none.Beep(sound.Contact, 0)
	heard(t, none)
	if !errors.Is(none.Why(), ErrNoProgram) {
		t.Errorf("without a program: %v, want %v", none.Why(), ErrNoProgram)
	}
	bad := newPlayer(script(t, "echo first >&2; echo 'no such device' >&2; exit 1"))
	bad.Beep(sound.Contact, 0)
	bad.playing.Wait()
	bad.Beep(sound.Contact, 0) // not tried again
	heard(t, bad)
	if got := fmt.Sprint(bad.Why()); got != "no sound: play: no such device" {
		t.Errorf("with a program that fails: %q, want its last line", got)
	}
}

// What is still to come can be taken back.
func TestHush(t *testing.T) {
	log := filepath.Join(t.TempDir(), "log")
	p := newPlayer(script(t, "echo x >>"+log))
	p.Beep(sound.Contact, 3600)
	p.Hush()
	heard(t, p)
	if _, err := os.Stat(log); !errors.Is(err, os.ErrNotExist) {
		t.Error("a beep taken back was played")
	}
}

// aplay (Debian's alsa-utils) plays every sample into a device of ALSA that
// writes a file.
func TestThroughALSA(t *testing.T) {
	folder := t.TempDir()
	file := filepath.Join(folder, "out.raw")
	conf := filepath.Join(folder, "asound.conf")
	text := fmt.Sprintf("pcm.!default { type file; slave.pcm { type null }; file %q; format raw }\n", file)
	if err := os.WriteFile(conf, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	t.Setenv("ALSA_CONFIG_PATH", conf)
	p := newPlayer([][]string{{"aplay", "-q"}})
	p.Beep(sound.Bounce, 0)
	heard(t, p)
	if err := p.Why(); err != nil {
		t.Fatal(err)
	}
	got, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var wav bytes.Buffer
	if err := sound.Write(&wav, []sound.Beep{{Kind: sound.Bounce}}, lasts); err != nil {
		t.Fatal(err)
	}
	const header = 44 // bytes before the samples, as the format has it
	if want := wav.Bytes()[header:]; !bytes.HasPrefix(got, want) || len(want) == 0 {
		t.Errorf("%d bytes are played, want the %d of the beep first", len(got), len(want))
	}
}
