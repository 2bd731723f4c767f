package large

import "runtime"

// Heap has what is allocated next come in large pages, n bytes of it: it takes them
// and lets them go, and the memory keeps its kind of pages. That is for a program that
// takes much at its start.
func Heap(n int) {
	Bytes(n)
	runtime.GC()
}
