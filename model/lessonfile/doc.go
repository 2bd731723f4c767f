// Package lessonfile reads and writes lessons and rosters of pairs as JSON. It promises that what
// Write writes Read reads back the same, that every mistake in a file is told
// in one line with its place, and that no file, however mangled, makes it run
// away. FORMAT.md and ROSTER.md beside this file explain the formats to people.
package lessonfile
