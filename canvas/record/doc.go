// Package record is a Surface that writes what is drawn as text, one line a
// shape with rounded pixels. It promises the same text for the same scene on
// every machine, so that pictures can be tested exactly.
package record
