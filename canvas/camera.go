package canvas

import "homeside/model/units"

// Camera is a pinhole camera: where it is and where it looks, as unit vectors
// square to each other. Make one with LookAt.
type Camera struct {
	Eye              Vec
	Right, Up, Ahead Vec
}

// leastAhead is the shortest way from a camera to what it looks at.
const leastAhead units.Feet = 1e-3

// LookAt is the camera at eye that looks at a place, held level. False where
// that says nothing: the places are one, or one is straight above the other.
func LookAt(eye, at Vec) (Camera, bool) {
	ahead, ok := at.Sub(eye).Unit()
	if !ok || at.Sub(eye).Dot(ahead) < float64(leastAhead) {
		return Camera{}, false
	}
	right, ok := ahead.Cross(Vec{Z: 1}).Unit()
	if !ok {
		return Camera{}, false
	}
	return Camera{Eye: eye, Right: right, Up: right.Cross(ahead), Ahead: ahead}, true
}

// Lens is the camera's, with depth 1 at a distance straight ahead.
func (c Camera) Lens(distance units.Feet) Lens {
	r := func(d Vec, k float64) [4]float64 {
		d = d.Times(k)
		return [4]float64{float64(d.X), float64(d.Y), float64(d.Z), -d.Dot(c.Eye)}
	}
	return Lens{X: r(c.Right, 1), Y: r(c.Up, -1), W: r(c.Ahead, 1/float64(max(distance, leastAhead)))}
}

// Depth is how far in front of the camera a place is.
func (c Camera) Depth(at Vec) units.Feet { return units.Feet(at.Sub(c.Eye).Dot(c.Ahead)) }

// Facing is the place that is so far to the right of another and above it, as
// the camera sees it: flat things drawn with it face the picture.
func (c Camera) Facing(at Vec, right, up units.Feet) Vec {
	return at.Add(c.Right.Times(float64(right))).Add(c.Up.Times(float64(up)))
}
