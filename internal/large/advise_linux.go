package large

import (
	"unsafe"

	"golang.org/x/sys/unix"
)

// page is the side of a large page in bytes.
const page = 2 << 20

// advise asks for large pages where b has room for whole ones. A system that has none
// says no, and nothing is lost.
func advise(b []byte) {
	if len(b) < page {
		return
	}
	start := uintptr(unsafe.Pointer(unsafe.SliceData(b)))
	from, to := -start%page, uintptr(len(b))-(start+uintptr(len(b)))%page
	if from < to {
		_ = unix.Madvise(b[from:to], unix.MADV_HUGEPAGE)
	}
}
