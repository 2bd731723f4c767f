package words

import (
	"homeside/model/flight"
	"homeside/model/rally"
	"homeside/model/units"
)

// shotKinds are the kinds of shot in the order of lesson.ShotKind.
var shotKinds = []string{Text("own figures"), Text("serve"), Text("wide serve"), Text("flat return"), Text("deep floating return"), Text("drive"), Text("drop"), Text("dink"), Text("lob")}

// ShotKinds are the words for all kinds of shot, by lesson.ShotKind.
func ShotKinds() []string { return all(shotKinds...) }

// meets are the ways to meet a ball in the order of lesson.MeetHow.
var meets = []string{Text("at the top of the bounce"), Text("while rising"), Text("while falling"), Text("as a volley"), Text("at the top of the second bounce")}

// Meets are the words for all ways to meet a ball, by lesson.MeetHow.
func Meets() []string { return all(meets...) }

// ShotTitle names a shot and who hits it: "Return by Marlo".
func ShotTitle(r *rally.Rally, i int) string {
	return T("%s by %s", capital(Shot(i)), r.NameOf(r.Strokes[i].By))
}

// ShotFacts says what follows from a shot's figures, or why it cannot be hit so.
func ShotFacts(r *rally.Rally, i int) string {
	s := &r.Strokes[i]
	facts := T("%s in the air.", Seconds(s.Planned.Duration))
	if net := s.Planned.Net; net.Reached {
		facts += T(" Passes the net %s.", OverNet(net.State.Height().Feet(), r.NetTop(i)))
	}
	if s.Stopped() {
		facts += T(" Into the net: the rally stops there.")
	}
	if s.Trouble != flight.Possible {
		facts = T("Cannot be hit as asked: %s. ", Name(s.Trouble)) + facts
	}
	return facts
}

// Spin says a spin: "Topspin 300 rpm", "Backspin 200 rpm", "No spin".
func Spin(w units.RPM) string {
	switch {
	case w > 0:
		return T("Topspin %.0f rpm", float64(w))
	case w < 0:
		return T("Backspin %.0f rpm", -float64(w))
	default:
		return T("No spin")
	}
}
