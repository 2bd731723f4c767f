// Package raster is the Surface on an RGBA image; the screen and the exported
// pictures share it. It promises that a frame made from the one before equals
// one drawn from scratch, byte for byte, and that its changed tiles are those
// that differ.
package raster
