package large

import (
	"fmt"
	"os"
	"os/exec"
	"runtime"
	"strings"
	"testing"
	"unsafe"
)

// alone names the environment variable that says that a test is the only one of its
// process.
const alone = "HOMESIDE_TEST_ALONE"

// Most of what is allocated in small pieces after Heap lies where large pages are asked
// for, in a program that has not taken memory before.
func TestHeapComesInLargePages(t *testing.T) {
	if _, err := os.Stat("/sys/kernel/mm/transparent_hugepage"); err != nil {
		t.Skip("this system has no large pages")
	}
	if os.Getenv(alone) == "" {
		again := exec.Command(os.Args[0], "-test.run=^TestHeapComesInLargePages$")
		again.Env = append(os.Environ(), alone+"=1")
		if out, err := again.CombinedOutput(); err != nil {
			t.Errorf("%v\n%s", err, out)
		}
		return
	}
	const pieces, size = 10000, 1 << 10
	Heap(2 * pieces * size)
	var kept [pieces]*[size]byte
	for i := range kept {
		kept[i] = &[size]byte{1}
	}
	in := 0
	large := largeMappings(t)
	for _, p := range kept {
		for _, m := range large {
			if at := uintptr(unsafe.Pointer(p)); m[0] <= at && at < m[1] {
				in++
			}
		}
	}
	if in < pieces/2 {
		t.Errorf("%d of %d pieces lie where large pages are asked for, want at least half", in, pieces)
	}
	runtime.KeepAlive(&kept)
}

// largeMappings are the stretches of this process's memory for which large pages are
// asked: those with the flag hg in proc(5).
func largeMappings(t *testing.T) (all [][2]uintptr) {
	t.Helper()
	text, err := os.ReadFile("/proc/self/smaps")
	if err != nil {
		t.Fatal(err)
	}
	var last [2]uintptr
	for line := range strings.Lines(string(text)) {
		var m [2]uintptr
		if n, _ := fmt.Sscanf(line, "%x-%x ", &m[0], &m[1]); n == 2 {
			last = m
		} else if strings.HasPrefix(line, "VmFlags:") && strings.Contains(line, " hg") {
			all = append(all, last)
		}
	}
	return all
}
