//go:build !unix

package clip

import "os/exec"

// alone does nothing here: a program is stopped by itself.
func alone(*exec.Cmd) {}

func endGroup(*exec.Cmd) {}
