package flight

// Reason is why there is no shot as asked for.
type Reason uint8

// The reasons.
const (
	Possible     Reason = iota // there is one
	TooSlow                    // at this speed no angle reaches the aim
	TooFast                    // needs more than Model.Fastest
	IntoNet                    // it would hit the net or a post
	ApexTooLow                 // the apex is below the contact
	AimAtContact               // the aim is at the contact point
	AimBehind                  // the aim is behind the striker, away from the net
	NoNetBetween               // a height over the net, but the net is not on the way
	NotPositive                // a speed or a time that is not more than 0
	NotFinite                  // a figure that is not a number
	OutOfRange                 // a figure or a model beyond all that is flown
	NoFlight                   // no flight was found; nothing is known about why
)

// Reasons lists them all.
var Reasons = [...]Reason{Possible, TooSlow, TooFast, IntoNet, ApexTooLow, AimAtContact,
	AimBehind, NoNetBetween, NotPositive, NotFinite, OutOfRange, NoFlight}

var reasonNames = [...]string{
	Possible:     "possible",
	TooSlow:      "too slow to reach the aim",
	TooFast:      "needs a faster launch than allowed",
	IntoNet:      "would hit the net",
	ApexTooLow:   "apex below the contact",
	AimAtContact: "aim at the contact point",
	AimBehind:    "aim behind the striker",
	NoNetBetween: "no net between contact and aim",
	NotPositive:  "speed and time must be more than zero",
	NotFinite:    "not a number",
	OutOfRange:   "a figure beyond all that is flown",
	NoFlight:     "no flight found",
}

// String is a short English phrase.
func (r Reason) String() string {
	if int(r) < len(reasonNames) {
		return reasonNames[r]
	}
	return "unknown reason"
}
