//go:build !linux

package rodisk

import "testing"

// Run skips the test: only on Linux a test may mount a disk without being root.
func Run(t *testing.T, _, _ func(folder string)) {
	t.Helper()
	t.Skip("only on Linux a test may mount a disk that can only be read")
}
