// Package formats is the one table of what Homeside exports. The window, the
// command line and the tests all read it: a new format is one line here.
// It promises that every format of the table writes a file as a whole or not at all.
package formats
