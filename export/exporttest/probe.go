package exporttest

import (
	"bytes"
	"encoding/json"
	"errors"
	"image"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// Clip is what ffprobe reads in a file.
type Clip struct {
	Codec, Format string
	Width, Height int
	Frames        int     // decoded, not believed
	DurationS     float64 // of the container, or of its frames if it has none
	Rate          float64 // frames a second on average, as the file says; 0 if it does not
	StreamNames   int     // tags on the stream
}

// Probe reads a file with ffprobe, from FFmpeg.
func Probe(t testing.TB, path string) Clip {
	t.Helper()
	out := run(t, "ffprobe", "-v", "error", "-count_frames", "-select_streams", "v", "-of", "json",
		"-show_entries", "stream=codec_name,width,height,nb_read_frames,avg_frame_rate:format=format_name,duration:stream_tags", path)
	var found struct {
		Streams []struct {
			Codec  string            `json:"codec_name"`
			Width  int               `json:"width"`
			Height int               `json:"height"`
			Frames string            `json:"nb_read_frames"`
			Rate   string            `json:"avg_frame_rate"`
			Tags   map[string]string `json:"tags"`
		} `json:"streams"`
		Format struct {
			Name     string `json:"format_name"`
			Duration string `json:"duration"`
		} `json:"format"`
	}
	if err := json.Unmarshal(out, &found); err != nil || len(found.Streams) != 1 {
		t.Fatalf("ffprobe %s: %d video streams (%v), want 1: %s", path, len(found.Streams), err, out)
	}
	s := found.Streams[0]
	frames, err := strconv.Atoi(s.Frames)
	if found.Format.Duration == "" {
		found.Format.Duration = lengthOf(t, path)
	}
	duration, err2 := strconv.ParseFloat(found.Format.Duration, 64)
	if err := errors.Join(err, err2); err != nil {
		t.Fatalf("ffprobe %s: %v", path, err)
	}
	return Clip{s.Codec, found.Format.Name, s.Width, s.Height, frames, duration, rate(s.Rate), len(s.Tags)}
}

// rate reads a fraction; one without a denominator is 0.
func rate(s string) float64 {
	above, below, _ := strings.Cut(s, "/")
	a, err := strconv.ParseFloat(above, 64)
	b, err2 := strconv.ParseFloat(below, 64)
	if err != nil || err2 != nil || b == 0 {
		return 0
	}
	return a / b
}

// PixelFormat is how FFmpeg calls the samples of a clip, such as yuv420p.
func PixelFormat(t testing.TB, path string) string {
	t.Helper()
	out := run(t, "ffprobe", "-v", "error", "-select_streams", "v", "-of", "csv=p=0", "-show_entries", "stream=pix_fmt", path)
	return strings.TrimRight(strings.TrimSpace(string(out)), ",")
}

// lengthOf is the sum of the times that frames are shown, in seconds.
func lengthOf(t testing.TB, path string) string {
	t.Helper()
	out := run(t, "ffprobe", "-v", "error", "-select_streams", "v", "-of", "csv=p=0", "-show_entries", "packet=duration_time", path)
	sum := 0.0
	for _, field := range strings.Fields(string(out)) {
		s, err := strconv.ParseFloat(strings.TrimRight(field, ","), 64)
		if err != nil {
			t.Fatalf("ffprobe %s: %v", path, err)
		}
		sum += s
	}
	return strconv.FormatFloat(sum, 'f', 6, 64)
}

// Decode reads all frames of a clip with ffmpeg. Transparent ones are straight:
// colours are as they are before alpha.
func Decode(t testing.TB, path string) []*image.RGBA {
	t.Helper()
	return DecodeWith(t, path, "")
}

// DecodeWith is Decode with a decoder of ffmpeg's; libvpx-vp9 knows alpha, where
// the one that ffmpeg prefers does not. "" is that one.
func DecodeWith(t testing.TB, path, decoder string) []*image.RGBA {
	t.Helper()
	c := Probe(t, path)
	args := []string{"-v", "error"}
	if decoder != "" {
		args = append(args, "-c:v", decoder)
	}
	pix := run(t, "ffmpeg", append(args, "-i", path, "-fps_mode", "passthrough", "-f", "rawvideo", "-pix_fmt", "rgba", "-")...)
	size := c.Width * c.Height * 4
	if len(pix) != size*c.Frames {
		t.Fatalf("ffmpeg decoded %d bytes of %s, want %d frames of %d", len(pix), path, c.Frames, size)
	}
	frames := make([]*image.RGBA, c.Frames)
	for i := range frames {
		frames[i] = &image.RGBA{Pix: pix[i*size : (i+1)*size], Stride: c.Width * 4, Rect: image.Rect(0, 0, c.Width, c.Height)}
	}
	return frames
}

func run(t testing.TB, program string, args ...string) []byte {
	t.Helper()
	if _, err := exec.LookPath(program); err != nil {
		t.Fatalf("%s is needed to read clips back: install the Debian package ffmpeg", program)
	}
	var errs bytes.Buffer
	c := exec.Command(program, args...)
	c.Stderr = &errs
	out, err := c.Output()
	if err != nil || errs.Len() > 0 {
		t.Fatalf("%s: %v: %s", program, err, errs.Bytes())
	}
	return out
}

// Files are the names in a folder and below it.
func Files(t testing.TB, folder string) []string {
	t.Helper()
	names := []string{}
	err := filepath.WalkDir(folder, func(path string, _ os.DirEntry, err error) error {
		if path != folder {
			names = append(names, path)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return names
}
