package captions

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"testing"

	"homeside/export/exporttest"
	"homeside/model/units"
)

// trackPage gives a video's own track element a file of captions and reads its
// cues back; getCueAsHTML is what a viewer would see.
const trackPage = `<!doctype html><meta charset="utf-8"><title>captions</title><video></video><script>
const file = new Blob([%s], {type: "text/vtt"});
window.cues = new Promise((kept, broken) => {
  const track = document.createElement("track");
  track.kind = %q;
  track.addEventListener("load", () => kept(Array.from(track.track.cues, c => [c.startTime, c.endTime, c.getCueAsHTML().textContent, c.getCueAsHTML().childElementCount])));
  track.addEventListener("error", () => broken(new Error("the track element refuses the file")));
  track.src = URL.createObjectURL(file);
  document.querySelector("video").append(track);
  track.track.mode = "hidden"; // loads without a video
});
</script>`

// cuesInChromium are a file's cues as Chromium's track element has them: start,
// end, text, and how many elements are in the text.
func cuesInChromium(t *testing.T, vtt, kind string) [][]any {
	t.Helper()
	text, err := json.Marshal(vtt) // escapes <, so that no text can end the script
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "track.html")
	if err := os.WriteFile(path, fmt.Appendf(nil, trackPage, text, kind), 0o600); err != nil {
		t.Fatal(err)
	}
	p := exporttest.OpenPage(t, path, 320, 240)
	cues := exporttest.Eval[[][]any](p, "window.cues")
	if errs := p.Errors(); len(errs) > 0 {
		t.Errorf("Chromium complains: %q", errs)
	}
	return cues
}

// Chromium's track element finds every cue with its times and its text, and no
// element in any of them: nothing in a lesson is taken for a tag.
func TestReadBackByChromium(t *testing.T) {
	p := playOf(t, drill(hostileCues()...))
	got := cuesInChromium(t, written(t, WriteWebVTT, p, nil), "captions")
	if len(got) != len(hostile) {
		t.Fatalf("Chromium finds %d cues, want %d: %q", len(got), len(hostile), got)
	}
	for i, c := range got {
		start, end := 0.1*float64(i), 0.1*float64(i)+0.5
		if math.Abs(c[0].(float64)-start) > 0.0005 || math.Abs(c[1].(float64)-end) > 0.0005 || c[2] != clean(hostile[i]) || c[3] != 0.0 {
			t.Errorf("cue %d is %v, want %.3f to %.3f with the text %q and no element", i+1, c, start, end, clean(hostile[i]))
		}
	}
}

// Chapters follow one another without a gap from the clip's start to its end, at
// half speed too.
func TestChaptersInChromium(t *testing.T) {
	p := playOf(t, drill())
	got := cuesInChromium(t, written(t, WriteChapters, p, part(-1.5, 2, 0.5)), "chapters")
	at := 0.0
	for i, c := range got {
		if math.Abs(c[0].(float64)-at) > 0.0005 || c[2] == "" {
			t.Errorf("chapter %d is %v, want it to begin at %.3f with a name", i+1, c, at)
		}
		at = c[1].(float64)
	}
	if want := units.Seconds(3.5) / 0.5; len(got) != 3 || math.Abs(at-float64(want)) > 0.0005 { // before the serve, serve, return
		t.Errorf("%d chapters end at %.3f s, want 3 and %.3f", len(got), at, float64(want))
	}
}
