package sound

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
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

func track(t testing.TB, beeps []Beep, lasts units.Seconds) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, beeps, lasts); err != nil {
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
	return exporttest.Heard(t, path)
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
			if got, strength := exporttest.Onset(samples, pitch, want); math.Abs(float64(got-want)) > 0.005 || strength < 10 {
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
	if peak := samples[serve+Rate/1000*2 : serve+Rate/100]; exporttest.Loudest(peak) < 0.2 {
		t.Errorf("just after the serve the loudest sample is %v, want above 0.2", exporttest.Loudest(peak))
	}
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

// Every second of a track is told, the last one though it is not whole.
func TestTellsOfItsSeconds(t *testing.T) {
	r := builtIn(t)
	var told []int
	o := &export.Options{Speed: 0.5, Progress: func(done, total int) {
		if want := int(math.Ceil(float64(r.To-r.From) / 0.5)); total != want {
			t.Errorf("after %d seconds it tells of %d, want %d", done, total, want)
		}
		told = append(told, done)
	}}
	wav(t, Of(r), o)
	for i, done := range told {
		if done != i+1 {
			t.Errorf("told are %v, want every second once", told)
			break
		}
	}
	if want := int(math.Ceil(float64(r.To-r.From) / 0.5)); len(told) != want {
		t.Errorf("%d seconds are told, want %d", len(told), want)
	}
}

// Three beeps at once do not reach the ends of the scale.
func TestDoesNotClip(t *testing.T) {
	beeps := []Beep{{0.1, Contact}, {0.1, Bounce}, {0.1, Arrival}}
	samples := heard(t, track(t, beeps, 0.5))
	if most := exporttest.Loudest(samples); most < 0.5 || most > 0.95 {
		t.Errorf("three beeps at once reach %.2f of full scale, want between 0.5 and 0.95", most)
	}
}

func TestOutOfBounds(t *testing.T) {
	for _, lasts := range []units.Seconds{-1, MaxLength + 1, units.Seconds(math.NaN()), units.Seconds(math.Inf(1))} {
		var b bytes.Buffer
		if err := Write(&b, nil, lasts); err == nil || b.Len() > 0 {
			t.Errorf("Write of a track of %v s: error %v, %d bytes, want an error and none", lasts, err, b.Len())
		}
	}
	got := heard(t, track(t, []Beep{{-1, Contact}, {2, Contact}, {0.999, Bounce}}, 1))
	if len(got) != Rate || exporttest.Loudest(got[:Rate*999/1000]) != 0 || exporttest.Loudest(got) == 0 {
		t.Errorf("beeps outside a track of 1 s make %d samples, the loudest before the last beep %v, want %d and 0", len(got), exporttest.Loudest(got[:Rate*999/1000]), Rate)
	}
}

// A beep that begins in one second and dies away in the next is as it is within one.
func TestBeepsAcrossSeconds(t *testing.T) {
	const beep = int(float64(length) * Rate)
	whole, across := heard(t, track(t, []Beep{{0.5, Bounce}}, 3)), heard(t, track(t, []Beep{{1.97, Bounce}}, 3))
	want, got := whole[Rate/2:Rate/2+beep], across[Rate*197/100:Rate*197/100+beep]
	if !slices.Equal(got, want) || exporttest.Loudest(want) < 0.2 || exporttest.Loudest(across[:Rate*197/100]) != 0 {
		t.Errorf("a beep over the end of a second differs from one within it (loudest %.2f, %.2f)", exporttest.Loudest(got), exporttest.Loudest(want))
	}
}

// The track of a clip's frames lasts as long as they are shown, and its beeps are
// where the clip shows their moments.
func TestTrackOfFrames(t *testing.T) {
	p := Play{From: -1, To: 4, Beeps: []Beep{{0, Contact}, {1, Bounce}, {2, Contact}}}
	var b bytes.Buffer
	if err := p.WriteTrack(&b, export.Times{From: 0.5, To: 2.5, FPS: 7, Speed: 0.5, Count: 28}); err != nil {
		t.Fatal(err)
	}
	samples := heard(t, b.Bytes())
	if len(samples) != 4*Rate {
		t.Errorf("28 frames at 7 a second are heard for %d samples, want %d", len(samples), 4*Rate)
	}
	for at, k := range map[units.Seconds]Kind{1: Bounce, 3: Contact} {
		if got, strength := exporttest.Onset(samples, k.Pitch(), at); math.Abs(float64(got-at)) > 0.005 || strength < 10 {
			t.Errorf("%v is heard at %v (strength %.1f), want %v", k, got, strength, at)
		}
	}
	if early := exporttest.Loudest(samples[:Rate*99/100]); early != 0 {
		t.Errorf("before the stretch's first beep the loudest sample is %v, want 0: the serve is not in it", early)
	}
}
