// Package export is what all exporters share: the Source of frames, Options,
// errors, and Save, the one place that creates, syncs, closes and renames a
// file. It promises that a failed or cancelled export leaves nothing behind.
package export
