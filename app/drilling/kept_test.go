package drilling

import (
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/model/drill"
	"homeside/model/lesson"
)

// Each pair has its own meanings; what cannot be meant is common practice.
func TestKeptMeanings(t *testing.T) {
	p := test.NewTempApp(t).Preferences()
	own := drill.Meanings{lesson.Fake, lesson.Stay, lesson.Switch}
	keepMeanings(p, "Harbour Lane", own)
	if got := meaningsOf(p, "Harbour Lane"); got != own {
		t.Errorf("kept %v, read %v", own, got)
	}
	for _, kept := range []string{"", "switch", "switch,switch,stay", "stay,switch,wink", "stay,switch,fake,stay"} {
		p.SetString(keptMeanings+"Quay Street", kept)
		if got := meaningsOf(p, "Quay Street"); got != drill.Usual() {
			t.Errorf("kept %q, read %v, want common practice", kept, got)
		}
	}
}
