// Command clipbench measures clips beside a C program that draws the same shapes
// with cairo and pipes them to ffmpeg, whole processes side by side in one run:
// time, size, likeness to the drawn frames, memory. It asserts nothing.
package main
