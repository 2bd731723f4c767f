package finding

import "slices"

// ID names what was found, in files and on the command line.
type ID string

// What the rules find.
const (
	CallMissing    ID = "call-missing"
	CallImpossible ID = "call-impossible"
	WrongTeam      ID = "wrong-team"
	WrongServer    ID = "wrong-server"
	PlaceNotServer ID = "right-place-wrong-server"
	WrongCourt     ID = "wrong-court"
	WrongReceiver  ID = "wrong-receiver"

	FootOnCourt    ID = "foot-on-court"
	FootOutside    ID = "foot-outside"
	FeetOffGround  ID = "feet-off-ground"
	ServeIntoNet   ID = "serve-into-net"
	ServeInKitchen ID = "serve-in-kitchen"
	ServeElsewhere ID = "serve-in-wrong-court"
	ServeOut       ID = "serve-out"
	ServeHitsOwn   ID = "serve-hits-partner"
	ServeHitsOther ID = "serve-hits-receivers"

	ServeVolleyed  ID = "serve-volleyed"
	ReturnVolleyed ID = "return-volleyed"
	SecondBounce   ID = "second-bounce"
	KitchenVolley  ID = "kitchen-volley"
	Momentum       ID = "kitchen-momentum"

	WrongSide      ID = "wrong-side"
	OverNet        ID = "over-net"
	BallHitsPlayer ID = "ball-hits-player"
	ShotIntoNet    ID = "shot-into-net"
	ShotOut        ID = "shot-out"
	ShotImpossible ID = "shot-impossible"
	OffSurface     ID = "off-surface"

	PartnerInside ID = "partner-inside"
	StackLegal    ID = "stack-legal"
	StackUseless  ID = "stack-without-purpose"
)

// Kind is what all findings with one ID share.
type Kind struct {
	ID       ID
	Severity Severity
	Rule     Rule
}

// RuleKinds are the kinds of what the rules find.
var RuleKinds = []Kind{
	{CallImpossible, Fault, ScoreRule},
	{WrongTeam, Fault, ServerRule},
	{WrongServer, Fault, ServerRule},
	{PlaceNotServer, Fault, ServerRule},
	{WrongCourt, Fault, PlacesRule},
	{WrongReceiver, Fault, ReceiverRule},
	{FootOnCourt, Fault, ServerOnCourtRule},
	{FootOutside, Fault, ServerOutsideRule},
	{FeetOffGround, Fault, GroundedRule},
	{ServeIntoNet, Fault, ServeRule},
	{ServeInKitchen, Fault, ServeRule},
	{ServeElsewhere, Fault, ServeRule},
	{ServeOut, Fault, ServeRule},
	{ServeHitsOwn, Fault, ServeHitsServersRule},
	{ServeHitsOther, Fault, ServeHitsReceiversRule},
	{ServeVolleyed, Fault, TwoBouncesRule},
	{ReturnVolleyed, Fault, TwoBouncesRule},
	{SecondBounce, Fault, SecondBounceRule},
	{KitchenVolley, Fault, VolleyRule},
	{Momentum, Fault, MomentumRule},
	{WrongSide, Fault, PartnerRule},
	{OverNet, Fault, NetPlaneRule},
	{BallHitsPlayer, Fault, BodyRule},
	{ShotIntoNet, Caution, NoRule},
	{ShotOut, Caution, NoRule},
	{ShotImpossible, Caution, NoRule},
	{OffSurface, Caution, SurfaceRule},
	{CallMissing, Advice, CallRule},
	{PartnerInside, Advice, TwoBouncesRule},
	{StackLegal, Advice, PartnerRule},
	{StackUseless, Advice, NoRule},
}

// Kinds lists every kind of finding: those of the rules, then those of the legs.
var Kinds = slices.Concat(RuleKinds, legKinds)

// kinds finds a kind by its ID.
var kinds = byID()

func byID() map[ID]Kind {
	m := make(map[ID]Kind, len(Kinds))
	for _, k := range Kinds {
		m[k.ID] = k
	}
	return m
}

// KindOf is the kind with this ID. An ID that is not in Kinds is advice without
// a rule.
func KindOf(id ID) Kind {
	if k, ok := kinds[id]; ok {
		return k
	}
	return Kind{ID: id, Severity: Advice}
}
