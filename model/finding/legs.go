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

var legKinds = []Kind{
	{LateArrival, Late, NoRule},
	{NotInPlace, Late, NoRule},
	{NotSet, Late, NoRule},
	{OutOfReach, Late, NoRule},
	{CloseCrossing, Caution, NoRule},
	{CrossingOrder, Caution, NoRule},
	{RunsBackward, Caution, NoRule},
	{NearObstacle, Caution, NoRule},
	{ShortOfLine, Advice, NoRule},
	{Lunge, Advice, NoRule},
	{Backhand, Advice, NoRule},
	{NoStack, Advice, NoRule},
}
