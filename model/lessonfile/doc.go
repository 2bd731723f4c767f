// Package lessonfile reads and writes lessons as JSON. It promises that what
// Write writes Read reads back the same, that every mistake in a file is told
// in one line with its place, and that no file, however mangled, makes it run
// away. FORMAT.md beside this file explains the format to people.
package lessonfile
