package heard

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// edgeWidth is how wide the line is around the button that has the keys.
const edgeWidth = 2.5

// edged draws a button with a line around it while it has the keys: the toolkit only
// tints it, which is hardly seen on one that is coloured.
type edged struct {
	fyne.WidgetRenderer
	button *Button
}

// CreateRenderer implements fyne.Widget.
func (b *Button) CreateRenderer() fyne.WidgetRenderer {
	b.edge.StrokeWidth = edgeWidth
	return edged{b.Button.CreateRenderer(), b}
}

// Objects implements fyne.WidgetRenderer.
func (r edged) Objects() []fyne.CanvasObject {
	return append(slices.Clone(r.WidgetRenderer.Objects()), &r.button.edge)
}

// Layout implements fyne.WidgetRenderer.
func (r edged) Layout(size fyne.Size) {
	r.WidgetRenderer.Layout(size)
	r.button.edge.Resize(size)
}

// Refresh implements fyne.WidgetRenderer. The line is of the colour of what is chosen
// or, on a button of that colour, which it may become while it has the keys, of that of
// letters.
func (r edged) Refresh() {
	b := r.button
	b.edge.StrokeColor = theme.Color(theme.ColorNamePrimary)
	if b.Importance == widget.HighImportance {
		b.edge.StrokeColor = theme.Color(theme.ColorNameForeground)
	}
	b.edge.CornerRadius = theme.Size(theme.SizeNameInputRadius)
	r.WidgetRenderer.Refresh()
}
