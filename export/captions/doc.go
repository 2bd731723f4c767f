// Package captions puts a solved play in words with times: captions as WebVTT and SRT, chapters, a script to read aloud.
// It promises that every time counts from the start of the clip cut with the same options, to the millisecond,
// and that no text of a lesson can be taken for a timing, a tag or another cue.
package captions
