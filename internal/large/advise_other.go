//go:build !linux

package large

func advise([]byte) {}
