package finding

// What the legs find.
const (
	LateArrival   ID = "late-arrival"     // a place is reached later than drawn
	NotInPlace    ID = "not-in-place"     // a server is still running when the return bounces
	NotSet        ID = "returner-not-set" // the returner is still running when the third reaches him
	OutOfReach    ID = "ball-out-of-reach"
	CloseCrossing ID = "crossing-close"
	CrossingOrder ID = "crossing-order"
	RunsBackward  ID = "runs-backward"
	NearObstacle  ID = "near-obstacle"
	ShortOfLine   ID = "short-of-line" // the returner at third contact
	Lunge         ID = "lunge"
	Backhand      ID = "backhand"
	NoStack       ID = "do-not-stack" // no return gives this returner the time
)
