// Package canvas describes a picture: a Scene of panels, panels of shapes with
// stable IDs, and the Surface that draws them. A shape's lengths are in feet on
// its panel's axes or in points on the paper; only View knows pixels and turns
// y over. It promises that the same Scene looks the same on every Surface.
package canvas
