package finding

// Edition is an edition of the rulebook.
type Edition uint8

// The editions. A new one is a constant, its name and a column in rulebook.
const (
	USAP2026 Edition = iota
	editions
)

// Current is the edition that findings are told by where nothing else is said.
const Current = USAP2026

var editionNames = [editions]string{USAP2026: "USAP 2026"}

// String is the edition's name, such as "USAP 2026".
func (e Edition) String() string { return editionNames[e%editions] }

// Rule is what a rule is about, whatever its number in an edition.
type Rule uint8

// The rules that findings rest on.
const (
	NoRule Rule = iota
	CallRule
	ScoreRule
	PlacesRule
	PartnerRule
	ServerRule
	ReceiverRule
	GroundedRule
	ServerOnCourtRule
	ServerOutsideRule
	ServeRule
	ServeHitsServersRule
	ServeHitsReceiversRule
	TwoBouncesRule
	SecondBounceRule
	VolleyRule
	MomentumRule
	NetPlaneRule
	BodyRule
	SurfaceRule
	rules
)

// rulebook is the number of each rule by edition; an empty cell is a number that
// is not known for certain and is then not told.
//
// USAP 2026 is the USA Pickleball Official Rulebook 2026, which was renumbered;
// it was read through paraphrases that agree. They give 7.A whole: that its
// three conditions are 7.A.1 to 7.A.3 in the order of the book before is from
// memory, and so is 25 for the wheelchair rules.
var rulebook = [rules][editions]string{
	CallRule:               {USAP2026: "6.C"},     // serve only after the whole score is called
	ScoreRule:              {USAP2026: "4.A"},     // 11 points, two ahead
	PlacesRule:             {USAP2026: "5.B.3"},   // who is on the right at an even score
	PartnerRule:            {USAP2026: "5.B.4"},   // partners anywhere on their own side of the net
	ServerRule:             {USAP2026: "5.B.5"},   // who serves next, and from where
	ReceiverRule:           {USAP2026: "5.C.1.c"}, // the wrong player returns
	GroundedRule:           {USAP2026: "7.A.1"},
	ServerOnCourtRule:      {USAP2026: "7.A.2"},
	ServerOutsideRule:      {USAP2026: "7.A.3"},
	ServeRule:              {USAP2026: "7.E"},
	ServeHitsServersRule:   {USAP2026: "7.E.4"},
	ServeHitsReceiversRule: {USAP2026: "7.E.5"},
	TwoBouncesRule:         {USAP2026: "10.A"},
	SecondBounceRule:       {USAP2026: ""},
	VolleyRule:             {USAP2026: "11.A"},
	MomentumRule:           {USAP2026: "11.A.2"},
	NetPlaneRule:           {USAP2026: ""},
	BodyRule:               {USAP2026: ""},
	SurfaceRule:            {USAP2026: "3.A.3"},
}

// Number is the rule's number in an edition, such as "7.A.2"; empty if it is not
// known, or for NoRule.
func (r Rule) Number(e Edition) string { return rulebook[r%rules][e%editions] }

// In is the edition and the rule's number, such as "USAP 2026 7.A.2"; empty
// where the number is not known.
func (r Rule) In(e Edition) string {
	n := r.Number(e)
	if n == "" {
		return ""
	}
	return e.String() + " " + n
}
