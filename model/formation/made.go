package formation

import (
	"slices"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// stays is the play in which a player goes back to the own half: who should have
// changed halves has forgotten to.
func stays(p lesson.Play, id game.Player) lesson.Play {
	track := slices.Clone(p.Tracks[id])
	home := p.AtServe(id).Place
	for i := range track {
		if track[i].Place.X*home.X < 0 {
			track[i].Place.X, track[i].Via = -track[i].Place.X, nil
		}
	}
	p.Front = nil
	return p.WithTrack(id, track)
}

// moved is a track whose first place, and what of it is at the serve, is another.
func moved(track []lesson.Keyframe, to court.Point) []lesson.Keyframe {
	track = slices.Clone(track)
	for i := range track {
		if track[i].At.Event == lesson.ContactOf(0) {
			track[i].Place = to
		}
	}
	return track
}

// serveLine is where the serve comes down to the height of a body, on the
// receivers' side, before it bounces.
func serveLine(w Written) court.Point {
	path := w.Rally.Strokes[0].Planned
	t, ok := path.Crossing(onTheLine.Metres(), false)
	if !ok || path.Net.Reached && t < path.Net.T {
		t = (path.Net.T + path.Duration) / 2
	}
	p := groundOf(path.At(t).At)
	return court.Pt(rounded(p.X), rounded(p.Y))
}

// swapped is the play in which the partner of the correct receiver takes the
// receiver's part, and the other way round.
func swapped(p lesson.Play, receiver game.Player) lesson.Play {
	part := game.Players
	part[receiver], part[receiver.Partner()] = receiver.Partner(), receiver
	return p.Renamed(part)
}

// creeps is the play in which a server's partner stands inside the court.
func creeps(p lesson.Play, id game.Player) lesson.Play {
	place := p.AtServe(id).Place
	place.Y = creptBehind * id.Team().Sign()
	track := moved(p.Tracks[id], place)
	for i := range track {
		if e := track[i].At.Event; e.Shot == 1 && e.Moment != lesson.End {
			track[i].Place.Y, track[i].Via = place.Y, nil
		}
	}
	return p.WithTrack(id, track)
}
