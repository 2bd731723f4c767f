//go:build !linux

package clip

import "io"

func widen(io.Writer) {}
