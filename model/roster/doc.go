// Package roster is a list of pairs that a coach keeps apart from any lesson:
// names, hands, paces, wished sides. It promises plain values within a lesson's
// bounds, so that every pair of a sound roster fits into every lesson.
package roster
