// Package player lets beeps be heard through a program that the system has for playing WAV files. It promises that nothing
// waits for it: without such a program, or without a sound device, all goes on in silence and Why says the reason.
package player
