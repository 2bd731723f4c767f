// Package gesture turns pointer events into previews and commits, without a
// toolkit and without a clock. It promises one undo step for one gesture and
// that a cancelled gesture leaves nothing behind.
package gesture
