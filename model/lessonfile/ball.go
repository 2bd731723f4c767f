package lessonfile

import (
	"fmt"
	"strings"

	"homeside/model/lesson"
	"homeside/model/units"
)

type conditions struct {
	Ball        string                `json:"ball,omitzero"`
	Altitude    units.Metres          `json:"altitude_m,omitzero"`
	Temperature *float64              `json:"temperature_c,omitzero"`
	WindX       units.MetresPerSecond `json:"wind_x_mps,omitzero"`
	WindY       units.MetresPerSecond `json:"wind_y_mps,omitzero"`
	Restitution float64               `json:"restitution,omitzero"`
	Friction    float64               `json:"friction,omitzero"`
	Lift        float64               `json:"lift,omitzero"`
}

// vocabulary is by the names of the kinds of shot.
type vocabulary struct {
	Serve      *manner `json:"serve,omitzero"`
	WideServe  *manner `json:"wide-serve,omitzero"`
	FlatReturn *manner `json:"flat-return,omitzero"`
	DeepReturn *manner `json:"deep-return,omitzero"`
	Drive      *manner `json:"drive,omitzero"`
	Drop       *manner `json:"drop,omitzero"`
	Dink       *manner `json:"dink,omitzero"`
	Lob        *manner `json:"lob,omitzero"`
}

// fields are the entries in the order of lesson.ShotKinds.
func (v *vocabulary) fields() [len(lesson.ShotKinds)]**manner {
	return [...]**manner{&v.Serve, &v.WideServe, &v.FlatReturn, &v.DeepReturn, &v.Drive, &v.Drop, &v.Dink, &v.Lob}
}

type figure struct {
	Apex     *units.Feet            `json:"apex_ft,omitzero"`
	Speed    *units.MetresPerSecond `json:"speed_mps,omitzero"`
	Time     *units.Seconds         `json:"time_s,omitzero"`
	NetClear *units.Feet            `json:"net_clear_ft,omitzero"`
}

type manner struct {
	figure `json:",inline"`
	Arc    string    `json:"arc,omitzero"`
	Spin   units.RPM `json:"spin_rpm,omitzero"`
	Side   units.RPM `json:"side_rpm,omitzero"`
}

type aimError struct {
	Speed units.MetresPerSecond `json:"speed_mps,omitzero"`
	Angle units.Degrees         `json:"angle_deg,omitzero"`
}

var ballNames = [...]string{"outdoor", "indoor"}

func parseBall(s string) (indoor bool, err error) {
	for i, n := range ballNames {
		if n == s {
			return i == 1, nil
		}
	}
	return false, fmt.Errorf("ball %q: want outdoor or indoor", s)
}

func (r *reader) conditions(c conditions) lesson.Conditions {
	return lesson.Conditions{
		Indoor:   named(r, "ball", c.Ball, parseBall),
		Altitude: c.Altitude, Temperature: c.Temperature, WindX: c.WindX, WindY: c.WindY,
		Restitution: c.Restitution, Friction: c.Friction, Lift: c.Lift,
	}
}

func toConditions(c lesson.Conditions) conditions {
	out := conditions{"", c.Altitude, c.Temperature, c.WindX, c.WindY, c.Restitution, c.Friction, c.Lift}
	if c.Indoor {
		out.Ball = ballNames[1]
	}
	return out
}

func (r *reader) vocabulary(v vocabulary) (out lesson.Vocabulary) {
	for i, m := range v.fields() {
		if k := lesson.ShotKinds[i]; *m != nil {
			r.in(k.String(), func() {
				out[k] = &lesson.Manner{
					Intent: r.intent((*m).figure), Spin: (*m).Spin, Side: (*m).Side,
					Arc: named(r, "arc", (*m).Arc, lesson.ParseArc),
				}
			})
		}
	}
	return out
}

func toVocabulary(v lesson.Vocabulary) (out vocabulary) {
	for i, m := range out.fields() {
		if own := v[lesson.ShotKinds[i]]; own != nil {
			*m = &manner{toFigure(own.Intent), unlessZero(own.Arc), own.Spin, own.Side}
		}
	}
	return out
}

// hit fills in how a shot is hit. One with a word and no figure is hit in the
// lesson's manner, but for an arc or a spin that it states itself.
func (r *reader) hit(out *lesson.Shot, s shot) {
	if out.Kind == lesson.OwnShot || s.figure != (figure{}) {
		out.Intent = r.intent(s.figure)
		return
	}
	m := r.words.Manner(out.Kind)
	out.Intent = m.Intent
	if s.Arc == "" {
		out.Arc = m.Arc
	}
	if s.Spin == 0 {
		out.Spin = m.Spin
	}
	if s.Side == 0 {
		out.Side = m.Side
	}
}

func (r *reader) intent(f figure) (in lesson.Intent) {
	var given []string
	if f.Apex != nil {
		in, given = lesson.Apex(*f.Apex), append(given, lesson.ByApex.String())
	}
	if f.Speed != nil {
		in, given = lesson.Speed(*f.Speed), append(given, lesson.BySpeed.String())
	}
	if f.Time != nil {
		in, given = lesson.Time(*f.Time), append(given, lesson.ByTime.String())
	}
	if f.NetClear != nil {
		in, given = lesson.NetClear(*f.NetClear), append(given, lesson.ByNetClear.String())
	}
	switch len(given) {
	case 1:
	case 0:
		r.fail("", fmt.Errorf("a shot needs one of %s", strings.Join(lesson.IntentNames[:], ", ")))
	default:
		r.fail(given[1], fmt.Errorf("a shot takes one figure, not %s together", strings.Join(given, " and ")))
	}
	return in
}

func toFigure(in lesson.Intent) (f figure) {
	switch in.Kind {
	case lesson.ByApex:
		f.Apex = &in.Apex
	case lesson.BySpeed:
		f.Speed = &in.Speed
	case lesson.ByTime:
		f.Time = &in.Time
	case lesson.ByNetClear:
		f.NetClear = &in.NetClear
	}
	return f
}

func (e *aimError) aimError() *lesson.AimError {
	if e == nil {
		return nil
	}
	return &lesson.AimError{Speed: e.Speed, Angle: e.Angle}
}

func toAimError(e *lesson.AimError) *aimError {
	if e == nil {
		return nil
	}
	return &aimError{e.Speed, e.Angle}
}
