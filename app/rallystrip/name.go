package rallystrip

import (
	"fmt"

	"homeside/model/rally"
)

// kindNames name the kinds of thing in a trace.
var kindNames = [...]string{
	rally.Landing: "landing", rally.Arrival: "arrival", rally.AtContact: "contact", rally.Start: "start", rally.Running: "run",
	rally.CueFrom: "cue-from", rally.CueTo: "cue-to", rally.Saying: "cue",
}

// nameOf is a thing's name in a trace: "arrival-near2-1", "cue-0".
func nameOf(what rally.Timed) string {
	switch what.Kind {
	case rally.Landing, rally.CueFrom, rally.CueTo, rally.Saying:
		return fmt.Sprintf("%s-%d", kindNames[what.Kind], what.Index)
	}
	return fmt.Sprintf("%s-%v-%d", kindNames[what.Kind], what.Player, what.Index)
}
