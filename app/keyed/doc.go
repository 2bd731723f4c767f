// Package keyed has controls that hand on the keys they have no use for: a window worked by keys stays so while one of its
// controls is chosen by the Tab key. It promises that a key is used once, by the control or by whoever it is handed to.
package keyed
