// Package large gives memory for pictures and other buffers of megabytes, and for what
// a program takes at its start. It comes in large pages where the system has them on
// request (Linux): bringing in a picture of 8 MB page by page of 4 KB takes longer than
// drawing on it.
package large
