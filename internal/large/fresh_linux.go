package large

import (
	"unsafe"

	"golang.org/x/sys/unix"
)

// page is the side of a large page in bytes.
const page = 2 << 20

// fresh are n bytes that lie in large pages: they begin where one does. A system that
// has none says no, and nothing is lost. What is left of the last page is not brought in
// by those that have none either.
func fresh(n int) []byte {
	if n < page {
		return make([]byte, n)
	}
	whole := (n + page - 1) / page * page
	b := make([]byte, whole+page)
	b = b[-uintptr(unsafe.Pointer(unsafe.SliceData(b)))%page:]
	_ = unix.Madvise(b[:whole], unix.MADV_HUGEPAGE)
	return b[:n:n]
}
