// Package exporttest helps the tests of the exporters: a small play that needs
// no lesson, and clips read back by ffmpeg, a program from outside.
// It promises the same scenes for the same times.
package exporttest
