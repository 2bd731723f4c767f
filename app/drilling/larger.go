package drilling

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// larger is the theme of the app with larger letters, whatever theme that is at the
// moment; with signs on its buttons there is room for them.
type larger struct {
	text  float32
	grown *float32 // with the page; a sheet's
	signs bool
}

// How much larger what is read from some steps away is.
const (
	buttonText = 1.5
	signIcon   = 64 // the side of a sign on a button
)

// usualPage is the height of a page on which nothing has grown; on a higher one
// letters grow with it, up to a bound.
const (
	usualPage = 760
	mostGrown = 1.6
)

// grownFor is how much letters grow on a page of a size: not by so little that it
// could not be seen, since they are all set again.
func grownFor(size fyne.Size) float32 {
	k := min(size.Height/usualPage, size.Width/usualPage/1.6)
	return min(max(float32(int(k*10))/10, 1), mostGrown)
}

func now() fyne.Theme { return fyne.CurrentApp().Settings().Theme() }

// Color implements fyne.Theme.
func (larger) Color(n fyne.ThemeColorName, v fyne.ThemeVariant) color.Color { return now().Color(n, v) }

// Font implements fyne.Theme.
func (larger) Font(s fyne.TextStyle) fyne.Resource { return now().Font(s) }

// Icon implements fyne.Theme.
func (larger) Icon(n fyne.ThemeIconName) fyne.Resource { return now().Icon(n) }

// Size implements fyne.Theme.
func (l larger) Size(n fyne.ThemeSizeName) float32 {
	switch {
	case n == theme.SizeNameText, n == theme.SizeNameInlineIcon && !l.signs:
		return now().Size(n) * l.text * *l.grown
	case n == theme.SizeNameInlineIcon:
		return signIcon * *l.grown
	}
	return now().Size(n)
}

// whole gives its parts all of a page and tells the page's size.
type whole struct{ sized func(fyne.Size) }

// MinSize implements fyne.Layout.
func (whole) MinSize(o []fyne.CanvasObject) (least fyne.Size) {
	for _, part := range o {
		if part.Visible() {
			least = least.Max(part.MinSize())
		}
	}
	return least
}

// Layout implements fyne.Layout.
func (l whole) Layout(o []fyne.CanvasObject, size fyne.Size) {
	for _, part := range o {
		part.Resize(size)
	}
	l.sized(size)
}
