package panel

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
	tooltip "github.com/dweymouth/fyne-tooltip/widget"

	"homeside/app/heard"
)

// takeCard is a place of a reel's running order. A take can be dragged, as its
// handle says; a line shows where what is dragged would come in. Its play's title,
// which may be cut off, stands whole in a tip beside the pointer and, for the keys
// too, in the page's line.
type takeCard struct {
	card
	drags
	tooltip.ToolTipWidgetExtend
	tell          func(tip string)
	handle        *widget.Icon
	before, after *fynecanvas.Rectangle
}

var (
	_ fyne.Draggable    = (*takeCard)(nil)
	_ desktop.Hoverable = (*takeCard)(nil)
)

// Room of a small frame in the window's units.
const (
	smallFrame  = 92
	takeWidth   = 140 // most of a play's title
	takeTitle   = 20
	takeText    = 46 // two lines
	stripHeight = smallFrame + takeTitle + takeText + 22
	takeHandle  = 20
)

func newTakeCard(tapped func(), keys func(*fyne.KeyEvent), tell func(tip string)) *takeCard {
	c := &takeCard{tell: tell, handle: widget.NewIcon(theme.MoreVerticalIcon()), before: insertLine(), after: insertLine()}
	c.make(CardSize{Picture: fyne.NewSize(takeWidth, smallFrame), Title: takeTitle, Text: takeText}, tapped, keys)
	for _, line := range []*fynecanvas.Rectangle{c.before, c.after} {
		line.SetMinSize(fyne.NewSize(insertWidth, 0))
	}
	c.text.Wrapping, c.text.Truncation = fyne.TextWrapOff, fyne.TextTruncateEllipsis
	c.handle.Hide()
	c.ExtendBaseWidget(c)
	c.ExtendToolTipWidget(c)
	return c
}

// CreateRenderer implements fyne.Widget.
func (c *takeCard) CreateRenderer() fyne.WidgetRenderer {
	handle := container.NewHBox(container.NewVBox(container.NewGridWrap(fyne.NewSize(takeHandle, takeHandle), c.handle)))
	lines := container.New(layout.NewCustomPaddedHBoxLayout(0), c.before, layout.NewSpacer(), c.after)
	return widget.NewSimpleRenderer(container.NewStack(c.parts(), handle, lines))
}

// Tapped implements fyne.Tappable.
func (c *takeCard) Tapped(*fyne.PointEvent) {
	focus(c)
	c.tapped()
}

// drag makes the card one that can be dragged; with nil it cannot.
func (c *takeCard) drag(moved func(at fyne.Position), let func()) {
	c.OnDrag, c.OnDragEnd = moved, let
	show(c.handle, moved != nil)
}

// MouseIn implements desktop.Hoverable.
func (c *takeCard) MouseIn(e *desktop.MouseEvent) {
	c.ToolTipWidgetExtend.MouseIn(e)
	c.told(true)
}

// MouseOut implements desktop.Hoverable.
func (c *takeCard) MouseOut() {
	c.ToolTipWidgetExtend.MouseOut()
	c.told(false)
}

// FocusGained implements fyne.Focusable.
func (c *takeCard) FocusGained() {
	c.focused = true
	c.colour()
	heard.Focused(c)
	c.told(true)
}

// FocusLost implements fyne.Focusable.
func (c *takeCard) FocusLost() {
	c.card.FocusLost()
	c.told(false)
}

// told gives the page's line the tip, and "" when it is over.
func (c *takeCard) told(on bool) {
	tip := ""
	if on {
		tip = c.ToolTip()
	}
	c.tell(tip)
}
