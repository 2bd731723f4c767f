// Package pick finds the shape under the pointer. It promises the topmost shape
// of a scene whose fill holds the pixel or whose stroke passes within reach of
// it, by the same places the surfaces draw.
package pick
