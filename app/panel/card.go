package panel

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/looks"
)

// CardSize is the room of a card's parts in the window's units.
type CardSize struct {
	Picture     fyne.Size
	Title, Text float32 // their heights
}

// cardAir is the air round a card's parts.
const cardAir = 6

// card is one small court that can be chosen.
type card struct {
	widget.BaseWidget
	choice  Choice
	tapped  func()
	keys    func(*fyne.KeyEvent)
	frame   *fynecanvas.Rectangle
	picture *fynecanvas.Image
	title   *widget.Label
	text    *widget.Label
	size    CardSize
	focused bool
	chosen  bool
}

var (
	_ fyne.Focusable     = (*card)(nil)
	_ fyne.Tappable      = (*card)(nil)
	_ desktop.Cursorable = (*card)(nil)
)

func newCard(size CardSize, tapped func(), keys func(*fyne.KeyEvent)) *card {
	c := &card{}
	c.make(size, tapped, keys)
	c.ExtendBaseWidget(c)
	return c
}

func (c *card) make(size CardSize, tapped func(), keys func(*fyne.KeyEvent)) {
	c.tapped, c.keys, c.size = tapped, keys, size
	c.frame, c.picture = fynecanvas.NewRectangle(nil), fynecanvas.NewImageFromImage(nil)
	c.title, c.text = wrapped(), wrapped()
	c.frame.CornerRadius = 6
	c.picture.FillMode = fynecanvas.ImageFillContain
	c.title.Alignment, c.title.TextStyle.Bold = fyne.TextAlignCenter, true
	c.text.Alignment, c.text.SizeName = fyne.TextAlignCenter, theme.SizeNameCaptionText
}

// CreateRenderer implements fyne.Widget.
func (c *card) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(c.parts()) }

func (c *card) parts() *fyne.Container {
	return container.New(cardLayout{c.size}, c.frame, c.picture, c.title, c.text)
}

// cardLayout puts frame, picture, title and text of a card one below the other.
type cardLayout struct{ CardSize }

// lettered is the layout with room for the letters of the theme: words take as many
// lines in large ones.
func (l cardLayout) lettered() cardLayout {
	l.Picture.Width *= looks.Letters()
	l.Title *= looks.Letters()
	l.CardSize.Text *= looks.Letters()
	return l
}

// MinSize implements fyne.Layout.
func (l cardLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	l = l.lettered()
	return fyne.NewSize(l.Picture.Width+2*cardAir, l.Picture.Height+l.Title+l.Text+cardAir)
}

// Layout implements fyne.Layout.
func (l cardLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	l = l.lettered()
	o[0].Resize(size)
	o[0].Move(fyne.Position{})
	tall := size.Height - l.Title - l.Text - cardAir
	top := float32(cardAir)
	for i, h := range []float32{tall, l.Title, l.Text} {
		o[i+1].Resize(fyne.NewSize(size.Width-2*cardAir, h))
		o[i+1].Move(fyne.NewPos(cardAir, top))
		top += h
	}
}

func (c *card) set(choice Choice) {
	c.choice = choice
	c.title.SetText(choice.Title)
	c.text.SetText(choice.Text)
	c.title.Importance, c.text.Importance = widget.MediumImportance, widget.MediumImportance
	if choice.Refused {
		c.title.Importance = widget.LowImportance
	}
	c.title.Refresh()
	c.picture.Image = choice.Picture
	c.picture.Refresh()
	c.colour()
}

func (c *card) choose(chosen bool) {
	c.chosen = chosen
	c.colour()
}

// colour frames the card that is chosen thick, the one with the keys thin.
func (c *card) colour() {
	c.frame.FillColor = theme.Color(theme.ColorNameButton)
	c.frame.StrokeColor, c.frame.StrokeWidth = theme.Color(theme.ColorNameSeparator), 1
	if c.focused {
		c.frame.StrokeColor, c.frame.StrokeWidth = theme.Color(theme.ColorNameForeground), 2
	}
	if c.chosen {
		c.frame.StrokeColor, c.frame.StrokeWidth = theme.Color(theme.ColorNamePrimary), 3
	}
	c.frame.Refresh()
}

// Tapped implements fyne.Tappable.
func (c *card) Tapped(*fyne.PointEvent) {
	focus(c)
	c.tapped()
}

// Cursor implements desktop.Cursorable.
func (c *card) Cursor() desktop.Cursor {
	if c.choice.Refused {
		return desktop.DefaultCursor
	}
	return desktop.PointerCursor
}

// FocusGained implements fyne.Focusable.
func (c *card) FocusGained() {
	c.focused = true
	c.colour()
	heard.Focused(c)
}

// FocusLost implements fyne.Focusable.
func (c *card) FocusLost() {
	c.focused = false
	c.colour()
}

// TypedRune implements fyne.Focusable.
func (c *card) TypedRune(rune) {}

// TypedKey implements fyne.Focusable.
func (c *card) TypedKey(k *fyne.KeyEvent) {
	if !heard.Offered(c, k) {
		c.keys(k)
	}
}
