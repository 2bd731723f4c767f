package app

import (
	"net/url"
	"path/filepath"
	"slices"
	"strings"

	"homeside/app/exporting"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/film"
	"homeside/export/formats"
	"homeside/model/reel"
	"homeside/model/units"
	"homeside/words"
)

// newExports is the page of exports; it takes the court's place while it is open.
func (e *Editor) newExports() *exporting.Page {
	return exporting.New(e.app.Preferences(), exporting.Events{
		Offers: e.offers, Folder: func() string { return filepath.Dir(e.suggestedPath()) }, Close: e.closeExports,
		Painted: func() {
			e.traceControls()
			e.trace.say("painted exports")
		},
		Trace:  e.trace.say,
		Unless: func(path string, goOn func()) { e.unlessExists(path, "", goOn) },
		Fail:   func(err error) { e.fail(err, words.T("Nothing was written. Your lesson is unchanged.")) },
		Browse: e.browseFolder, Show: e.showFolder,
	})
}

// askExport opens the page of exports with the reel worked on, if the page of reels
// is open and has one, or with the play shown.
func (e *Editor) askExport() {
	if _, ok := e.session.Reel(); ok && e.reels.Shown() {
		e.exportReel()
		return
	}
	e.openExports(0)
}

// exportReel opens the page of exports with the reel worked on.
func (e *Editor) exportReel() {
	if _, ok := e.session.Reel(); ok {
		e.openExports(1 + e.session.ReelIndex())
	}
}

func (e *Editor) openExports(i int) {
	if e.session.Current() == nil {
		e.say(words.T("There is no play to export."))
		return
	}
	ofReel := e.reels.Shown()
	e.rest()
	e.toReels = ofReel
	e.leaveCourt()
	e.exports.Open(i)
	e.traceControls()
	e.trace.say("exports open")
	e.guide.meet()
}

// closeExports goes back to where the page was opened.
func (e *Editor) closeExports() {
	if e.toReels {
		e.toReels = false
		e.trace.say("exports closed")
		e.openReels()
		return
	}
	e.showCourt()
	e.trace.say("exports closed")
}

// offers are the play shown, the reels, and all plays for papers and pages.
func (e *Editor) offers() []exporting.Offer {
	title := e.session.Current().Play.Title
	all := []exporting.Offer{{Name: words.T("The play shown: %s", title), File: fileName(title), Make: func() (exporting.Subject, error) { return e.playSubject(e.session.PlayIndex()), nil }}}
	for i, r := range e.session.Lesson().Reels {
		all = append(all, exporting.Offer{Name: words.T("Reel %s", words.ReelName(i, r.Name)), File: reelFile(i, r.Name), Make: func() (exporting.Subject, error) { return e.reelSubject(i), nil }})
	}
	lesson := e.session.Lesson().Title
	return append(all, exporting.Offer{Name: words.T("All plays, for paper and phones"), File: fileName(lesson), Make: func() (exporting.Subject, error) { return e.playSubject(), nil }})
}

// reelFile names the file of reel i, never as its play's is named: a reel made of one
// play has the play's title.
func reelFile(i int, name string) string {
	if name == "" {
		return fileName(words.T("Reel %d", i+1))
	}
	file, reel := fileName(name), fileName(words.T("reel"))
	if strings.HasSuffix(file, reel) {
		return file
	}
	return file + "-" + reel
}

// playSubject is the play shown as the court shows it; numbers are the plays that
// paper and pages have, none for all.
func (e *Editor) playSubject(numbers ...int) exporting.Subject {
	l, r := e.session.Lesson(), e.session.Current()
	return exporting.Subject{
		Name: r.Play.Title, Lesson: l, Plays: numbers, At: e.session.Now(), Told: formats.Tell(l, r),
		Source: compose.Of(r, l.Venue.Surface(), canvas.Upright).Seen(e.court.Sight()),
	}
}

// reelSubject is reel i of the lesson; its plays are those of its takes.
func (e *Editor) reelSubject(i int) exporting.Subject {
	l := e.session.Lesson()
	solved := reel.Solve(l, l.Reels[i])
	var numbers []int
	for _, t := range solved.Takes {
		if !slices.Contains(numbers, t.Play-1) {
			numbers = append(numbers, t.Play-1)
		}
	}
	return exporting.Subject{
		Name: l.Reels[i].Name, Lesson: l, Plays: numbers, Told: formats.TellReel(l, solved), Source: film.Of(l, solved),
		At: firstSeen(solved),
	}
}

// firstSeen is when a reel begins to show a court, and not a card of words.
func firstSeen(r *reel.Reel) units.Seconds {
	if len(r.Takes) == 0 {
		return 0
	}
	return r.Takes[0].Start
}

// showFolder opens a folder in the desktop's own way.
func (e *Editor) showFolder(folder string) error {
	e.trace.say("showing %s", folder)
	return e.app.OpenURL(&url.URL{Scheme: "file", Path: folder})
}
