package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
)

// Columns are parts beside each other, each in a height of its own; one of them
// takes the width that the others leave. Where the room is too narrow for all of
// them they stand below each other, each as high as it wants: that is for a Tall.
type Columns struct {
	Box   *fyne.Container
	parts []Column
	below bool
}

// Column is a part of Columns.
type Column struct {
	Content fyne.CanvasObject
	Width   float32 // that it wants, if it can be narrower; 0 takes what is left
	Least   float32 // of a part that takes what is left: its height below the others
	scroll  *container.Scroll
}

// NewColumns are columns from left to right, of which one has no width.
func NewColumns(parts ...Column) *Columns {
	c := &Columns{parts: parts}
	for i := range parts {
		c.parts[i].scroll = container.NewVScroll(parts[i].Content)
	}
	c.Box = container.New(c)
	c.fill()
	return c
}

// fill puts the parts into the box: those with a width scroll of themselves where
// they stand beside each other.
func (c *Columns) fill() {
	c.Box.Objects = nil
	for i := range c.parts {
		p := &c.parts[i]
		if p.Width == 0 || c.below {
			c.Box.Objects = append(c.Box.Objects, p.Content)
		} else {
			c.Box.Objects = append(c.Box.Objects, p.scroll)
		}
	}
}

// least is the narrowest that a part can be.
func (p *Column) least() float32 {
	w := p.Content.MinSize().Width
	if p.scroll != nil && p.Width != 0 {
		w += besideScroll
	}
	return w
}

// besideScroll is the room for a scroll bar beside what scrolls.
const besideScroll = 8

// spare is by how much a part may be narrower than it wants.
func (p *Column) spare() float32 { return max(p.Width-p.least(), 0) }

// wide is the least room that the parts take beside each other, and what is spared
// of it then.
func (c *Columns) wide() (least, spared float32) {
	least = theme.Padding() * float32(len(c.parts)-1)
	for i := range c.parts {
		least += c.parts[i].least()
		spared += c.parts[i].spare()
	}
	return least, spared
}

// MinSize implements fyne.Layout.
func (c *Columns) MinSize([]fyne.CanvasObject) (least fyne.Size) {
	for i := range c.parts {
		p := &c.parts[i]
		need := p.Content.MinSize()
		least.Width = max(least.Width, need.Width)
		switch {
		case c.below:
			least.Height += max(need.Height, p.Least) + theme.Padding()
		case p.Width == 0:
			least.Height = max(least.Height, need.Height)
		}
	}
	return least
}

// Layout implements fyne.Layout.
func (c *Columns) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	least, spared := c.wide()
	if c.below != (size.Width < least) {
		c.turn()
	}
	o := c.Box.Objects
	if c.below {
		c.layBelow(o, size)
		return
	}
	x, share := float32(0), min((size.Width-least)/max(spared, 1), 1)
	for i := range c.parts {
		w := c.parts[i].least() + c.parts[i].spare()*share
		if c.parts[i].Width == 0 {
			w += max(size.Width-least-spared, 0)
		}
		o[i].Move(fyne.NewPos(x, 0))
		o[i].Resize(fyne.NewSize(w, size.Height))
		x += w + theme.Padding()
	}
}

func (c *Columns) layBelow(o []fyne.CanvasObject, size fyne.Size) {
	y := float32(0)
	for i := range c.parts {
		h := max(broken(o[i], size.Width), c.parts[i].Least)
		o[i].Move(fyne.NewPos(0, y))
		o[i].Resize(fyne.NewSize(size.Width, h))
		y += h + theme.Padding()
	}
}

// turn puts parts that stood beside each other below each other, or back.
func (c *Columns) turn() {
	c.below = !c.below
	c.fill()
	for i := range c.parts {
		if p := &c.parts[i]; p.Width != 0 {
			p.scroll.Offset = fyne.Position{}
			p.Content.Move(fyne.Position{})
		}
	}
}
