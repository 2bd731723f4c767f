package present

import (
	"fyne.io/fyne/v2"

	"homeside/app/fullscreen"
	"homeside/app/session"
	"homeside/canvas"
	"homeside/model/lesson"
	"homeside/words"
)

// Presenter is the full-screen window of a session. New makes one that is closed.
type Presenter struct {
	app     fyne.App
	session *session.Session
	say     func(format string, args ...any)
	win     *fullscreen.Window // nil while it is closed
	stage   *stage
	paired  bool // the play beside was chosen here
	play    int  // that is shown
}

// New is the presenter of a session. say is told what happens, for tests; nil
// means nobody asks.
func New(a fyne.App, s *session.Session, say func(format string, args ...any)) *Presenter {
	if say == nil {
		say = func(string, ...any) {}
	}
	return &Presenter{app: a, session: s, say: say}
}

// Shown says whether the presenter is open.
func (p *Presenter) Shown() bool { return p.win != nil }

// Open shows the play at its beginning, full screen.
func (p *Presenter) Open() {
	if p.win != nil {
		p.win.RequestFocus()
		return
	}
	p.session.Pause()
	p.session.Seek(-lesson.MaxOffset)
	p.win = fullscreen.New(p.app, words.T("Homeside: presenting"), p.closed)
	p.stage = newStage(p.session, p.painted)
	p.play = p.session.PlayIndex()
	p.win.SetContent(p.stage)
	p.win.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { p.key(k.Name) })
	p.win.Canvas().SetOnTypedRune(p.rune)
	p.win.Show()
	p.say("present open")
}

// Close leaves the presenter.
func (p *Presenter) Close() {
	if p.win != nil {
		p.win.Close()
	}
}

// closed is called when the window has gone, whoever closed it.
func (p *Presenter) closed() {
	p.win, p.stage = nil, nil
	if p.paired {
		p.paired = false
		p.session.StopComparing()
	}
	p.session.Pause()
	p.say("present closed")
}

// Refresh shows the session as it is.
func (p *Presenter) Refresh() {
	if p.stage == nil {
		return
	}
	if p.play != p.session.PlayIndex() {
		p.play = p.session.PlayIndex()
		p.stage.strokes = nil
	}
	p.stage.Refresh()
}

// painted is called from within a paint.
func (p *Presenter) painted() {
	p.win.Painted()
	g := p.stage
	p.say("painted present %s level=%d pair=%d strokes=%d %dx%d", g.eventName(), g.level, g.pair, len(g.strokes), g.img.Rect.Dx(), g.img.Rect.Dy())
}

// OnScreen is where the apex handle is in the presenter's window, in device pixels.
func (p *Presenter) OnScreen() (canvas.Px, bool) {
	r := p.session.Current()
	if p.stage == nil || len(p.stage.parts) == 0 || r == nil {
		return canvas.Px{}, false
	}
	return p.stage.parts[0].layout.ApexPx(r, r.ShotAt(p.session.Now())), p.stage.parts[0].layout.RiseTop > 0
}

// key does what a key is for. A clicker sends Page Up and Page Down.
func (p *Presenter) key(k fyne.KeyName) {
	g := p.stage
	if g == nil {
		return
	}
	switch k {
	case fyne.KeyRight, fyne.KeyPageDown, fyne.KeyReturn, fyne.KeyEnter:
		g.step(p.session.NextEvent)
	case fyne.KeyLeft, fyne.KeyPageUp:
		g.step(p.session.PreviousEvent)
	case fyne.KeyDown:
		p.session.SelectPlay(p.session.PlayIndex() + 1)
	case fyne.KeyUp:
		p.session.SelectPlay(p.session.PlayIndex() - 1)
	case fyne.KeySpace:
		g.step(p.session.TogglePlay)
	case fyne.KeyHome:
		g.step(func() { p.session.Seek(-lesson.MaxOffset) })
	case fyne.KeyEnd:
		g.step(func() { p.session.Seek(lesson.MaxFlight * lesson.MaxShots) })
	case fyne.KeyDelete, fyne.KeyBackspace:
		g.erase()
	case fyne.KeyEscape:
		if !g.cancel() {
			p.Close()
		}
	}
}

// rune does what a letter or a digit is for.
func (p *Presenter) rune(r rune) {
	g := p.stage
	if g == nil {
		return
	}
	switch r {
	case '1', '2', '3':
		g.level = Level(r - '1')
	case 'c', 'C':
		p.nextPair()
	case 'v', 'V':
		g.sight = (g.sight + 1) % len(sights)
	case 'e', 'E':
		g.erase()
	case 'h', 'H':
		g.help = !g.help
	}
	g.Refresh()
}

// nextPair goes from the play alone to two overlaid, two side by side, and back.
// Without a play compared it takes the next one.
func (p *Presenter) nextPair() {
	n := len(p.session.Lesson().Plays)
	if n < 2 {
		return
	}
	if _, ok := p.session.Comparing(); !ok {
		p.paired = true
		p.session.Compare((p.session.PlayIndex() + 1) % n)
	}
	p.stage.pair = (p.stage.pair + 1) % pairCount
	if p.stage.pair == Alone && p.paired {
		p.paired = false
		p.session.StopComparing()
	}
}
