// Package compose turns a solved rally into scenes: Static is what stands still
// for the whole play, Moving what is drawn over it at one moment. It promises
// that the same rally, layout and moment give the same scene, with the same
// shape IDs from frame to frame.
package compose
