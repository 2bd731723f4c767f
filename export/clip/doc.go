// Package clip writes a stretch of a play as a moving picture. It sees scenes
// only. It promises the same bytes for the same scenes, frames in order and on
// time, progress and cancel at every frame, and that the goroutines and files it
// uses are gone when a call returns.
package clip
