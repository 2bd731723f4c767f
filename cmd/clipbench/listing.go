package main

import (
	"bufio"
	"encoding/binary"
	"image/color"
	"io"
	"math"

	"homeside/canvas"
	"homeside/canvas/look"
)

// listing writes the shapes of scenes as testdata/baseline/baseline.c reads them,
// little-endian: width, height and number of frames, the ground's colour, what
// stands still, then every frame, each ended by 'F'. A shape is 'P' with its
// steps, fill, stroke, width, whether it is round, and dashes; or 'T' with font,
// size, colour and glyphs, each in its place.
type listing struct{ w *bufio.Writer }

var _ canvas.Surface = listing{}

// list writes a job's display list.
func list(w io.Writer, j job) error {
	l := listing{bufio.NewWriter(w)}
	ground := j.source.Static(j.width, j.height)
	l.numbers(j.width, j.height, j.frames())
	l.colour(ground.Background)
	canvas.Draw(l, ground)
	l.byte('F')
	for i := range j.frames() {
		canvas.Draw(l, j.source.Moving(j.width, j.height, j.at(i)))
		l.byte('F')
	}
	return l.w.Flush() // a bufio.Writer keeps its first error
}

// Path implements canvas.Surface.
func (l listing) Path(_ canvas.Info, path []canvas.PxStep, s canvas.PxStyle) {
	l.byte('P')
	l.numbers(len(path))
	for _, step := range path {
		l.byte("MLCZ"[step.Op])
		for _, p := range step.P[:[...]int{1, 1, 3, 0}[step.Op]] {
			l.reals(p.X, p.Y)
		}
	}
	l.colour(s.Fill)
	l.colour(s.Stroke)
	l.reals(s.Width)
	round := byte(0)
	if s.Round {
		round = 1
	}
	l.byte(round)
	l.byte(byte(len(s.Dash)))
	l.reals(s.Dash...)
}

// Text implements canvas.Surface.
func (l listing) Text(_ canvas.Info, t canvas.PxText) {
	line, width := look.Glyphs(t.Text, t.Bold)
	scale := t.Size / look.Em
	x := t.Start(width * scale)
	for len(line) > 0 {
		n := 1
		for n < len(line) && line[n].Font == line[0].Font {
			n++
		}
		l.byte('T')
		l.byte(byte(line[0].Font))
		l.reals(t.Size)
		l.colour(t.Colour)
		l.numbers(n)
		for _, g := range line[:n] {
			l.numbers(int(g.Index))
			l.reals(x+g.X*scale, t.At.Y+g.Y*scale)
		}
		line = line[n:]
	}
}

// Image implements canvas.Surface. The built-in lesson has no pictures of pixels.
func (l listing) Image(info canvas.Info, _ canvas.PxImage) {
	panic("a display list has no pictures: " + info.ID)
}

func (l listing) byte(b byte) { _ = l.w.WriteByte(b) }

func (l listing) colour(c color.NRGBA) { _, _ = l.w.Write([]byte{c.R, c.G, c.B, c.A}) }

func (l listing) numbers(vs ...int) {
	for _, v := range vs {
		_, _ = l.w.Write(binary.LittleEndian.AppendUint32(nil, uint32(v)))
	}
}

func (l listing) reals(vs ...float64) {
	for _, v := range vs {
		_, _ = l.w.Write(binary.LittleEndian.AppendUint32(nil, math.Float32bits(float32(v))))
	}
}
