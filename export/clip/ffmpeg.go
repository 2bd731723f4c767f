package clip

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"strings"
	"sync"
	"sync/atomic"
	"time"
)

// FFmpegError says why ffmpeg did not do its part.
type FFmpegError struct {
	Err  error
	Last string // the last line that ffmpeg wrote, if any
}

// ErrNoFFmpeg is the Err of an FFmpegError if there is no ffmpeg.
var ErrNoFFmpeg = errors.New("this format needs the program ffmpeg, which is not installed (Debian and Ubuntu: apt install ffmpeg; others: ffmpeg.org)")

func (e *FFmpegError) Error() string {
	if e.Last == "" {
		return e.Err.Error()
	}
	return fmt.Sprintf("%v: %s", e.Err, e.Last)
}

func (e *FFmpegError) Unwrap() error { return e.Err }

// FindFFmpeg is an *FFmpegError if there is no ffmpeg on this machine.
func FindFFmpeg() error {
	_, err := ffmpegPath()
	return err
}

func ffmpegPath() (string, error) {
	path, err := exec.LookPath("ffmpeg")
	if err != nil {
		return "", &FFmpegError{Err: ErrNoFFmpeg}
	}
	return path, nil
}

// ffmpeg is a running ffmpeg that is fed with frames. It is stopped when its
// context ends, and when it does nothing for too long.
type ffmpeg struct {
	ctx      context.Context
	cmd      *exec.Cmd
	in       io.WriteCloser
	said     *tail
	taken    atomic.Int64 // frames
	stop     context.CancelFunc
	patience time.Duration
	idle     error         // why it was stopped, if it was; there once watched is closed
	watched  chan struct{} // closed when nobody watches any more
}

// startFFmpeg starts it; the last of the arguments is the file that it makes.
func startFFmpeg(ctx context.Context, patience time.Duration, args ...string) (*ffmpeg, error) {
	path, err := ffmpegPath()
	if err != nil {
		return nil, err
	}
	p := &ffmpeg{ctx: ctx, said: &tail{}, patience: patience, watched: make(chan struct{})}
	running, stop := context.WithCancel(ctx)
	p.stop = stop
	p.cmd = exec.CommandContext(running, path, append([]string{"-v", "error", "-nostats", "-y"}, args...)...)
	p.cmd.Stderr, p.cmd.WaitDelay = p.said, time.Second
	alone(p.cmd)
	if p.in, err = p.cmd.StdinPipe(); err == nil {
		widen(p.in)
		err = p.cmd.Start()
	}
	if err != nil {
		stop()
		return nil, fmt.Errorf("start ffmpeg: %w", err)
	}
	go p.watch(running, args[len(args)-1])
	return p, nil
}

// write gives ffmpeg a frame; after an error, finish says why.
func (p *ffmpeg) write(frame []byte) error {
	_, err := p.in.Write(frame)
	p.taken.Add(1)
	return err
}

// finish waits for the end of ffmpeg and whatever it started.
func (p *ffmpeg) finish() error {
	closing := p.in.Close()
	err := p.cmd.Wait()
	p.stop()
	<-p.watched
	if errors.Is(err, exec.ErrWaitDelay) {
		err = nil // it ended well; only what it started still holds its error output
		endGroup(p.cmd)
	}
	switch {
	case p.ctx.Err() != nil:
		return p.ctx.Err()
	case err == nil && closing == nil:
		return nil
	case p.idle != nil:
		return &FFmpegError{p.idle, p.said.last()}
	case err != nil:
		return &FFmpegError{fmt.Errorf("ffmpeg failed (%w)", err), p.said.last()}
	}
	return &FFmpegError{errors.New("ffmpeg did not take all frames"), p.said.last()}
}

// tail keeps the end of what is written to it.
type tail struct {
	mu  sync.Mutex
	end []byte
	n   int // bytes that came
}

const tailSize = 4096

func (t *tail) Write(b []byte) (int, error) {
	t.mu.Lock()
	defer t.mu.Unlock()
	t.n += len(b)
	t.end = append(t.end, b...)
	t.end = t.end[max(len(t.end)-tailSize, 0):]
	return len(b), nil
}

// count is how much was written.
func (t *tail) count() int {
	t.mu.Lock()
	defer t.mu.Unlock()
	return t.n
}

// last is the last line that is not blank.
func (t *tail) last() string {
	t.mu.Lock()
	defer t.mu.Unlock()
	text := bytes.TrimSpace(t.end)
	return strings.TrimSpace(string(text[bytes.LastIndexByte(text, '\n')+1:]))
}
