package sound

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"io"
	"math"

	"homeside/export"
	"homeside/model/units"
)

// Rate is the samples a second of a cue track: what video is made with.
const Rate = 48_000

// A beep's shape: it is full after rise and has died away after length.
// The rise keeps it from clicking.
const (
	rise   units.Seconds = 0.001
	length units.Seconds = 0.09
	loud                 = 0.3 // of full scale, so that three at once do not clip
)

// WriteWAV writes a play's beeps as a mono 16-bit WAV (Microsoft and IBM,
// Multimedia Programming Interface and Data Specifications 1.0, 1991) that lasts
// as long as the clip of the same options. Pitches do not follow the speed.
func WriteWAV(w io.Writer, p Play, o *export.Options) error {
	c, err := o.Checked()
	if err != nil {
		return err
	}
	from, to, err := c.Stretch(p)
	if err != nil {
		return err
	}
	return write(w, p.inClip(from, c.Speed), units.Seconds(float64(to-from)/c.Speed), c.Progress)
}

// WriteTrack is WriteWAV for the frames of a clip, to the length of the last one;
// it is an export.Track.
func (p Play) WriteTrack(w io.Writer, t export.Times) error {
	return Write(w, p.inClip(t.From, t.Speed), t.Length())
}

// inClip are the beeps by the times of a clip that begins at a moment.
func (p Play) inClip(from units.Seconds, speed float64) []Beep {
	var all []Beep
	for _, b := range p.Beeps {
		if b.At >= from {
			all = append(all, Beep{units.Seconds(float64(b.At-from) / speed), b.Kind})
		}
	}
	return all
}

// MaxLength is the longest track: longer ones are a mistake, not a clip.
const MaxLength units.Seconds = 3600

// Write writes beeps as a WAV; their times count from its start. Beeps that
// begin outside are left out, one that the end cuts is cut. It holds a second of
// them at a time.
func Write(w io.Writer, beeps []Beep, lasts units.Seconds) error {
	return write(w, beeps, lasts, func(int, int) {})
}

// write is Write, telling of every second.
func write(w io.Writer, beeps []Beep, lasts units.Seconds, progress func(done, total int)) error {
	if !(lasts >= 0 && lasts <= MaxLength) {
		return fmt.Errorf("a track of %v s: between 0 and %v s are possible", lasts, MaxLength)
	}
	n := place(lasts)
	if _, err := w.Write(header(n)); err != nil {
		return err
	}
	for from := 0; from < n; from += Rate {
		if _, err := w.Write(piece(beeps, from, min(from+Rate, n))); err != nil {
			return err
		}
		progress(from/Rate+1, (n+Rate-1)/Rate)
	}
	return nil
}

// place is the sample at a time.
func place(t units.Seconds) int { return int(math.Round(float64(t) * Rate)) }

// piece are the samples of a stretch as a WAV has them.
func piece(beeps []Beep, from, to int) []byte {
	sum := make([]float64, to-from)
	for _, b := range beeps {
		ring(sum, from, b)
	}
	out := make([]byte, 0, 2*len(sum))
	for _, v := range sum {
		out = binary.LittleEndian.AppendUint16(out, uint16(int16(math.Round(max(min(v, 1), -1)*math.MaxInt16))))
	}
	return out
}

// ring adds what is heard of a beep in a stretch that begins at a sample.
func ring(sum []float64, from int, b Beep) {
	start := place(b.At)
	if start < 0 {
		return
	}
	for i := max(start, from); i < min(start+int(length*Rate), from+len(sum)); i++ {
		t := float64(i-start) / Rate
		sum[i-from] += loud * envelope(units.Seconds(t)) * math.Sin(2*math.Pi*b.Kind.Pitch()*t)
	}
}

// envelope is how loud a beep is t after its start, at most 1.
func envelope(t units.Seconds) float64 {
	left := float64(1 - t/length)
	return min(float64(t/rise), 1) * left * left
}

// header is all of a WAV before its samples.
func header(samples int) []byte {
	const bytesEach = 2
	size := uint32(samples * bytesEach) // MaxLength keeps it below 2^32
	var b bytes.Buffer
	for _, field := range []any{
		[4]byte{'R', 'I', 'F', 'F'}, 36 + size, [4]byte{'W', 'A', 'V', 'E'},
		[4]byte{'f', 'm', 't', ' '}, uint32(16), uint16(1), uint16(1), uint32(Rate), uint32(Rate * bytesEach), uint16(bytesEach), uint16(8 * bytesEach),
		[4]byte{'d', 'a', 't', 'a'}, size,
	} {
		_ = binary.Write(&b, binary.LittleEndian, field) // as in Write
	}
	return b.Bytes()
}
