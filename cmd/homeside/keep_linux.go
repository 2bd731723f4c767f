package main

/*
#include <malloc.h>
#include <stdint.h>
#include <stdlib.h>
#include <sys/mman.h>
#include <unistd.h>

#ifdef __GLIBC__
enum { page = 2 << 20, piece = 1 << 20, usualPad = 128 << 10 };

static void keepFreed(int bytes) {
	mallopt(M_MMAP_THRESHOLD, bytes);
	mallopt(M_TRIM_THRESHOLD, 2 * bytes);
}

static void growInLargePages(int bytes) {
	uintptr_t from = (uintptr_t)sbrk(0), to;
	mallopt(M_TOP_PAD, bytes);
	void *volatile grown = malloc(piece);
	free(grown);
	mallopt(M_TOP_PAD, usualPad);
	from = (from + page - 1) / page * page;
	to = (uintptr_t)sbrk(0) / page * page;
	if (from < to) madvise((void *)from, to - from, MADV_HUGEPAGE);
}
#else
static void keepFreed(int bytes) {}
static void growInLargePages(int bytes) {}
#endif
*/
import "C"

// keepFreed has the C library keep blocks up to the most that it can, as large as a
// window's pixels, when they are freed. The toolkit frees the court's picture for
// every frame and asks for it again; given back to the system in between, its pages
// come back one by one, which takes as long as all else where memory is scarce.
// What the graphics driver and the toolkit take at the start comes in large pages for
// the same reason, if there are any.
func keepFreed() {
	C.keepFreed(32 << 20)
	C.growInLargePages(32 << 20)
}
