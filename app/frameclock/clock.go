package frameclock

import (
	"time"

	"fyne.io/fyne/v2"

	"homeside/model/units"
)

// Clock lets time pass while something runs: the toolkit ticks before every
// paint, the clock measures what has really gone by. Use New.
type Clock struct {
	runs func() bool
	pass func(units.Seconds)
	tick *fyne.Animation
	last time.Time
	on   bool
}

// New is a clock for what runs at times; pass is called with the time gone by.
func New(runs func() bool, pass func(units.Seconds)) *Clock {
	c := &Clock{runs: runs, pass: pass}
	c.tick = &fyne.Animation{Duration: time.Hour, RepeatCount: fyne.AnimationRepeatForever, Curve: fyne.AnimationLinear, Tick: c.passed}
	return c
}

// Follow starts or stops the ticks with what runs.
func (c *Clock) Follow() {
	if c.on == c.runs() {
		return
	}
	c.on = c.runs()
	if c.on {
		c.last = time.Now()
		c.tick.Start()
	} else {
		c.tick.Stop()
	}
}

func (c *Clock) passed(float32) {
	if !c.on {
		return
	}
	now := time.Now()
	dt := now.Sub(c.last)
	c.last = now
	c.pass(units.Seconds(dt.Seconds()))
}
