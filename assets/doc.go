// Package assets holds what is built into the program: fonts and lessons.
// It promises bytes that never change at run time. The fonts are Noto Sans
// (SIL Open Font License 1.1, fonts/OFL.txt), the same that the window uses, so
// that editor and exports match.
package assets
