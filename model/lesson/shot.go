package lesson

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// Shot is one hit of the ball, said as a coach says it.
type Shot struct {
	By     game.Player
	Kind   ShotKind    // the word for it; OwnShot by default
	Aim    court.Point // where it is meant to land
	Intent Intent
	Arc    Arc       // which of two possible flights; low by default
	Spin   units.RPM // + topspin, - backspin
	Side   units.RPM // + curves to the left of its flight
	From   *Place    // of the serve: where it is struck; nil is the server's paddle side
	Meet   Meet      // how the next player meets it
	Error  *AimError // how it scatters; nil shows no scatter

	Airborne bool // only of a serve: the server has both feet off the ground at the contact
}

// Place is a point above the ground.
type Place struct {
	Point  court.Point
	Height units.Feet // of the ball's centre
}

// IntentKind says which of a shot's figures the coach fixed.
type IntentKind uint8

// The kinds of intent.
const (
	ByApex IntentKind = iota
	BySpeed
	ByTime
	ByNetClear
)

// IntentNames are the kinds by the names of their fields in a lesson file.
var IntentNames = [...]string{"apex_ft", "speed_mps", "time_s", "net_clear_ft"}

// String is the kind's field name.
func (k IntentKind) String() string { return IntentNames[k&3] }

// Intent is the one figure that fixes a flight to its aim. Only the field that
// Kind names counts. The zero value asks for an apex of 0 ft, which Validate refuses.
type Intent struct {
	Kind     IntentKind
	Apex     units.Feet            // greatest height of the ball's centre
	Speed    units.MetresPerSecond // off the paddle
	Time     units.Seconds         // from contact to landing
	NetClear units.Feet            // ball's centre above the net's top
}

// Apex is the intent of a greatest height.
func Apex(h units.Feet) Intent { return Intent{Kind: ByApex, Apex: h} }

// Speed is the intent of a speed off the paddle.
func Speed(v units.MetresPerSecond) Intent { return Intent{Kind: BySpeed, Speed: v} }

// Time is the intent of a time in the air.
func Time(t units.Seconds) Intent { return Intent{Kind: ByTime, Time: t} }

// NetClear is the intent of a height over the net.
func NetClear(h units.Feet) Intent { return Intent{Kind: ByNetClear, NetClear: h} }

// Arc chooses between the two flights that may reach one aim.
type Arc uint8

// The arcs.
const (
	Low Arc = iota
	High
)

var arcNames = [...]string{"low", "high"}

// String is "low" or "high".
func (a Arc) String() string { return arcNames[a&1] }

// ParseArc reads "low" or "high".
func ParseArc(s string) (Arc, error) { return parse[Arc]("arc", s, arcNames[:]) }

// MeetHow is when in its flight the next player meets the ball.
type MeetHow uint8

// The ways to meet a ball.
const (
	AtTop     MeetHow = iota // at the top of the bounce
	Rising                   // after the bounce, on the way up through Height
	Falling                  // after the bounce, on the way down through Height
	OnVolley                 // before it bounces, falling through Height, at the latest beyond the kitchen line
	SecondTop                // at the top of the second bounce, which a player in a wheelchair may wait for
)

var meetNames = [...]string{"top", "rising", "falling", "volley", "second"}

// String is "top", "rising", "falling", "volley" or "second".
func (m MeetHow) String() string { return meetNames[m%5] }

// AtHeight says whether the ball is met at a height that the coach gives.
func (m MeetHow) AtHeight() bool { return m == Rising || m == Falling || m == OnVolley }

// ParseMeet reads "top", "rising", "falling", "volley" or "second".
func ParseMeet(s string) (MeetHow, error) { return parse[MeetHow]("meet", s, meetNames[:]) }

// Meet is how the next player takes the ball. Height (of the ball's centre)
// counts where MeetHow.AtHeight says so.
type Meet struct {
	How    MeetHow
	Height units.Feet
}
