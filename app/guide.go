package app

import (
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/words"
)

// guideKey is the preference that says that the guide has been seen.
const guideKey = "guide-seen"

// guide leads through a first play in the window itself: a short text beside the
// control concerned, and the next one when the person has done it. It takes no
// key and covers nothing but its own box.
type guide struct {
	editor *Editor
	layer  *fyne.Container // over the whole window
	box    *fyne.Container
	text   *widget.Label
	count  *widget.Label
	next   *heard.Button
	at     int // the step shown; -1 when it is not running
}

// guideStep is one thing to do.
type guideStep struct {
	text   func() string
	beside func(e *Editor) fyne.CanvasObject
	on     side                  // of that, if there is room
	done   func(did string) bool // what the window says that it has done
}

// exportStep is the step that goes on with the page of exports open.
const exportStep = 4

// guideSteps are what a first play takes, in order.
func guideSteps() []guideStep {
	return []guideStep{
		{func() string { return words.T("This is your play. Press Play, or the space bar, and watch it.") },
			func(e *Editor) fyne.CanvasObject { return e.bar.play }, above, did("playing=true")},
		{func() string {
			return words.T("Drag a player to another place. Times and checks follow the hand.")
		}, aside, above, didStep},
		{func() string { return words.T("Ctrl+Z takes it back; nothing can go wrong here.") },
			aside, above, did("undone")},
		{func() string {
			return words.T("On the right stand the checks: what is against the rules, who is late, and advice.")
		}, func(e *Editor) fyne.CanvasObject { return e.checks.Box }, leftOf, nil},
		{func() string {
			return words.T("Now the clip for your partner: Export in the menu File, or Ctrl+E. Choose on the left what it is for, then press Export.")
		}, aside, below, did("exported")},
		{func() string {
			return words.T("That is all. Back at the court, the button below the list of plays writes the next one. Help shows this guide again.")
		}, aside, below, nil},
	}
}

// aside is what the guide may cover while a hand is on the court, and on the page
// of exports the button to press.
func aside(e *Editor) fyne.CanvasObject {
	if e.exports.Shown() {
		return e.exports.Exporter()
	}
	return e.plays.List
}

// did waits for something that the window says it has done.
func did(prefix string) func(string) bool {
	return func(what string) bool { return strings.HasPrefix(what, prefix) }
}

// didStep waits for any step done to the lesson.
func didStep(what string) bool {
	return strings.HasPrefix(what, `step "`) && !strings.HasPrefix(what, `step ""`)
}

// Size of the guide's box, and how far from the control it stands.
const (
	guideWidth = 320
	guideGap   = 10
)

func newGuide(e *Editor) *guide {
	g := &guide{editor: e, at: -1, text: widget.NewLabel(""), count: widget.NewLabel("")}
	g.text.Wrapping = fyne.TextWrapWord
	g.count.Importance = widget.LowImportance
	g.next = heard.NewButton("", func() { g.show(g.at + 1) })
	stop := heard.NewButton(words.T("Close the guide"), g.end)
	stop.Importance = widget.LowImportance
	paper := fynecanvas.NewRectangle(theme.Color(theme.ColorNameOverlayBackground))
	paper.StrokeColor, paper.StrokeWidth, paper.CornerRadius = theme.Color(theme.ColorNamePrimary), 2, 6
	row := container.NewBorder(nil, nil, g.count, container.NewHBox(stop, g.next))
	g.box = container.NewStack(paper, container.NewPadded(container.NewBorder(nil, row, nil, nil, g.text)))
	g.layer = container.New(g, g.box)
	g.layer.Hide()
	return g
}

// MinSize implements fyne.Layout: the layer asks for nothing.
func (g *guide) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

// Layout implements fyne.Layout: the box stands beside the step's control,
// within the window.
func (g *guide) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	if g.at < 0 {
		return
	}
	g.box.Resize(fyne.NewSize(guideWidth, g.box.MinSize().Height)) // its text is broken to this width
	need := fyne.NewSize(guideWidth, g.box.MinSize().Height)
	g.box.Resize(need)
	driver := fyne.CurrentApp().Driver()
	step := guideSteps()[g.at]
	o := step.beside(g.editor)
	corner := driver.AbsolutePositionForObject(o).Subtract(driver.AbsolutePositionForObject(g.layer))
	g.box.Move(beside(step.on, corner, o.Size(), need, size))
}

// beginGuide shows the guide unless it has been seen.
func (e *Editor) beginGuide() {
	if !e.app.Preferences().Bool(guideKey) {
		e.guide.show(0)
	}
}

// showGuide shows it again.
func (e *Editor) showGuide() {
	e.closeStart()
	e.guide.show(0)
}

// show shows a step; behind the last the guide ends.
func (g *guide) show(step int) {
	steps := guideSteps()
	if step >= len(steps) {
		g.end()
		return
	}
	g.at = step
	g.text.SetText(steps[step].text())
	g.count.SetText(words.T("%d of %d", step+1, len(steps)))
	g.next.SetText(words.T("Skip"))
	if steps[step].done == nil {
		g.next.SetText(words.T("Next"))
	}
	if step == len(steps)-1 {
		g.next.SetText(words.T("Done"))
	}
	g.follow()
	g.editor.trace.say("guide %d", step+1)
	g.editor.traceNamed(g.named())
}

// meet goes to the page of exports with who has opened it, also ahead of the guide.
func (g *guide) meet() {
	if g.at >= 0 {
		g.show(max(g.at, exportStep))
	}
}

// follow finds the box its place anew, over the court or the page of exports. On other
// pages the guide waits unseen.
func (g *guide) follow() {
	if g.at < 0 {
		return
	}
	if !g.editor.editing.Shown() && !g.editor.exports.Shown() {
		g.layer.Hide()
		return
	}
	g.layer.Show()
	g.layer.Refresh()
}

// hear goes on when what the step asks for has been done.
func (g *guide) hear(what string) {
	if g.at < 0 {
		return
	}
	if done := guideSteps()[g.at].done; done != nil && done(what) {
		g.show(g.at + 1)
	}
}

// end takes the guide away, for good unless it is asked for.
func (g *guide) end() {
	g.at = -1
	g.layer.Hide()
	g.editor.app.Preferences().SetBool(guideKey, true)
	g.editor.trace.say("guide ended")
}

// named are the guide's controls, for tests of the window.
func (g *guide) named() map[string]fyne.CanvasObject {
	if g.at < 0 {
		return nil
	}
	return map[string]fyne.CanvasObject{"guide-next": g.next}
}
