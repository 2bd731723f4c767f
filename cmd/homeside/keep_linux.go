package main

/*
#include <malloc.h>

static void keepFreed(int bytes) {
#ifdef __GLIBC__
	mallopt(M_MMAP_THRESHOLD, bytes);
	mallopt(M_TRIM_THRESHOLD, 2 * bytes);
#endif
}
*/
import "C"

// keepFreed has the C library keep blocks up to the most that it can, as large as a
// window's pixels, when they are freed. The toolkit frees the court's picture for
// every frame and asks for it again; given back to the system in between, its pages
// come back one by one, which takes as long as all else where memory is scarce.
func keepFreed() { C.keepFreed(32 << 20) }
