package captions

import (
	"fmt"
	"math"

	"homeside/export"
	"homeside/model/units"
)

// clock turns the rally's time into that of a clip of the same options.
type clock struct {
	from, to units.Seconds // of the rally
	speed    float64
}

// clockOf checks the options against the play; nil options are the whole play.
func clockOf(p Play, o *export.Options) (clock, error) {
	c, err := o.Checked()
	if err != nil {
		return clock{}, err
	}
	from, to, err := c.Stretch(p)
	return clock{from, to, c.Speed}, err
}

// at is a moment of the play in milliseconds of the clip, on whose ends lies
// whatever is outside.
func (c clock) at(t units.Seconds) millis {
	t = min(max(t, c.from), c.to)
	return millis(math.Round(float64(t-c.from) / c.speed * 1000))
}

// timed is a line on the clip's clock.
type timed struct {
	Line
	from, to millis
}

// cut are the lines of the clip: those that last there for a millisecond and more.
func (c clock) cut(lines []Line) []timed {
	var all []timed
	for _, l := range lines {
		if t := (timed{l, c.at(l.From), c.at(l.To)}); t.from < t.to {
			all = append(all, t)
		}
	}
	return all
}

// moments are the lines of the clip, those that last no time as well.
func (c clock) moments(lines []Line) []timed {
	var all []timed
	for _, l := range lines {
		t := timed{l, c.at(l.From), c.at(l.To)}
		if t.from < t.to || l.From >= c.from && l.From <= c.to {
			all = append(all, t)
		}
	}
	return all
}

// millis is a time of the clip in ms, never below 0.
type millis int64

// stamp is hh:mm:ss and the milliseconds after a sign.
func (m millis) stamp(sign string) string {
	s := m / 1000
	return fmt.Sprintf("%02d:%02d:%02d%s%03d", s/3600, s/60%60, s%60, sign, m%1000)
}

// short is what a speaker reads: minutes, seconds and hundredths.
func (m millis) short() string {
	c := (m + 5) / 10
	return fmt.Sprintf("%d:%02d.%02d", c/6000, c/100%60, c%100)
}
