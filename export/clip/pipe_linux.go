package clip

import (
	"io"
	"syscall"

	"golang.org/x/sys/unix"
)

// pipeRoom is what a pipe may hold: as much as the system gives those who have no
// special rights.
const pipeRoom = 1 << 20

// widen lets a pipe hold more than 64 KB, so that two programs need not take turns
// fifty times in a frame. A system that refuses leaves it as it is.
func widen(pipe io.Writer) {
	f, ok := pipe.(syscall.Conn)
	if !ok {
		return
	}
	if c, err := f.SyscallConn(); err == nil {
		_ = c.Control(func(fd uintptr) { _, _ = unix.FcntlInt(fd, unix.F_SETPIPE_SZ, pipeRoom) })
	}
}
