package rodisk

import (
	"bytes"
	"errors"
	"os"
	"os/exec"
	"syscall"
	"testing"
)

// disk names, in the process that has it, the folder that the disk is mounted on.
const disk = "HOMESIDE_TEST_READ_ONLY_DISK"

// cannot begins the line of a process that cannot mount.
const cannot = "cannot mount a disk that can only be read: "

// Run runs the test that calls it once more in a process that has such a disk: there
// fill writes onto it, and body finds it able to be read only. It is to be all that
// the test does.
func Run(t *testing.T, fill, body func(folder string)) {
	t.Helper()
	folder := os.Getenv(disk)
	if folder == "" {
		again(t)
		return
	}
	if err := syscall.Mount("disk", folder, "tmpfs", 0, ""); err != nil {
		t.Skip(cannot + err.Error())
	}
	fill(folder)
	if err := syscall.Mount("disk", folder, "tmpfs", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""); err != nil {
		t.Skip(cannot + err.Error())
	}
	body(folder)
}

// again runs the test in a process whose mounts are its own.
func again(t *testing.T) {
	t.Helper()
	c := exec.Command(os.Args[0], "-test.run=^"+t.Name()+"$", "-test.v")
	c.Env = append(os.Environ(), disk+"="+t.TempDir())
	c.SysProcAttr = &syscall.SysProcAttr{
		Cloneflags:  syscall.CLONE_NEWUSER | syscall.CLONE_NEWNS,
		UidMappings: []syscall.SysProcIDMap{{HostID: os.Getuid(), Size: 1}},
		GidMappings: []syscall.SysProcIDMap{{HostID: os.Getgid(), Size: 1}},
	}
	out, err := c.CombinedOutput()
	var exit *exec.ExitError
	if err != nil && !errors.As(err, &exit) {
		t.Skip(cannot + err.Error())
	}
	if _, why, found := bytes.Cut(out, []byte(cannot)); found {
		why, _, _ = bytes.Cut(why, []byte("\n"))
		t.Skipf("%s%s", cannot, why)
	}
	if err != nil || !bytes.Contains(out, []byte("--- PASS: "+t.Name()+" ")) {
		t.Errorf("on a disk that can only be read: %v\n%s", err, out)
	}
}
