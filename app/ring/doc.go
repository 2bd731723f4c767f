// Package ring draws the ring round a part of the window that has the keys. It
// promises four thin lines, which cost little to paint, in a colour that stands
// out from the paper, and nothing where the keys are elsewhere.
package ring
