package words

import (
	"fmt"
	"strings"

	"homeside/model/flight"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// shotKinds are the kinds of shot in the order of lesson.ShotKind.
var shotKinds = []string{"own figures", "serve", "wide serve", "flat return", "deep floating return", "drive", "drop", "dink", "lob"}

// ShotKinds are the words for all kinds of shot, by lesson.ShotKind.
func ShotKinds() []string { return shotKinds }

// meets are the ways to meet a ball in the order of lesson.MeetHow.
var meets = []string{"at the top of the bounce", "while rising", "while falling", "as a volley", "at the top of the second bounce"}

// Meets are the words for all ways to meet a ball, by lesson.MeetHow.
func Meets() []string { return meets }

// ShotTitle names a shot and who hits it: "Return by Marlo".
func ShotTitle(r *rally.Rally, i int) string {
	name := lesson.ShotName(i)
	return strings.ToUpper(name[:1]) + name[1:] + " by " + r.NameOf(r.Strokes[i].By)
}

// ShotFacts says what follows from a shot's figures, or why it cannot be hit so.
func ShotFacts(r *rally.Rally, i int) string {
	s := &r.Strokes[i]
	facts := fmt.Sprintf("%s in the air.", Seconds(s.Planned.Duration))
	if net := s.Planned.Net; net.Reached {
		facts += fmt.Sprintf(" Passes the net %s.", OverNet(net.State.Height().Feet(), r.NetTop(i)))
	}
	if s.Stopped() {
		facts += " Into the net: the rally stops there."
	}
	if s.Trouble != flight.Possible {
		facts = fmt.Sprintf("Cannot be hit as asked: %s. ", s.Trouble) + facts
	}
	return facts
}

// Spin says a spin: "Topspin 300 rpm", "Backspin 200 rpm", "No spin".
func Spin(w units.RPM) string {
	switch {
	case w > 0:
		return fmt.Sprintf("Topspin %.0f rpm", float64(w))
	case w < 0:
		return fmt.Sprintf("Backspin %.0f rpm", -float64(w))
	default:
		return "No spin"
	}
}
