// Package journal keeps lessons that are in no file yet where a crash cannot take
// them. It promises that an entry is there whole or not at all, that no two
// processes share a journal, and that what a process has left behind is offered
// until somebody throws it away. Time is given to it.
package journal
