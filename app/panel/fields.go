package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// fields is a layout of captions and the fields under them, in turn, for two people:
// as many fields in a row as show whole, all of a person's, or half of them, or one.
// Where all of a person's stand in a row, the first person's captions are for both.
type fields struct{ columns int }

// ofPerson is how many fields a person has.
const ofPerson = 4

// fit says how many fields stand in a row of a width.
func (f *fields) fit(o []fyne.CanvasObject, width float32) int {
	least := float32(0)
	for i := 0; i < len(o); i += 2 {
		said := fyne.MeasureText(o[i].(*widget.Label).Text, theme.TextSize(), fyne.TextStyle{}).Width
		least = max(least, said+2*theme.InnerPadding(), o[i+1].MinSize().Width)
		if d, ok := o[i+1].(*Dropdown); ok {
			least = max(least, d.Now())
		}
	}
	for columns := ofPerson; columns > 1; columns /= 2 {
		if float32(columns)*(least+theme.Padding()) <= width+theme.Padding() {
			return columns
		}
	}
	return 1
}

// MinSize implements fyne.Layout.
func (f *fields) MinSize(o []fyne.CanvasObject) (least fyne.Size) {
	for _, c := range o {
		least.Width = max(least.Width, c.MinSize().Width)
	}
	for row := range f.rows(o) {
		least.Height += f.high(o, row)
	}
	return least
}

// rows is how many rows of fields there are.
func (f *fields) rows(o []fyne.CanvasObject) int { return len(o) / 2 / max(f.columns, 1) }

// high is the height of a row with its captions and the air under it.
func (f *fields) high(o []fyne.CanvasObject, row int) float32 {
	i := 2 * row * max(f.columns, 1)
	high := o[i+1].MinSize().Height + theme.Padding()
	if o[i].Visible() {
		high += o[i].MinSize().Height
	}
	return high
}

// Layout implements fyne.Layout.
func (f *fields) Layout(o []fyne.CanvasObject, size fyne.Size) {
	f.columns = f.fit(o, size.Width)
	for i := 2 * ofPerson; i < len(o); i += 2 {
		show(o[i], f.columns < ofPerson)
	}
	wide := (size.Width+theme.Padding())/float32(f.columns) - theme.Padding()
	y := float32(0)
	for row := range f.rows(o) {
		for column := range f.columns {
			i := 2 * (row*f.columns + column)
			f.put(o[i], o[i+1], fyne.NewPos(float32(column)*(wide+theme.Padding()), y), wide)
		}
		y += f.high(o, row)
	}
}

// put puts a caption, if it is shown, and its field below it.
func (f *fields) put(caption, field fyne.CanvasObject, at fyne.Position, wide float32) {
	if caption.Visible() {
		caption.Move(at)
		caption.Resize(fyne.NewSize(wide, caption.MinSize().Height))
		at.Y += caption.MinSize().Height
	}
	field.Move(at)
	field.Resize(fyne.NewSize(wide, field.MinSize().Height))
}
