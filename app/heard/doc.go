// Package heard is the toolkit's controls as their window hears them. The toolkit
// gives a key to the control that has the focus and to nobody else; here a key that
// the control has no use for is offered to its window, so that Escape and Enter, and
// where people rehearse a clicker's keys, mean the same wherever the focus is. A key is
// used once. No field keeps the Tab key.
package heard
