package panel

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// takeCard is a place of a reel's running order. A take can be dragged, as its
// handle says; a line shows where what is dragged would come in.
type takeCard struct {
	card
	drags
	handle        *widget.Icon
	before, after *fynecanvas.Rectangle
}

var _ fyne.Draggable = (*takeCard)(nil)

// Room of a small frame in the window's units.
const (
	smallFrame  = 92
	takeTitle   = 34
	takeText    = 24
	stripHeight = smallFrame + takeTitle + takeText + 22
	takeHandle  = 20
)

func newTakeCard(tapped func(), keys func(*fyne.KeyEvent)) *takeCard {
	c := &takeCard{handle: widget.NewIcon(theme.MoreVerticalIcon()), before: insertLine(), after: insertLine()}
	c.make(CardSize{Picture: fyne.NewSize(smallFrame+22, smallFrame), Title: takeTitle, Text: takeText}, tapped, keys)
	for _, line := range []*fynecanvas.Rectangle{c.before, c.after} {
		line.SetMinSize(fyne.NewSize(insertWidth, 0))
	}
	c.handle.Hide()
	c.ExtendBaseWidget(c)
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
