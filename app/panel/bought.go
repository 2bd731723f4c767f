package panel

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/looks"
	"homeside/app/session"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/advice"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Bought is the card of the time that the return buys. Its chart is made only
// when it is asked for and the hand rests.
type Bought struct {
	Box     *fyne.Container
	session *session.Session
	chart   *fynecanvas.Image
	said    *widget.Label
	ask     *heard.Check
	detail  *Dropdown
	lines   *Dropdown // what the chart's lines show
	keep    *heard.Button
	printed compose.ReturnChart // what is shown, in the look of paper
	look    *look.Look          // that it is shown in
	Resized func()              // called when the card grows or shrinks; nil means nobody asks
	made    int                 // the revision shown
}

// NewBought is the card of a session; save keeps the chart as a picture, nil
// means nobody can.
func NewBought(s *session.Session, save func(image.Image)) *Bought {
	b := &Bought{session: s, chart: fynecanvas.NewImageFromImage(nil), said: widget.NewLabel(""), made: -1}
	b.chart.FillMode = fynecanvas.ImageFillContain
	b.chart.SetMinSize(fyne.NewSize(250, 190))
	b.said.Wrapping = fyne.TextWrapWord
	b.detail = NewDropdown(words.Details(), func(string) { b.made = -1; b.Refresh() })
	b.detail.Selected = words.Details()[words.WithTimes]
	b.lines = NewDropdown([]string{words.T("lines: time the return buys"), words.T("lines: the returner's margin")}, func(string) { b.made = -1; b.Refresh() })
	b.lines.Selected = b.lines.Options[0]
	b.keep = heard.NewButton(words.T("Save the chart…"), func() {
		if save != nil {
			save(b.picture())
		}
	})
	b.ask = heard.NewCheck(words.T("Show the time a return buys"), func(bool) { b.Refresh() })
	b.Box = container.NewVBox(b.ask, b.detail, b.said, b.lines, b.chart, b.keep)
	b.visible(false)
	return b
}

// Refresh makes the chart again if it is seen and something has changed.
func (b *Bought) Refresh() {
	r := b.session.Current()
	if !b.ask.Checked || r == nil {
		b.visible(false)
		b.made = -1
		return
	}
	if b.session.Previewing() || b.made == b.session.Revision() && b.look == looks.Now() {
		return
	}
	b.made, b.look = b.session.Revision(), looks.Now()
	b.visible(true)
	t, ok := r.TimeBought()
	if !ok {
		b.visible(false)
		b.said.Show()
		b.said.SetText(words.T("This play has no return."))
		return
	}
	set, said := b.advice(r)
	b.said.SetText(words.TimeBought(t) + said)
	c := b.drawn(r, t, set)
	c.Width, c.Height, c.PxPerPoint = chartWidth*sharp, chartHeight*sharp, sharp
	b.printed = c
	c.Look = looks.Now()
	b.chart.Image = raster.Scene(c.Scene())
	b.chart.Refresh()
}

// picture is the chart as it is kept: by day, whatever the window's look.
func (b *Bought) picture() image.Image { return raster.Scene(b.printed.Scene()) }

// Size of the chart in points, and pixels to a point: enough for a handout.
const (
	chartWidth  = 250
	chartHeight = 190
	sharp       = 3
)

// drawn is the chart that is asked for: the returner's margins or the times.
func (b *Bought) drawn(r *rally.Rally, t rally.TimeBought, set units.Seconds) compose.ReturnChart {
	if a, depth, apex, ok := advice.AdvisorOf(r); ok && b.lines.SelectedIndex() == 1 {
		if c, err := a.Chart(t.Depths, t.Apexes); err == nil {
			return compose.MarginsOf(c, depth, apex)
		}
	}
	return compose.TimesOf(t, set)
}

// advice is what the returner needs to be set, and the advice in words.
func (b *Bought) advice(r *rally.Rally) (units.Seconds, string) {
	a, depth, apex, ok := advice.AdvisorOf(r)
	if !ok {
		return 0, ""
	}
	answer, err := a.Answer(depth, apex)
	if err != nil {
		return 0, " " + words.Refused(err)
	}
	who := r.NameOf(r.Strokes[1].By)
	return answer.Needs.Stopped, "\n\n" + words.ReturnAdvice(answer, who, words.Detail(b.detail.SelectedIndex()))
}

func (b *Bought) visible(yes bool) {
	if yes != b.chart.Visible() && b.Resized != nil {
		defer b.Resized()
	}
	for _, o := range []fyne.CanvasObject{b.detail, b.said, b.lines, b.chart, b.keep} {
		if yes {
			o.Show()
		} else {
			o.Hide()
		}
	}
}
