package formats

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export"
	"homeside/export/captions"
	"homeside/export/exporttest"
	"homeside/export/sound"
)

var spoken = Told{
	Words: captions.Play{
		Title: "one", To: 2,
		Cues:     []captions.Line{{From: 0.5, To: 1, Text: "a < b", Spoken: true}},
		Chapters: []captions.Line{{To: 2, Text: "all"}},
	},
	Beeps: sound.Play{To: 2, Beeps: []sound.Beep{{At: 1, Kind: sound.Contact}}},
}

func TestTextByPath(t *testing.T) {
	for path, want := range map[string]string{
		"a.vtt": ".vtt", "A.SRT": ".srt", "x.gif/a.txt": ".txt", "a.Chapters.VTT": ".chapters.vtt", "chapters.vtt": ".vtt",
		"a.gif": "", "vtt": "", "a.vtt/x": "", "": "", "a.vtt.gz": "",
	} {
		if got, ok := TextByPath(path); got.Ext != want || ok != (want != "") {
			t.Errorf("TextByPath(%q) = %q, %v, want %q", path, got.Ext, ok, want)
		}
	}
}

// No ending means both a picture and a text.
func TestTextsAreWhole(t *testing.T) {
	for _, f := range Texts {
		if got, ok := TextByPath("x" + f.Ext); !ok || got.Name != f.Name || f.Name == "" || f.Ext != strings.ToLower(f.Ext) {
			t.Errorf("TextByPath(x%s) = %q, %v, want %q", f.Ext, got.Name, ok, f.Name)
		}
		if got, err := ByPath("x" + f.Ext); err == nil {
			t.Errorf("%s is also a %s", f.Ext, got.Name)
		}
	}
}

func TestSaveText(t *testing.T) {
	for ext, want := range map[string]string{
		".vtt":          "WEBVTT\n\n1\n00:00:01.000 --> 00:00:02.000\na &lt; b\n",
		".srt":          "1\n00:00:01,000 --> 00:00:02,000\na <\u2060 b\n",
		".chapters.vtt": "WEBVTT\n\n1\n00:00:00.000 --> 00:00:04.000\nall\n",
	} {
		path := filepath.Join(t.TempDir(), "x"+ext)
		f, _ := TextByPath(path)
		err := SaveText(context.Background(), path, f, spoken, &export.Options{Speed: 0.5})
		got, err2 := os.ReadFile(path)
		if err := errors.Join(err, err2); err != nil || string(got) != want {
			t.Errorf("SaveText %s: %q, %v, want %q", ext, got, err, want)
		}
	}
}

// A cue track lasts as long as the clip: 2 s at half speed are 4 s of 48,000
// samples of 2 bytes after a header of 44 bytes.
func TestSaveSound(t *testing.T) {
	path := filepath.Join(t.TempDir(), "x.wav")
	f, _ := TextByPath(path)
	err := SaveText(context.Background(), path, f, spoken, &export.Options{Speed: 0.5})
	got, err2 := os.ReadFile(path)
	if err := errors.Join(err, err2); err != nil || len(got) != 44+4*48_000*2 || string(got[:4]) != "RIFF" {
		t.Errorf("SaveText .wav: %d bytes, %v, want %d", len(got), err, 44+4*48_000*2)
	}
}

// A text that cannot be written, or is cancelled, leaves nothing.
func TestSaveTextLeavesNothing(t *testing.T) {
	cancelled, cancel := context.WithCancel(context.Background())
	cancel()
	folder := t.TempDir()
	for _, f := range Texts {
		path := filepath.Join(folder, "x"+f.Ext)
		if err := SaveText(cancelled, path, f, spoken, nil); !errors.Is(err, context.Canceled) {
			t.Errorf("SaveText %s cancelled: error %v, want %v", f.Ext, err, context.Canceled)
		}
		if err := SaveText(context.Background(), path, f, spoken, &export.Options{Speed: 99}); err == nil {
			t.Errorf("SaveText %s at speed 99: no error", f.Ext)
		}
	}
	if left := exporttest.Files(t, folder); len(left) != 0 {
		t.Errorf("%v is left behind", left)
	}
}
