// Package raster is the Surface on an RGBA image; the screen and the exported
// pictures share it. It promises that a frame made from a cached static layer
// equals one drawn from scratch, byte for byte.
package raster
