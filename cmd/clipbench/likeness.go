package main

import (
	"bufio"
	"context"
	"fmt"
	"image"
	"io"
	"math"
	"os/exec"

	"homeside/canvas/raster"
)

// pictures gives the frames of a clip in turn, each of four bytes a pixel, red
// first; lent until the next one.
type pictures func() ([]byte, error)

// drawn are our own frames.
func drawn(j job) pictures {
	frames, i := raster.NewFrames(j.source.Static(j.width, j.height)), 0
	return func() ([]byte, error) {
		img := frames.Draw(j.source.Moving(j.width, j.height, j.at(i)))
		i++
		return img.Pix, nil
	}
}

// printed are the frames that a program writes, with blue first if swapped.
func printed(ctx context.Context, j job, swapped bool, command ...string) (pictures, func() error, error) {
	cmd := exec.CommandContext(ctx, command[0], command[1:]...)
	out, err := cmd.StdoutPipe()
	if err != nil {
		return nil, nil, err
	}
	if err := cmd.Start(); err != nil {
		return nil, nil, err
	}
	in, pix := bufio.NewReaderSize(out, 1<<20), image.NewRGBA(image.Rect(0, 0, j.width, j.height)).Pix
	return func() ([]byte, error) {
		_, err := io.ReadFull(in, pix)
		for i := 0; swapped && i < len(pix); i += 4 {
			pix[i], pix[i+2] = pix[i+2], pix[i]
		}
		return pix, err
	}, func() error { return cmd.Wait() }, nil
}

// likeness is the PSNR in dB of a file beside the frames it was made from, over
// all frames and colours; infinite if they are the same.
func likeness(ctx context.Context, j job, path string, from pictures) (float64, error) {
	decoded, ended, err := printed(ctx, j, false, "ffmpeg", "-v", "error", "-i", path, "-fps_mode", "passthrough", "-f", "rawvideo", "-pix_fmt", "rgba", "-")
	if err != nil {
		return 0, err
	}
	sum := 0.0
	for i := range j.frames() {
		a, err := from()
		if err != nil {
			return 0, fmt.Errorf("frame %d as it was drawn: %w", i, err)
		}
		b, err := decoded()
		if err != nil {
			return 0, fmt.Errorf("frame %d of %s: %w", i, path, err)
		}
		sum += squares(a, b)
	}
	return 10 * math.Log10(255*255/(sum/float64(3*j.width*j.height*j.frames()))), ended()
}

// squares is the sum of the squares of the differences of two pictures' colours.
func squares(a, b []byte) float64 {
	sum := uint64(0)
	for i := 0; i < len(a); i += 4 {
		for k := range 3 {
			d := int(a[i+k]) - int(b[i+k])
			sum += uint64(d * d)
		}
	}
	return float64(sum)
}
