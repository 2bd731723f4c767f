package words

import (
	"math"

	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// AimStep names the step that moves the aim of shot i.
func AimStep(i int) string { return T("aim %s", TheShot(i)) }

// HeightStep names the step that makes shot i higher or lower.
func HeightStep(i int) string { return contracted(T("change the height of %s", TheShot(i))) }

// TopLine says what a hand makes of shot i as it raises or lowers it.
func TopLine(r *rally.Rally, i int) string {
	s := &r.Strokes[i]
	top := s.Planned.Apex.State.Height().Feet()
	return sentenceCase(T("%s: top at %s (%s), %s in the air", TheShot(i), Length(top), TimesNet(top, r.NetTop(i)), Seconds(s.Planned.Duration)))
}

// MarkName is the word for a kind of mark.
func MarkName(k lesson.MarkKind) string {
	switch k {
	case lesson.ArrowMark:
		return T("Arrow")
	case lesson.ObstacleMark:
		return T("Obstacle")
	case lesson.ZoneMark:
		return T("Zone")
	case lesson.ConeMark:
		return T("Cone")
	case lesson.MeasureMark:
		return T("Measure line")
	case lesson.HighlightMark:
		return T("Highlight")
	}
	return T("Text")
}

// AddMark names the step that adds a mark of a kind.
func AddMark(k lesson.MarkKind) string {
	switch k {
	case lesson.ArrowMark:
		return T("add an arrow")
	case lesson.ObstacleMark:
		return T("add an obstacle")
	case lesson.ZoneMark:
		return T("add a zone")
	case lesson.ConeMark:
		return T("add a cone")
	case lesson.MeasureMark:
		return T("add a measure line")
	case lesson.HighlightMark:
		return T("add a highlight")
	}
	return T("add a text")
}

// PlaceMark says how a new mark of a kind is put on the court.
func PlaceMark(k lesson.MarkKind) string {
	if k.HasTip() {
		return T("Press where it starts and drag to where it ends. Enter: in the middle. Escape: none.")
	}
	return T("Press where it stands. Enter: in the middle. Escape: none.")
}

// Facing says where a player looks.
func Facing(d units.Degrees) string {
	return T("Looks %d degrees clockwise from straight up the court", int(math.Round(float64(d)))%360)
}

// DeleteParts names the step that deletes parts of a play.
func DeleteParts(l lesson.Lesson, parts []edit.Part) string {
	if len(parts) > 1 {
		return T("delete %d things", len(parts))
	}
	switch a := parts[0]; a.Kind {
	case edit.MarkPart:
		return T("delete a mark")
	case edit.RunPart:
		return T("delete a run of %s", l.NameOf(a.Player))
	default:
		return T("delete a place of %s", l.NameOf(a.Player))
	}
}

// places is how many keyframes a clip holds.
func places(c lesson.Clip) (n int) {
	for _, t := range c.Tracks {
		n += len(t)
	}
	return n
}

// Copied says what was copied.
func Copied(c lesson.Clip) string {
	if len(c.Plays) > 0 {
		return T("The play is copied: paste it here or into another lesson.")
	}
	return T("Copied: %d places, %d marks.", places(c), len(c.Marks))
}

// Paste names the step that pastes a clip.
func Paste(c lesson.Clip) string {
	switch {
	case len(c.Plays) == 1:
		return T("paste a play")
	case len(c.Plays) > 1:
		return T("paste %d plays", len(c.Plays))
	}
	return T("paste %d things", places(c)+len(c.Marks))
}

// Pasted says what came.
func Pasted(c lesson.Clip) string {
	if n := len(c.Plays); n > 0 {
		return T("Pasted plays: %d.", n)
	}
	return T("Pasted: %d places, %d marks. The first place is at the moment shown.", places(c), len(c.Marks))
}
