package app

import (
	"time"

	"fyne.io/fyne/v2"

	"homeside/app/session"
	"homeside/model/units"
)

// frameClock lets the session's time pass while a play runs: the toolkit ticks
// before every paint, the clock measures what has really gone by.
type frameClock struct {
	session *session.Session
	tick    *fyne.Animation
	last    time.Time
	running bool
}

func newFrameClock(s *session.Session) *frameClock {
	c := &frameClock{session: s}
	c.tick = &fyne.Animation{Duration: time.Hour, RepeatCount: fyne.AnimationRepeatForever, Curve: fyne.AnimationLinear, Tick: c.pass}
	return c
}

// follow starts or stops the ticks with the session.
func (c *frameClock) follow() {
	if c.running == c.session.Playing() {
		return
	}
	c.running = c.session.Playing()
	if c.running {
		c.last = time.Now()
		c.tick.Start()
	} else {
		c.tick.Stop()
	}
}

func (c *frameClock) pass(float32) {
	if !c.running {
		return
	}
	now := time.Now()
	dt := now.Sub(c.last)
	c.last = now
	c.session.Advance(units.Seconds(dt.Seconds()))
}
