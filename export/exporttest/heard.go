package exporttest

import (
	"bytes"
	"encoding/binary"
	"math"
	"strconv"
	"strings"
	"testing"

	"homeside/model/units"
)

// HeardRate is the samples a second of Heard.
const HeardRate = 48_000

// Heard are the samples of a WAV, or of what is heard of a clip, as FFmpeg decodes
// them: mono, 1 for full scale.
func Heard(t testing.TB, path string) []float64 {
	t.Helper()
	raw := run(t, "ffmpeg", "-v", "error", "-i", path, "-map", "0:a", "-ac", "1", "-ar", strconv.Itoa(HeardRate), "-f", "f64le", "-")
	samples := make([]float64, len(raw)/8)
	if err := binary.Read(bytes.NewReader(raw), binary.LittleEndian, samples); err != nil {
		t.Fatal(err)
	}
	return samples
}

// HeardAfter is when the first sample of Heard is due, counted from the first
// frame: 0 if a clip's file puts the two where they belong.
func HeardAfter(t testing.TB, path string) units.Seconds {
	t.Helper()
	first := func(stream string) float64 {
		out := run(t, "ffprobe", "-v", "error", "-select_streams", stream, "-read_intervals", "%+#8", "-show_entries", "frame=pts_time", "-of", "csv=p=0", path)
		line, _, _ := strings.Cut(string(out), "\n")
		at, err := strconv.ParseFloat(strings.TrimRight(strings.TrimSpace(line), ","), 64)
		if err != nil {
			t.Fatalf("ffprobe %s: first frame of %s: %v in %q", path, stream, err, out)
		}
		return at
	}
	return units.Seconds(first("a:0") - first("v:0"))
}

// HeardCodec is how FFmpeg calls what is heard of a clip, such as aac; empty if
// nothing is.
func HeardCodec(t testing.TB, path string) string {
	t.Helper()
	out := run(t, "ffprobe", "-v", "error", "-select_streams", "a", "-show_entries", "stream=codec_name", "-of", "csv=p=0", path)
	return strings.TrimSpace(string(out))
}

// Onset is where near a moment a beep of a pitch begins: the peak of the
// correlation with a dying tone in quadrature, which does not know how beeps are
// made.
func Onset(samples []float64, hz float64, around units.Seconds) (at units.Seconds, strength float64) {
	const window, search, step = HeardRate * 60 / 1000, HeardRate * 80 / 1000, HeardRate / 2000
	middle := int(float64(around) * HeardRate)
	for i := max(middle-search, 0); i < min(middle+search, len(samples)-window); i += step {
		var re, im float64
		for j := range window {
			fade := math.Exp(-float64(j) / (window / 3))
			re += samples[i+j] * fade * math.Cos(2*math.Pi*hz*float64(j)/HeardRate)
			im += samples[i+j] * fade * math.Sin(2*math.Pi*hz*float64(j)/HeardRate)
		}
		if s := math.Hypot(re, im); s > strength {
			at, strength = units.Seconds(i)/HeardRate, s
		}
	}
	return at, strength
}

// Loudest is the loudest of samples.
func Loudest(samples []float64) float64 {
	most := 0.0
	for _, v := range samples {
		most = max(most, math.Abs(v))
	}
	return most
}
