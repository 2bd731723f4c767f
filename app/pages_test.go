package app

import (
	"testing"

	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"homeside/app/heard"
)

// A dialog with a list to choose from, over a page, leaves the page where it is.
func TestFindersLeaveThePage(t *testing.T) {
	b := newBench(t, builtInFile(t))
	for _, page := range []struct {
		name  string
		open  func()
		shown func() bool
	}{
		{"exports", b.askExport, b.exports.Shown}, {"match plan", b.openMatchPlan, b.plan.Shown},
		{"reels", b.openReels, b.reels.Shown}, {"photo", b.openPhoto, b.photos.page.Shown}, {"start", b.openStart, b.start.Shown},
	} {
		page.open()
		b.findCommand()
		if b.question() == nil || !page.shown() {
			t.Errorf("%s: the command search has taken the page away", page.name)
		}
		b.question().first()
		if !page.shown() {
			t.Errorf("%s is away when the search is closed", page.name)
		}
	}
}

// The guide stands over the court and the page of exports, and waits while another
// page is shown.
func TestGuideWaitsOnOtherPages(t *testing.T) {
	b := newBench(t, builtInFile(t))
	b.showGuide()
	for _, c := range []struct {
		page  string
		do    func()
		shown bool
	}{
		{"the court", func() {}, true}, {"the match plan", b.openMatchPlan, false}, {"the court again", b.plan.Close, true},
		{"the reels", b.openReels, false}, {"the start page", b.openStart, false}, {"the court after it", b.closeStart, true},
		{"the exports", b.askExport, true}, {"the photo", b.openPhoto, false},
	} {
		c.do()
		if b.guide.layer.Visible() != c.shown {
			t.Errorf("%s: the guide shown %v, want %v", c.page, b.guide.layer.Visible(), c.shown)
		}
	}
}

// What lies below the score strip moves when the strip asks for something.
func TestScoreStripHasItsRoom(t *testing.T) {
	b := newBench(t, builtInFile(t))
	b.resize(smallest)
	for _, c := range []string{"asked for the score", "no longer asked"} {
		test.Tap(b.score.Named()["score"].(*heard.Button))
		if below, strip := b.besides.box.Position().Y, b.score.Box.MinSize().Height; below < strip || below > strip+2*theme.Padding() {
			t.Errorf("%s: the plays begin at %v below a strip of %v", c, below, strip)
		}
	}
}
