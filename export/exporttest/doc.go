// Package exporttest helps the tests of the exporters: a small play that needs
// no lesson, clips read back by ffmpeg, and pages opened in headless Chromium.
// It promises the same scenes for the same times.
package exporttest
