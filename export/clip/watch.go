package clip

import (
	"context"
	"fmt"
	"os"
	"time"
)

// signs show whether ffmpeg works. Besides the frames that it takes these are
// what it says, the file that it makes, which it writes a second time at the
// end, and the time that it computes: on a busy machine, and for the last
// frames of a large clip, a minute is soon gone without anything else.
type signs struct {
	outward  outward
	computed time.Duration
}

type outward struct {
	taken   int64 // frames
	said    int   // bytes
	size    int64 // of the file
	written time.Time
}

func (p *ffmpeg) signs(path string) signs {
	s := signs{outward{taken: p.taken.Load(), said: p.said.count()}, computed(p.cmd.Process.Pid)}
	if info, err := os.Stat(path); err == nil {
		s.outward.size, s.outward.written = info.Size(), info.ModTime()
	}
	return s
}

const (
	looks = 8  // at the signs while patience lasts
	spins = 10 // times patience that ffmpeg may compute without anything to show for it
)

// watch stops ffmpeg when it has shown no sign for as long as patience lasts.
func (p *ffmpeg) watch(running context.Context, path string) {
	defer close(p.watched)
	every := time.NewTicker(p.patience / looks)
	defer every.Stop()
	switch ended := wait(running, every.C, func() signs { return p.signs(path) }); ended {
	case idle:
		p.idle = fmt.Errorf("ffmpeg did nothing for %v and was stopped", p.patience)
	case spinning:
		p.idle = fmt.Errorf("ffmpeg came to nothing in %v and was stopped", spins*p.patience)
	}
	p.stop()
}

// ending is how a wait ended.
type ending uint8

const (
	over     ending = iota
	idle            // no sign
	spinning        // nothing to show for the time that it computed
)

// wait looks at the signs until it is over or too long nothing came. It counts
// looks, not time: if this program gets no time either, nobody is to blame.
func wait(running context.Context, every <-chan time.Time, now func() signs) ending {
	last, still, spun := now(), 0, 0
	for still < looks && spun < looks*spins {
		select {
		case <-running.Done():
			return over
		case <-every:
		}
		s := now()
		still, spun = still+1, spun+1
		if s.computed != last.computed {
			still = 0
		}
		if s.outward != last.outward {
			still, spun = 0, 0
		}
		last = s
	}
	if still < looks {
		return spinning
	}
	return idle
}
