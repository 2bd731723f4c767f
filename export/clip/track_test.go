package clip

import (
	"bytes"
	"context"
	"encoding/base64"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/units"
)

// heardClips are the clips that can be heard, with what packs their sound.
var heardClips = map[string]string{".mp4": "aac", ".webm": "opus"}

// tones is a track with a dying tone of 1000 Hz at some times of the clip.
func tones(at ...units.Seconds) export.Track {
	return func(w io.Writer, t export.Times) error {
		const rate = exporttest.HeardRate
		samples := make([]int16, int(math.Round(float64(t.Length())*rate)))
		for _, from := range at {
			for i := int(from * rate); i < min(int((from+0.09)*rate), len(samples)); i++ {
				s := float64(i)/rate - float64(from)
				samples[i] = int16(10_000 * math.Exp(-s/0.03) * math.Sin(2*math.Pi*1000*s))
			}
		}
		size := uint32(2 * len(samples))
		head := fmt.Appendf(nil, "RIFF%sWAVEfmt %s", le(36+size), le(16, 1|1<<16, rate, 2*rate, 2|16<<16))
		_, err := w.Write(fmt.Appendf(head, "data%s%s", le(size), pcm(samples)))
		return err
	}
}

func le(v ...uint32) (b []byte) {
	for _, x := range v {
		b = binary.LittleEndian.AppendUint32(b, x)
	}
	return b
}

func pcm(v []int16) (b []byte) {
	for _, x := range v {
		b = binary.LittleEndian.AppendUint16(b, uint16(x))
	}
	return b
}

// What is heard begins and ends with the picture, as FFmpeg reads it back, and a
// tone is heard within 5 ms of its time: the encoder's own beginning is left out.
func TestTrackIsHeard(t *testing.T) {
	t.Parallel()
	for ext, codec := range heardClips {
		o := small()
		o.FPS, o.Track = 7, tones(0.31, 1.5)
		path := writeFile(t, ext, o)
		if got := exporttest.HeardCodec(t, path); got != codec {
			t.Errorf("%s is heard by %q, want %s", ext, got, codec)
		}
		picture := exporttest.Probe(t, path)
		if picture.Frames != 14 || math.Abs(picture.DurationS-2) > 0.005 {
			t.Errorf("%s has %d frames in %v s, want 14 in 2 s within 5 ms", ext, picture.Frames, picture.DurationS)
		}
		samples, after := exporttest.Heard(t, path), exporttest.HeardAfter(t, path)
		if lasts := float64(len(samples)) / exporttest.HeardRate; math.Abs(lasts-2) > 0.022 { // a packet's padding at most
			t.Errorf("%s is heard for %v s, want 2", ext, lasts)
		}
		for _, want := range []units.Seconds{0.31, 1.5} {
			got, strength := exporttest.Onset(samples, 1000, want)
			if got += after; math.Abs(float64(got-want)) > 0.005 || strength < 10 {
				t.Errorf("%s: a tone is heard at %.4f s (strength %.1f), want %.4f within 5 ms", ext, got, strength, want)
			}
		}
	}
}

// The same is heard in every run, byte for byte.
func TestTrackIsDeterministic(t *testing.T) {
	for ext := range heardClips {
		o := small()
		o.Track = tones(0.5)
		var a, b bytes.Buffer
		write := writers[ext]
		if err := errors.Join(write(context.Background(), &a, play, o), write(context.Background(), &b, play, o)); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(a.Bytes(), b.Bytes()) || a.Len() == 0 {
			t.Errorf("two %s with the same track differ: %d and %d bytes", ext, a.Len(), b.Len())
		}
	}
}

// What is laid over footage, and every format without sound, is silent, and
// nobody makes the track.
func TestSilentClips(t *testing.T) {
	track := func(io.Writer, export.Times) error { return errors.New("asked for") }
	for ext := range writers {
		for _, clear := range []bool{false, true} {
			o := small()
			o.Track, o.Ground.Clear = track, clear
			err := writers[ext](context.Background(), io.Discard, play, o)
			var refused *export.ClearError
			if errors.As(err, &refused) {
				continue
			}
			if heard := heardClips[ext] != "" && !clear; (err != nil) != heard {
				t.Errorf("%s, clear %v, with a track that cannot be made: error %v, and it should be heard: %v", ext, clear, err, heard)
			}
		}
	}
	o := small()
	o.Track, o.Ground.Clear = tones(0.5), true
	if got := exporttest.HeardCodec(t, writeFile(t, ".webm", o)); got != "" {
		t.Errorf("a WebM on a clear ground is heard by %q, want silence", got)
	}
}

// A track that cannot be made, or is cancelled, leaves nothing and packs nothing.
func TestTrackThatFails(t *testing.T) {
	for ext := range heardClips {
		ctx, cancel := context.WithCancel(context.Background())
		broken := errors.New("no beeps today")
		for _, c := range []struct {
			track export.Track
			want  error
		}{
			{func(w io.Writer, _ export.Times) error { _, _ = w.Write([]byte("half")); return broken }, broken},
			{func(w io.Writer, _ export.Times) error { cancel(); _, err := w.Write([]byte("x")); return err }, context.Canceled},
		} {
			o := small()
			o.Track, o.Scratch = c.track, t.TempDir()
			var out bytes.Buffer
			err := writers[ext](ctx, &out, play, o)
			if left := exporttest.Files(t, o.Scratch); !errors.Is(err, c.want) || len(left) != 0 || out.Len() != 0 {
				t.Errorf("%s: error %v, want %v; %v is left, %d bytes are written", ext, err, c.want, left, out.Len())
			}
		}
		cancel()
	}
}

// The track is there, in the folder that goes with it, when ffmpeg begins.
func TestTrackIsTemporary(t *testing.T) {
	for ext := range heardClips {
		o := small()
		o.Track, o.Scratch = tones(0.5), t.TempDir()
		seen := int64(0)
		o.Progress = func(int, int) {
			if found, _ := filepath.Glob(filepath.Join(o.Scratch, "*", "track.wav")); len(found) == 1 {
				if info, err := os.Stat(found[0]); err == nil {
					seen = info.Size()
				}
			}
		}
		writeFile(t, ext, o)
		if left := exporttest.Files(t, o.Scratch); seen != 44+2*2*exporttest.HeardRate || len(left) != 0 {
			t.Errorf("%s: a track of %d bytes was beside it, want %d, and %v is left", ext, seen, 44+2*2*exporttest.HeardRate, left)
		}
	}
}

// heardPage decodes a clip by Chromium's own means: how long it is heard, and when
// it is first louder than a fiftieth after a tenth of a second of less.
const heardPage = `<!doctype html><meta charset="utf-8"><title>heard</title><script>
window.heard = (async () => {
  const file = Uint8Array.from(atob(%q), c => c.charCodeAt(0)).buffer;
  const sound = await new OfflineAudioContext(1, 48000, 48000).decodeAudioData(file);
  const samples = sound.getChannelData(0), starts = [];
  for (let i = 0, last = -Infinity; i < samples.length; i++) {
    if (Math.abs(samples[i]) < 0.02) continue;
    if (i - last > 4800) starts.push(i / 48000);
    last = i;
  }
  return [sound.duration, starts];
})();
</script>`

// Chromium leaves the encoder's beginning out as well: a tone begins within 5 ms
// of its time in what it decodes.
func TestTrackInChromium(t *testing.T) {
	for ext := range heardClips {
		o := small()
		o.Track = tones(0.31, 1.5)
		file, err := os.ReadFile(writeFile(t, ext, o))
		if err != nil {
			t.Fatal(err)
		}
		path := filepath.Join(t.TempDir(), "heard.html")
		if err := os.WriteFile(path, fmt.Appendf(nil, heardPage, base64.StdEncoding.EncodeToString(file)), 0o600); err != nil {
			t.Fatal(err)
		}
		p := exporttest.OpenPage(t, path, 320, 240)
		lasts, starts := exporttest.Eval[float64](p, "heard.then(h => h[0])"), exporttest.Eval[[]float64](p, "heard.then(h => h[1])")
		if len(starts) != 2 || math.Abs(starts[0]-0.31) > 0.005 || math.Abs(starts[1]-1.5) > 0.005 || math.Abs(lasts-2) > 0.022 {
			t.Errorf("%s: Chromium hears tones at %v in %v s, want 0.31 and 1.5 in 2 s", ext, starts, lasts)
		}
	}
}
