package formation

import (
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/units"
)

// serveContact is the anchor of the places at the serve.
var serveContact = lesson.Anchor{}

// starts are the places at the serve.
func (w *writer) starts() {
	stacked := w.kind == lesson.Stacked
	aside, mate := serverAside, -halfMiddle
	if stacked && w.s.Serves() {
		aside, mate = stackAside, w.s.besideServer()
	}
	w.start(w.server.Team(), aside, serverBehind, mate, mateBehind)

	mate = -halfMiddle
	if stacked && !w.s.Serves() {
		mate, _ = w.s.offCourt()
	}
	w.start(w.receiver.Team(), halfMiddle, receiveBehind, mate, atKitchen) // in the middle of the service court, whatever serve comes
}

func (w *writer) start(team court.End, along, behind, mateAlong, mateBehind units.Feet) {
	lead := w.server
	if team != w.serving {
		lead = w.receiver
	}
	_, room := w.s.room()
	w.add(lead, stand(serveContact, w.s.at(team, along, min(behind, max(room, serverBehind)))))
	w.add(lead.Partner(), stand(serveContact, w.s.at(team, mateAlong, min(mateBehind, max(room, serverBehind)))))
}
