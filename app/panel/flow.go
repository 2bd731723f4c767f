package panel

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// flow is a layout in lines, as words are: each thing at its own width, and on the
// next line where the room of one ends. Its lines are known once it has been given
// a width; until then it is one line.
type flow struct {
	width float32
	even  bool // things of one width: no line has more than it must, so that none is left over alone
}

// MinSize implements fyne.Layout: no wider than the widest thing.
func (f *flow) MinSize(o []fyne.CanvasObject) fyne.Size {
	size := fyne.Size{}
	for _, line := range f.lines(o) {
		for _, c := range line {
			size.Width = max(size.Width, c.MinSize().Width)
		}
		size.Height += tallest(line) + theme.Padding()
	}
	return fyne.NewSize(size.Width, max(size.Height-theme.Padding(), 0))
}

// Layout implements fyne.Layout.
func (f *flow) Layout(o []fyne.CanvasObject, size fyne.Size) {
	f.width = size.Width
	y := float32(0)
	for _, line := range f.lines(o) {
		x, high := float32(0), tallest(line)
		for _, c := range line {
			c.Move(fyne.NewPos(x, y))
			c.Resize(fyne.NewSize(c.MinSize().Width, high))
			x += c.MinSize().Width + theme.Padding()
		}
		y += high + theme.Padding()
	}
}

// lines breaks what is shown into lines.
func (f *flow) lines(o []fyne.CanvasObject) [][]fyne.CanvasObject {
	full := f.full(o)
	if !f.even || len(full) < 2 {
		return full
	}
	all := slices.Concat(full...)
	return slices.Collect(slices.Chunk(all, evenly(len(all), len(full))))
}

// evenly is how many of so many things stand in a line of so many lines.
func evenly(things, lines int) int { return (things + lines - 1) / lines }

// full breaks what is shown into lines as full as they can be.
func (f *flow) full(o []fyne.CanvasObject) [][]fyne.CanvasObject {
	var lines [][]fyne.CanvasObject
	x := float32(0)
	for _, c := range o {
		if !c.Visible() {
			continue
		}
		w := c.MinSize().Width
		if len(lines) == 0 || f.width > 0 && x+w > f.width {
			lines, x = append(lines, nil), 0
		}
		lines[len(lines)-1] = append(lines[len(lines)-1], c)
		x += w + theme.Padding()
	}
	return lines
}

// inOneLine is how wide the things are in one line.
func inOneLine(o []fyne.CanvasObject) float32 {
	w := -theme.Padding()
	for _, c := range o {
		if c.Visible() {
			w += c.MinSize().Width + theme.Padding()
		}
	}
	return max(w, 0)
}

func tallest(line []fyne.CanvasObject) float32 {
	high := float32(0)
	for _, c := range line {
		high = max(high, c.MinSize().Height)
	}
	return high
}
