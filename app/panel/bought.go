package panel

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
	"homeside/canvas/compose"
	"homeside/canvas/raster"
	"homeside/words"
)

// Bought is the card of the time that the return buys. Its chart is made only
// when it is asked for and the hand rests.
type Bought struct {
	Box     *fyne.Container
	session *session.Session
	chart   *fynecanvas.Image
	said    *widget.Label
	ask     *widget.Check
	made    int // the revision shown
}

// NewBought is the card of a session.
func NewBought(s *session.Session) *Bought {
	b := &Bought{session: s, chart: fynecanvas.NewImageFromImage(nil), said: widget.NewLabel(""), made: -1}
	b.chart.FillMode = fynecanvas.ImageFillContain
	b.chart.SetMinSize(fyne.NewSize(250, 190))
	b.said.Wrapping = fyne.TextWrapWord
	b.ask = widget.NewCheck("Show the time a return buys", func(bool) { b.Refresh() })
	b.chart.Hide()
	b.said.Hide()
	b.Box = container.NewVBox(b.ask, b.said, b.chart)
	return b
}

// Refresh makes the chart again if it is seen and something has changed.
func (b *Bought) Refresh() {
	r := b.session.Current()
	if !b.ask.Checked || r == nil {
		b.chart.Hide()
		b.said.Hide()
		b.made = -1
		return
	}
	if b.session.Previewing() || b.made == b.session.Revision() {
		return
	}
	b.said.Show()
	b.made = b.session.Revision()
	t, ok := r.TimeBought()
	if !ok {
		b.said.SetText("This play has no return.")
		b.chart.Hide()
		return
	}
	b.said.SetText(words.TimeBought(t))
	const sharp = 2
	c := compose.TimeChart{Time: t, Width: 250 * sharp, Height: 190 * sharp, PxPerPoint: sharp}
	b.chart.Image = raster.Scene(c.Scene())
	b.chart.Show()
	b.chart.Refresh()
}
