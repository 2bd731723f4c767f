// Package fullscreen opens windows that take the whole screen. It promises that the screen is asked for once and only of a
// window that has been painted, and never of one that has gone.
package fullscreen
