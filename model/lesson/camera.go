package lesson

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// CameraKind is how a take is filmed.
type CameraKind uint8

// The kinds of camera. WholeCourt and HalfCourt stand still, Follow keeps a
// player in the middle, PushIn goes slowly from the whole court to a player,
// BehindReceiver stands behind the one who returns the serve.
const (
	WholeCourt CameraKind = iota
	HalfCourt
	Follow
	PushIn
	BehindReceiver
)

var cameraNames = [...]string{"court", "half", "follow", "push-in", "behind-receiver"}

// Cameras are all kinds of camera.
var Cameras = [...]CameraKind{WholeCourt, HalfCourt, Follow, PushIn, BehindReceiver}

// String is the kind's name in a lesson file.
func (k CameraKind) String() string { return cameraNames[int(k)%len(cameraNames)] }

// ParseCamera reads a kind's name.
func ParseCamera(s string) (CameraKind, error) { return parse[CameraKind]("camera", s, cameraNames[:]) }

// OnPlayer says whether the camera is about one player.
func (k CameraKind) OnPlayer() bool { return k == Follow || k == PushIn }

// Camera is how a take is filmed. Its zero value shows the whole court.
type Camera struct {
	Kind   CameraKind
	End    court.End   // HalfCourt: whose half
	Player game.Player // Follow, PushIn: who is in the middle
	Width  units.Feet  // Follow, PushIn: how much is shown across the picture's shorter side; 0 means DefaultCameraWidth
}

// DefaultCameraWidth shows a player and the partner: a court is 20 ft wide.
const DefaultCameraWidth units.Feet = 22

// Across is how much the camera shows across the picture's shorter side.
func (c Camera) Across() units.Feet {
	if c.Width == 0 {
		return DefaultCameraWidth
	}
	return c.Width
}

// Corner is a corner of a picture.
type Corner uint8

// The corners. NoCorner is none of them.
const (
	NoCorner Corner = iota
	TopLeft
	TopRight
	BottomLeft
	BottomRight
)

var cornerNames = [...]string{"none", "top-left", "top-right", "bottom-left", "bottom-right"}

// Corners are all corners, none first.
var Corners = [...]Corner{NoCorner, TopLeft, TopRight, BottomLeft, BottomRight}

// String is the corner's name in a lesson file.
func (c Corner) String() string { return cornerNames[int(c)%len(cornerNames)] }

// ParseCorner reads a corner's name.
func ParseCorner(s string) (Corner, error) { return parse[Corner]("corner", s, cornerNames[:]) }

// Right says whether the corner is on the right of the picture.
func (c Corner) Right() bool { return c == TopRight || c == BottomRight }

// Bottom says whether the corner is at the bottom of the picture.
func (c Corner) Bottom() bool { return c == BottomLeft || c == BottomRight }
