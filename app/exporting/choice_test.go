package exporting

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/export/formats"
	"homeside/export/handout"
)

// Whatever export/formats and export/handout have is offered, each once.
func TestEveryFormatIsOffered(t *testing.T) {
	keys := map[string]int{}
	for _, o := range Outputs() {
		keys[o.Key]++
		if o.Name == "" || !strings.HasPrefix(o.Ext, ".") || o.write == nil && o.save == nil {
			t.Errorf("output %+v lacks a name, an ending or a way to be written", o)
		}
	}
	var want []string
	for _, f := range formats.All {
		want = append(want, f.Ext)
	}
	for _, f := range formats.Texts {
		want = append(want, f.Ext)
	}
	for _, s := range handout.Sheets {
		want = append(want, "handout "+s.Name)
	}
	for _, key := range append(want, ".html") {
		if keys[key] != 1 {
			t.Errorf("%s is offered %d times, want once", key, keys[key])
		}
	}
	if len(keys) != len(want)+1 {
		t.Errorf("%d outputs, want %d", len(keys), len(want)+1)
	}
}

// Every output that needs nothing writes something of a play.
func TestEveryOutputWrites(t *testing.T) {
	s := subject(t)
	for i, o := range Outputs() {
		if o.Needs != nil {
			continue
		}
		c := Choice{Output: i}
		opt := c.options(o, s)
		opt.Width, opt.Height = 48, 64
		if o.Kind == Clip {
			opt.FPS = 2
		}
		path := filepath.Join(t.TempDir(), "x"+o.Ext)
		if err := o.Save(context.Background(), path, s, opt); err != nil {
			t.Errorf("%s: %v", o.Name, err)
		} else if info, err := os.Stat(path); err != nil || !info.IsDir() && info.Size() < 20 {
			t.Errorf("%s: %v, %v; want a file", o.Name, info, err)
		}
	}
}

// A format gets only options that it has.
func TestOptionsOfAnOutput(t *testing.T) {
	s := subject(t)
	s.At = 2
	all := Choice{Size: 3, Rate: len(Rates) - 1, Speed: 1, Ground: 1, Beeps: true}
	for _, o := range Outputs() {
		opt := all.options(o, s)
		if (opt.At != nil) != (o.Kind == Still) || (opt.FPS != 0) != (o.Kind == Clip) || (opt.Speed != 0) != (o.Kind == Clip || o.Kind == Words) || opt.Ground.Clear != o.Clear || opt.FPS > o.MaxFPS {
			t.Errorf("options of %s: %+v", o.Name, opt)
		}
		onGround, silent := all, all
		onGround.Ground, silent.Ground, silent.Beeps = 0, 0, false
		if heard := onGround.options(o, s).Track != nil; heard != (o.Ext == ".mp4" || o.Ext == ".webm") || opt.Track != nil && o.Clear || silent.options(o, s).Track != nil {
			t.Errorf("%s is heard on a ground: %v, on a clear one: %v", o.Name, heard, opt.Track != nil)
		}
	}
}

// The presets are of what is offered.
func TestPresets(t *testing.T) {
	outputs := Outputs()
	for _, p := range Presets {
		c := p.choice(outputs)
		o := outputs[c.Output]
		if o.Key != p.key && o.Key != p.without || o.Needs != nil && o.Needs() != nil {
			t.Errorf("preset %q chooses %s, want %s or, where that needs what is not here, %q", p.Name, o.Key, p.key, p.without)
		}
		if sizeKey(Sizes[c.Size]) != p.size || Rates[c.Rate] != p.rate || Grounds[c.Ground] != p.ground {
			t.Errorf("preset %q chooses %+v, want %s, %d, %s", p.Name, c, p.size, p.rate, p.ground)
		}
		if p.ground == "clear" && (!outputs[find(outputs, p.key)].Clear || p.without != "" && !outputs[find(outputs, p.without)].Clear) {
			t.Errorf("preset %q is transparent, and its formats are not", p.Name)
		}
		if _, err := c.options(o, subject(t)).Checked(); err != nil {
			t.Errorf("preset %q: %v", p.Name, err)
		}
	}
}

// A machine without ffmpeg gets formats that work without it.
func TestPresetsWithoutFFmpeg(t *testing.T) {
	t.Setenv("PATH", t.TempDir())
	outputs := Outputs()
	for _, p := range Presets {
		if o := outputs[p.choice(outputs).Output]; o.Needs != nil && o.Needs() != nil {
			t.Errorf("without ffmpeg preset %q chooses %s, which needs it", p.Name, o.Key)
		} else if got := p.about(outputs); (o.Key != p.key) != strings.Contains(got, o.Name+": there is no ffmpeg") {
			t.Errorf("without ffmpeg preset %q, which chooses %s, is said to be %q", p.Name, o.Key, got)
		}
	}
}

func TestChoiceIsKept(t *testing.T) {
	outputs := Outputs()
	p := test.NewTempApp(t).Preferences()
	if got := kept(p, outputs); got != usual(outputs) {
		t.Errorf("nothing kept gives %+v, want the usual %+v", got, usual(outputs))
	}
	want := Choice{Output: find(outputs, ".srt"), Size: 4, Rate: 3, Speed: 2, Ground: 4, Beeps: false}
	want.keep(p, outputs)
	if got := kept(p, outputs); got != want {
		t.Errorf("kept %+v, want %+v", got, want)
	}
	p.SetString(keptOutput, "gone")
	p.SetString(keptSize, "1x1")
	want.Output, want.Size = usual(outputs).Output, usual(outputs).Size
	if got := kept(p, outputs); got != want {
		t.Errorf("what is not offered any more gives %+v, want %+v", got, want)
	}
}
