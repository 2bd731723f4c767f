package flight

// Outcome is how a flight ends.
type Outcome uint8

// The outcomes.
const (
	Landed   Outcome = iota // the centre came down through one radius above the court
	HitNet                  // the centre reached the net's plane below its top
	HitPost                 // the same at a post
	TimedOut                // still in the air after Model.Longest
)

// Outcomes lists them all.
var Outcomes = [...]Outcome{Landed, HitNet, HitPost, TimedOut}

var outcomeNames = [...]string{"landed", "net", "post", "timed out"}

// String is "landed", "net", "post" or "timed out".
func (o Outcome) String() string { return outcomeNames[o&3] }
