package rehearse

import (
	"errors"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/frameclock"
	"homeside/app/panel"
	"homeside/app/player"
	"homeside/app/rehearsal"
	"homeside/app/session"
	"homeside/export/captions"
	"homeside/model/court"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Walk is the page on which the play of a session is walked to a count.
type Walk struct {
	session *session.Session
	prefs   fyne.Preferences
	cuts    func() bool // nothing is to move by itself
	say     func(format string, args ...any)

	rally     *rally.Rally
	rehearsal *rehearsal.Rehearsal
	said      captions.Play
	chosen    choices
	player    *player.Player
	clock     *frameclock.Clock
	told      told // as last traced

	controls *controls
	stage    *stage
	cautions *cautionPage
	court    *fyne.Container  // holds the stage or the cautions
	silent   *widget.Label    // why no beeps are heard
	line     *panel.LineOrTip // the keys, or what a button does
	box      *fyne.Container
}

// told is what the trace has been told of.
type told struct {
	phase  rehearsal.Phase
	round  int
	paused bool
}

// NewWalk is the page of a session. cuts says whether nothing is to move by itself;
// say is told what happens, for tests.
func NewWalk(s *session.Session, prefs fyne.Preferences, cuts func() bool, say func(format string, args ...any)) *Walk {
	w := &Walk{session: s, prefs: prefs, cuts: cuts, say: say, chosen: keptChoices(prefs), player: player.New()}
	w.stage = newStage(w.painted)
	w.stage.view = w.chosen.view
	w.clock = frameclock.New(func() bool { return w.rehearsal != nil && w.rehearsal.Passing() }, w.pass)
	w.silent, w.line = foot(""), panel.NewLineOrTip(foot(keysLine()), foot(""))
	w.court = container.NewStack(w.stage)
	s.Pause()
	w.told.round = -1 // nothing has been told
	w.take(false)
	w.build()
	return w
}

// build puts the page together.
func (w *Walk) build() {
	w.controls = newControls(w, w.session.Lesson())
	if w.rally == nil {
		w.box = container.NewCenter(widget.NewLabel(words.T("There is no play to show.")))
		return
	}
	w.box = container.New(column{1}, w.controls.row, w.court, w.silent, w.line.Box)
	w.ask()
	w.follow()
}

// keysLine says what the keys do.
func keysLine() string {
	return words.T("Space: start, pause · arrows or a clicker's Page Up, Page Down: event by event · Home: from the start · V: view · S: speed · M: beeps · Tab: the row above · Esc: leave")
}

// foot is a small line below the stage.
func foot(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Wrapping, l.SizeName, l.Importance = fyne.TextWrapWord, theme.SizeNameCaptionText, widget.LowImportance
	return l
}

// take begins with the session's play as it is; read says that the cautions have
// been read.
func (w *Walk) take(read bool) {
	w.rally = w.session.Current()
	if w.rally == nil {
		w.rehearsal = nil
		return
	}
	l := w.session.Lesson()
	w.rehearsal = rehearsal.New(w.rally, w.chosen.plan(w.cuts()))
	if read {
		w.rehearsal.Read()
	}
	w.said = worthTelling(captions.Of(l, w.rally), w.rally)
	w.stage.rally, w.stage.surface = w.rally, l.Venue.Surface()
	w.stage.pair = drilled(w.rehearsal)
}

// ask shows the cautions in place of the court.
func (w *Walk) ask() {
	var own []string
	for _, a := range w.rehearsal.Crossings() {
		own = append(own, words.PathsCross(w.session.Lesson(), a))
	}
	w.cautions = newCautionPage(own, w.read)
	w.court.Objects = []fyne.CanvasObject{w.cautions.box}
	w.controls.row.Hide() // there is nothing to start yet
	w.say("rehearsing cautions")
}

// read goes on from the cautions to the court.
func (w *Walk) read() {
	if w.cautions == nil {
		return
	}
	w.cautions = nil
	w.rehearsal.Read()
	w.court.Objects = []fyne.CanvasObject{w.stage}
	w.controls.row.Show()
	w.box.Refresh()
	if c := fyne.CurrentApp().Driver().CanvasForObject(w.court); c != nil {
		c.Unfocus()
	}
	w.say("rehearsing read")
	w.follow()
}

// Content implements Page.
func (w *Walk) Content() fyne.CanvasObject { return w.box }

// Close implements Page.
func (w *Walk) Close() {
	if w.rehearsal != nil {
		w.rehearsal.Stop()
	}
	w.clock.Follow()
	_ = w.player.Close() // a folder of beeps left behind is nothing to tell anybody
}

// Refresh implements Refresher: another play, or another form of it, begins anew.
func (w *Walk) Refresh() {
	if w.session.Current() == w.rally || w.rally == nil || w.session.Previewing() {
		return
	}
	w.take(w.cautions == nil)
	if w.rally != nil {
		w.follow()
	}
}

// pass lets time go by.
func (w *Walk) pass(dt units.Seconds) {
	for _, b := range w.rehearsal.Advance(dt) {
		if !w.chosen.silent {
			w.player.Beep(b.Kind, b.After)
		}
	}
	w.follow()
}

// moment is what the court shows: where paths cross while that is said, else what
// is rehearsed.
func (w *Walk) moment() units.Seconds {
	if a, ok := w.rehearsal.CrossingNow(); ok && w.rehearsal.Phase() == rehearsal.Warning {
		return a.When
	}
	return w.rehearsal.Moment()
}

// follow shows the rehearsal as it is.
func (w *Walk) follow() {
	h := w.rehearsal
	w.trace()
	w.controls.refresh(h)
	w.stage.show(w.moment(), tell(h, w.session.Lesson(), w.said, w.stage.pair))
	w.tellSilence()
	w.clock.Follow()
}

// tellSilence says why no beeps are heard.
func (w *Walk) tellSilence() {
	text := ""
	switch why := w.player.Why(); {
	case w.chosen.silent || why == nil:
	case errors.Is(why, player.ErrNoProgram):
		text = words.T("No beeps: install pw-play, paplay or aplay (on Debian the package alsa-utils) to hear them. All else works.")
	default:
		text = words.T("No beeps are heard here; all else works. (%s)", why.Error())
	}
	if text != w.silent.Text {
		w.silent.SetText(text)
	}
	if text == "" {
		w.silent.Hide()
	} else {
		w.silent.Show()
	}
}

// trace tells when the phase has become another, or time has stopped or goes on.
func (w *Walk) trace() {
	h := w.rehearsal
	round, _ := h.Round()
	if now := (told{h.Phase(), round, h.Paused()}); now != w.told {
		w.told = now
		w.say("rehearsing phase=%v round=%d moment=%.3f paused=%v", now.phase, now.round, float64(h.Moment()), now.paused)
	}
}

// see shows the court in another way.
func (w *Walk) see(v view, pair court.End) {
	w.stage.view, w.stage.pair, w.chosen.view = v, pair, v
	w.chosen.keep(w.prefs)
	w.stage.Refresh()
	w.follow()
	w.say("rehearsing seen %s %v", viewTags[v], pair)
}

// choose changes what is chosen and keeps it.
func (w *Walk) choose(change func(*choices)) {
	change(&w.chosen)
	w.chosen.keep(w.prefs)
	if w.chosen.silent {
		w.player.Hush()
	}
	w.rehearsal.Change(w.chosen.plan(w.cuts()))
	w.say("rehearsing chosen speed=%v rounds=%d rest=%d count=%d silent=%v", w.chosen.speed, w.chosen.rounds, w.chosen.rest, w.chosen.count, w.chosen.silent)
	w.follow()
}

// painted is called from within a paint of the court.
func (w *Walk) painted() {
	w.say("rehearsing painted %s", w.rehearsal.Phase())
}
