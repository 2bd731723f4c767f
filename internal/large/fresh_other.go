//go:build !linux

package large

func fresh(n int) []byte { return make([]byte, n) }
