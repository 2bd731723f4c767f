package main

import (
	"bytes"
	"encoding/binary"
	"image"
	_ "image/gif"
	_ "image/png" // of animated ones, too
	"io"
	"os"
	"path/filepath"
)

// sizeOf is the size in pixels that the beginning of a picture's or a clip's file
// says: of PNG, animated PNG, GIF, AVI and a folder of PNG frames. false for others,
// such as what ffmpeg has packed and what has no pixels.
func sizeOf(path string) (size image.Point, ok bool) {
	if all, err := filepath.Glob(filepath.Join(path, "*.png")); err == nil && len(all) > 0 {
		path = all[0]
	}
	f, err := os.Open(path)
	if err != nil {
		return size, false
	}
	defer f.Close()
	start := make([]byte, 1<<12) // the headers are shorter
	n, err := io.ReadFull(f, start)
	if err != nil && err != io.ErrUnexpectedEOF {
		return size, false
	}
	if size, ok = sizeOfAVI(start[:n]); ok {
		return size, true
	}
	c, _, err := image.DecodeConfig(bytes.NewReader(start[:n]))
	return image.Pt(c.Width, c.Height), err == nil
}

// sizeOfAVI reads the main header of an AVI file (Microsoft, AVI RIFF File Reference,
// AVIMAINHEADER), which is its first chunk.
func sizeOfAVI(start []byte) (image.Point, bool) {
	const header, width, height = 24, 64, 68
	if len(start) < height+4 || string(start[:4]) != "RIFF" || string(start[8:12]) != "AVI " || string(start[header:header+4]) != "avih" {
		return image.Point{}, false
	}
	at := func(i int) int { return int(binary.LittleEndian.Uint32(start[i:])) }
	return image.Pt(at(width), at(height)), true
}
