package courtview

import (
	"homeside/app/looks"
	"homeside/canvas/compose"
	"homeside/model/cover"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// cover is the cover of the team that is hit at in the shot in play; the zero
// Map where it is not asked for or there is none.
func (v *View) cover(r *rally.Rally, shot int) cover.Map {
	if !v.show.Cover {
		return cover.Map{}
	}
	return v.coverOf(r, shot)
}

func (v *View) coverOf(r *rally.Rally, shot int) cover.Map {
	team := r.Strokes[shot].By.Team().Other()
	strike, err := cover.StrikeAt(r, lesson.ContactOf(shot), team, v.show.CoverShot)
	if err != nil {
		return cover.Map{} // a contact that is not reached
	}
	m, err := cover.Of(strike)
	if err != nil {
		return cover.Map{}
	}
	return m
}

// Snapshot is the court at the contact of the shot in play with its cover.
type Snapshot struct {
	Picture compose.Picture
	Cover   cover.Map
	Shot    int
}

// Snapshot is the present one; false if there is no play or no cover.
func (v *View) Snapshot() (Snapshot, bool) {
	r := v.session.Current()
	if r == nil {
		return Snapshot{}, false
	}
	s := Snapshot{Picture: compose.Of(r, v.session.Lesson().Venue.Surface(), v.sight.Turn), Shot: r.ShotAt(v.session.Now())}
	s.Picture.Look = looks.Now()
	s.Cover = v.coverOf(r, s.Shot)
	return s, s.Cover.Len() > 0
}
