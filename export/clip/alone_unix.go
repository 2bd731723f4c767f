//go:build unix

package clip

import (
	"os/exec"
	"syscall"
)

// alone puts a program and what it starts into a group that is stopped as one.
func alone(cmd *exec.Cmd) {
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	cmd.Cancel = func() error { return syscall.Kill(-cmd.Process.Pid, syscall.SIGKILL) }
}

// endGroup stops what a program has started and left running.
func endGroup(cmd *exec.Cmd) { _ = syscall.Kill(-cmd.Process.Pid, syscall.SIGKILL) } // nobody may be left
