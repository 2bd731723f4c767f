package main

import "fyne.io/fyne/v2"

// readFonts has the toolkit read the fonts of its first words while the display is
// opened; what is returned is closed when they are there. Nothing else of the toolkit
// may be asked for before.
func readFonts() <-chan struct{} {
	read := make(chan struct{})
	go func() {
		defer close(read)
		for _, style := range []fyne.TextStyle{{}, {Bold: true}} {
			fyne.MeasureText("x", 1, style)
		}
	}()
	return read
}
