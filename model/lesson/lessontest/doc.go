// Package lessontest makes lessons for tests. It promises lessons that
// lesson.Validate accepts and that a lesson file can hold without loss: one
// fixed sample that uses every field, and random ones for properties.
package lessontest
