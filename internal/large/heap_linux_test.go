package large

import (
	"fmt"
	"os"
	"runtime"
	"strings"
	"testing"
	"unsafe"
)

// Most of what is allocated in small pieces after Heap lies in large pages.
func TestHeapComesInLargePages(t *testing.T) {
	if how, err := os.ReadFile("/sys/kernel/mm/transparent_hugepage/enabled"); err != nil || strings.Contains(string(how), "[never]") {
		t.Skip("this system gives no large pages")
	}
	const pieces, size = 10000, 1 << 10
	Heap(2 * pieces * size)
	var kept [pieces]*[size]byte
	for i := range kept {
		kept[i] = &[size]byte{1}
	}
	in := 0
	for _, m := range mappings(t) {
		for _, p := range kept {
			if at := uintptr(unsafe.Pointer(p)); m.from <= at && at < m.to {
				in += m.large
				break
			}
		}
	}
	if want := pieces * size / 2; in < want {
		t.Errorf("%d bytes in large pages where %d bytes lie in pieces, want at least %d", in, pieces*size, want)
	}
	runtime.KeepAlive(&kept)
}

// mapping is a stretch of memory and how many of its bytes are in large pages.
type mapping struct {
	from, to uintptr
	large    int
}

// mappings are those of this process, see proc(5).
func mappings(t *testing.T) (all []mapping) {
	t.Helper()
	text, err := os.ReadFile("/proc/self/smaps")
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(string(text)) {
		var m mapping
		var kB int
		if n, _ := fmt.Sscanf(line, "%x-%x ", &m.from, &m.to); n == 2 {
			all = append(all, m)
		} else if n, _ := fmt.Sscanf(line, "AnonHugePages: %d kB", &kB); n == 1 {
			all[len(all)-1].large = kB << 10
		}
	}
	return all
}
