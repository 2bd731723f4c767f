package clip

import (
	"errors"
	"os"
	"os/exec"
	"runtime"
	"testing"
)

// Time that is computed is seen, and that none is.
func TestComputed(t *testing.T) {
	for script, want := range map[string]bool{"while :; do :; done": true, "read nothing": false} {
		cmd := exec.Command("sh", "-c", script)
		in, err := cmd.StdinPipe()
		if err := errors.Join(err, cmd.Start()); err != nil {
			t.Fatal(err)
		}
		for want && computed(cmd.Process.Pid) < 5*tick {
			runtime.Gosched() // until the system gives it the time
		}
		if got := computed(cmd.Process.Pid); !want && got > 5*tick {
			t.Errorf("a process that waits has computed for %v", got)
		}
		err = errors.Join(in.Close(), cmd.Process.Kill())
		_ = cmd.Wait() // says that it was killed
		if err != nil {
			t.Error(err)
		}
	}
	if got := computed(os.Getpid() + 1<<22); got != 0 { // beyond all that there can be
		t.Errorf("a process that is not there has computed for %v", got)
	}
}
