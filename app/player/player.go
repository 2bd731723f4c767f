package player

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"time"

	"homeside/export/sound"
	"homeside/model/units"
)

// programs that play a WAV file named on their command line and end, in the
// order of preference: PipeWire's, PulseAudio's, ALSA's, and the one of macOS.
var programs = [][]string{{"pw-play"}, {"paplay"}, {"aplay", "-q"}, {"afplay"}}

// ErrNoProgram says that the system has no program for playing WAV files.
var ErrNoProgram = errors.New("no sound: install pw-play, paplay or aplay (on Debian the package alsa-utils) to hear beeps")

// ring is a beep's file and how long a program may take to play it before it
// is taken for stuck.
const (
	lasts units.Seconds = 0.1
	stuck               = 3 * time.Second
)

// Player plays beeps. Use New, and Close at the end.
type Player struct {
	program []string
	folder  string
	ctx     context.Context
	cancel  context.CancelFunc

	mu      sync.Mutex
	why     error // of the silence; nil while nothing has failed
	timers  map[*time.Timer]bool
	playing sync.WaitGroup
}

// New finds a program and writes the beeps for it into a folder for temporary
// files. Without a program the player is silent.
func New() *Player { return newPlayer(programs) }

func newPlayer(programs [][]string) *Player {
	p := &Player{timers: map[*time.Timer]bool{}}
	p.ctx, p.cancel = context.WithCancel(context.Background())
	if p.program = find(programs); p.program == nil {
		p.why = ErrNoProgram
		return p
	}
	if err := p.write(); err != nil {
		p.why = fmt.Errorf("no sound: %w", err)
	}
	return p
}

func find(programs [][]string) []string {
	for _, p := range programs {
		if path, err := exec.LookPath(p[0]); err == nil {
			return append([]string{path}, p[1:]...)
		}
	}
	return nil
}

// write puts each kind of beep into a file.
func (p *Player) write() error {
	folder, err := os.MkdirTemp("", "homeside-beeps-")
	if err != nil {
		return err
	}
	p.folder = folder
	for _, k := range sound.Kinds() {
		var b bytes.Buffer
		if err := sound.Write(&b, []sound.Beep{{Kind: k}}, lasts); err != nil {
			return err
		}
		if err := os.WriteFile(p.file(k), b.Bytes(), 0o600); err != nil {
			return err
		}
	}
	return nil
}

func (p *Player) file(k sound.Kind) string { return filepath.Join(p.folder, k.String()+".wav") }

// Why is the reason of the silence; nil while beeps are heard.
func (p *Player) Why() error {
	p.mu.Lock()
	defer p.mu.Unlock()
	return p.why
}

// Beep plays a beep in so much time and returns at once.
func (p *Player) Beep(k sound.Kind, after units.Seconds) {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.why != nil || p.ctx.Err() != nil {
		return
	}
	p.playing.Add(1)
	var t *time.Timer
	t = time.AfterFunc(time.Duration(float64(after)*float64(time.Second)), func() {
		defer p.playing.Done()
		p.mu.Lock()
		delete(p.timers, t)
		p.mu.Unlock()
		p.play(k)
	})
	p.timers[t] = true
}

// Hush forgets the beeps that are still to come.
func (p *Player) Hush() {
	p.mu.Lock()
	defer p.mu.Unlock()
	for t := range p.timers {
		if t.Stop() {
			p.playing.Done()
		}
		delete(p.timers, t)
	}
}

// play runs the program. The first failure ends the sound: a device that is not
// there will not come with the next beep.
func (p *Player) play(k sound.Kind) {
	ctx, cancel := context.WithTimeout(p.ctx, stuck)
	defer cancel()
	out, err := exec.CommandContext(ctx, p.program[0], append(p.program[1:], p.file(k))...).CombinedOutput()
	if err == nil || p.ctx.Err() != nil {
		return
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	p.why = fmt.Errorf("no sound: %s: %s", filepath.Base(p.program[0]), lastLine(out, err))
}

// lastLine is the last thing a program said, or how it ended.
func lastLine(out []byte, err error) string {
	lines := strings.Split(strings.TrimSpace(string(out)), "\n")
	if last := lines[len(lines)-1]; last != "" {
		return last
	}
	return err.Error()
}

// Close ends what plays and removes the files.
func (p *Player) Close() error {
	p.Hush()
	p.cancel()
	p.playing.Wait()
	if p.folder == "" {
		return nil
	}
	return os.RemoveAll(p.folder)
}
