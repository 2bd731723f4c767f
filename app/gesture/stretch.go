package gesture

import "homeside/model/units"

// Looper is what choosing a stretch of time needs of a session.
type Looper interface {
	Loop() (from, to units.Seconds, on bool)
	SetLoop(a, b units.Seconds)
	NoLoop()
}

// Stretch chooses the stretch of a rally that is played again and again. The
// zero value waits for Press.
type Stretch struct {
	looper Looper
	fixed  units.Seconds // the end that stays
	start  units.Seconds
	down   bool
	moving bool
	before struct { // what Cancel puts back
		from, to units.Seconds
		on       bool
	}
}

// Press begins a new stretch with the pointer at time t.
func (d *Stretch) Press(l Looper, t units.Seconds) {
	d.Take(l, t, t)
}

// Take takes hold of one end of a stretch, with the pointer at time t; fixed is
// the other.
func (d *Stretch) Take(l Looper, t, fixed units.Seconds) {
	*d = Stretch{looper: l, fixed: fixed, start: t, down: true}
	d.before.from, d.before.to, d.before.on = l.Loop()
}

// Down says whether a stretch is being chosen.
func (d *Stretch) Down() bool { return d.down }

// Move leads the loose end to time t; nothing happens before the pointer has
// moved by slack.
func (d *Stretch) Move(t, slack units.Seconds) {
	if !d.down || !d.moving && max(t-d.start, d.start-t) < slack {
		return
	}
	d.moving = true
	d.looper.SetLoop(d.fixed, t)
}

// Release ends it and says whether a stretch was chosen: false for a click.
func (d *Stretch) Release() bool {
	moved := d.down && d.moving
	*d = Stretch{}
	return moved
}

// Cancel ends it and puts back what was played again and again before.
func (d *Stretch) Cancel() {
	if b := d.before; d.down && d.moving {
		d.looper.NoLoop()
		if b.on {
			d.looper.SetLoop(b.from, b.to)
		}
	}
	*d = Stretch{}
}
