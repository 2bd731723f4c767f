package sound

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

func builtIn(t testing.TB) *rally.Rally {
	t.Helper()
	r, err := rally.Solve(exporttest.BuiltIn(t), 0)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func wav(t testing.TB, p Play, o *export.Options) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := WriteWAV(&b, p, o); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// heard are the samples of a WAV as ffmpeg, a program from outside, decodes it.
func heard(t testing.TB, wav []byte) []float64 {
	t.Helper()
	path := filepath.Join(t.TempDir(), "x.wav")
	if err := os.WriteFile(path, wav, 0o600); err != nil {
		t.Fatal(err)
	}
	raw, err := exec.Command("ffmpeg", "-v", "error", "-i", path, "-f", "f64le", "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	samples := make([]float64, len(raw)/8)
	if err := binary.Read(bytes.NewReader(raw), binary.LittleEndian, samples); err != nil {
		t.Fatal(err)
	}
	return samples
}

// onset is where near a moment a beep of this pitch begins: the peak of the
// correlation with a dying tone in quadrature, which does not know how beeps
// are made.
func onset(samples []float64, hz float64, around units.Seconds) (at units.Seconds, strength float64) {
	const window, search, step = Rate * 60 / 1000, Rate * 80 / 1000, Rate / 2000
	middle := int(float64(around) * Rate)
	for i := max(middle-search, 0); i < min(middle+search, len(samples)-window); i += step {
		var re, im float64
		for j := range window {
			fade := math.Exp(-float64(j) / (window / 3))
			re += samples[i+j] * fade * math.Cos(2*math.Pi*hz*float64(j)/Rate)
			im += samples[i+j] * fade * math.Sin(2*math.Pi*hz*float64(j)/Rate)
		}
		if s := math.Hypot(re, im); s > strength {
			at, strength = units.Seconds(i)/Rate, s
		}
	}
	return at, strength
}

// The events of the rally are heard within 5 ms of their times, at every speed
// and from any moment on.
func TestBeepsAreOnTime(t *testing.T) {
	r := builtIn(t)
	from := units.Seconds(0.4)
	for _, o := range []export.Options{{}, {Speed: 0.5}, {From: &from}, {Speed: 0.4, From: &from}} {
		checked, err := o.Checked()
		if err != nil {
			t.Fatal(err)
		}
		start := r.From
		if o.From != nil {
			start = from
		}
		samples, found := heard(t, wav(t, Of(r), &o)), 0
		for _, e := range r.Events {
			want := units.Seconds(float64(e.At-start) / checked.Speed)
			pitch, ok := map[lesson.Moment]float64{lesson.Contact: 1000, lesson.Bounce: 620}[e.Name.Moment]
			if !ok || !e.Reached || e.At < start || e.Name == lesson.TheEnd {
				continue
			}
			found++
			if got, strength := onset(samples, pitch, want); math.Abs(float64(got-want)) > 0.005 || strength < 10 {
				t.Errorf("speed %v from %v: %v is heard at %v (strength %.1f), want %v within 5 ms", checked.Speed, start, e.Name, got, strength, want)
			}
		}
		if found < 4 {
			t.Errorf("only %d events were looked for, want at least 4: the test hears nothing", found)
		}
	}
}

// Where nothing happens there is silence.
func TestSilenceBeforeTheServe(t *testing.T) {
	r := builtIn(t)
	samples := heard(t, wav(t, Play{From: r.From, To: r.To, Beeps: []Beep{{0, Contact}}}, nil))
	serve := int(float64(-r.From) * Rate)
	for i, v := range samples {
		if quiet := i <= serve || i > serve+int(length*Rate); quiet && v != 0 {
			t.Fatalf("sample %d is %v, want silence", i, v)
		}
	}
	if peak := samples[serve+Rate/1000*2 : serve+Rate/100]; loudest(peak) < 0.2 {
		t.Errorf("just after the serve the loudest sample is %v, want above 0.2", loudest(peak))
	}
}

func loudest(samples []float64) float64 {
	most := 0.0
	for _, v := range samples {
		most = max(most, math.Abs(v))
	}
	return most
}

// A track lasts as long as its clip, to a sample, as ffprobe reads it.
func TestLastsAsTheClip(t *testing.T) {
	r := builtIn(t)
	for _, speed := range []float64{0.4, 1, 2} {
		path := filepath.Join(t.TempDir(), "x.wav")
		if err := os.WriteFile(path, wav(t, Of(r), &export.Options{Speed: speed}), 0o600); err != nil {
			t.Fatal(err)
		}
		out, err := exec.Command("ffprobe", "-v", "error", "-show_entries", "stream=codec_name,sample_rate,channels,duration_ts", "-of", "csv=p=0", path).Output()
		if err != nil {
			t.Fatal(err)
		}
		want := "pcm_s16le,48000,1," + fmt.Sprint(int(math.Round(float64(r.To-r.From)/speed*48000)))
		if got := strings.TrimSpace(string(out)); got != want {
			t.Errorf("at speed %v ffprobe reads %s, want %s", speed, got, want)
		}
	}
}

// Three beeps at once do not reach the ends of the scale.
func TestDoesNotClip(t *testing.T) {
	beeps := []Beep{{0.1, Contact}, {0.1, Bounce}, {0.1, Arrival}}
	for _, v := range Samples(beeps, 0.5) {
		if v == math.MaxInt16 || v == -math.MaxInt16 {
			t.Fatalf("a sample is %d: three beeps at once clip", v)
		}
	}
}

func TestOutOfBounds(t *testing.T) {
	for _, lasts := range []units.Seconds{-1, MaxLength + 1, units.Seconds(math.NaN()), units.Seconds(math.Inf(1))} {
		var b bytes.Buffer
		if err := Write(&b, nil, lasts); err == nil || b.Len() > 0 {
			t.Errorf("Write of a track of %v s: error %v, %d bytes, want an error and none", lasts, err, b.Len())
		}
	}
	if got := Samples([]Beep{{-1, Contact}, {2, Contact}, {0.999, Bounce}}, 1); len(got) != Rate || got[0] != 0 {
		t.Errorf("beeps outside a track of 1 s make %d samples, the first %d, want %d and 0", len(got), got[0], Rate)
	}
}
