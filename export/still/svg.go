package still

import (
	"bytes"
	"context"
	"fmt"
	"image/color"
	"io"
	"strings"

	"homeside/canvas"
	"homeside/export"
)

// WriteSVG writes the moment o.At of a play as an SVG picture that needs no
// font: letters are outlines, each kept once. A pixel of the Options is a CSS
// pixel. Every shape that has a label can be read out, the picture's title is
// the scene's and its description lists the labels. A letter that the fonts
// lack is an empty box, and still read out. o may be nil.
func WriteSVG(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	m, err := momentOf(ctx, src, o)
	if err != nil {
		return err
	}
	var s svg
	m.draw(&s)
	if s.err == nil {
		s.err = s.write(export.Writer(ctx, w), m)
	}
	return m.written(ctx, "SVG", s.err)
}

// svg is the Surface. Its zero value is ready to use.
type svg struct {
	body   bytes.Buffer
	glyphs svgGlyphs
	labels svgLabels
	dark   dark
	lacks  []rune // letters that no font has
	err    error  // the first one
}

var _ canvas.Surface = (*svg)(nil)

// write puts the document together. Its role is that of a document, not of one
// image: the parts of an image are hidden from screen readers (WAI-ARIA 1.2,
// "children presentational").
func (s *svg) write(w io.Writer, m moment) error {
	var b bytes.Buffer
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="%d" height="%d" viewBox="0 0 %[1]d %[2]d" stroke-linejoin="bevel" role="graphics-document document"`,
		m.options.Width, m.options.Height)
	if title := m.title(); title != "" {
		fmt.Fprintf(&b, " aria-label=\"%s\">\n<title>%[1]s</title>\n", escaped(title))
	} else {
		b.WriteString(">\n")
	}
	if len(s.labels.all) > 0 {
		fmt.Fprintf(&b, "<desc>%s</desc>\n", escaped(strings.Join(s.labels.all, "; ")))
	}
	if s.glyphs.defs.Len() > 0 {
		fmt.Fprintf(&b, "<defs>\n%s</defs>\n", s.glyphs.defs.Bytes())
	}
	if bg := m.static.Background; bg.A > 0 {
		fmt.Fprintf(&b, "<rect width=\"100%%\" height=\"100%%\"%s/>\n", paint("fill", bg))
	}
	b.Write(s.body.Bytes())
	b.WriteString("</svg>\n")
	_, err := w.Write(b.Bytes())
	return err
}

// Path implements canvas.Surface. Raster draws closed corners bevelled, and so
// does this.
func (s *svg) Path(info canvas.Info, path []canvas.PxStep, style canvas.PxStyle) {
	class := s.dark.class(hue{style.Fill, style.Stroke})
	stroked := style.Stroke.A > 0 && style.Width > 0
	if !stroked && style.Fill.A == 0 {
		return
	}
	s.body.WriteString("<path" + class + s.labels.of(info.Label) + paint("fill", style.Fill))
	if stroked {
		s.body.WriteString(pen(style))
	}
	s.body.WriteString(` d="`)
	for _, step := range path {
		s.body.WriteByte("MLCZ"[step.Op])
		writePlaces(&s.body, step.P[:[...]int{1, 1, 3, 0}[step.Op]])
	}
	s.body.WriteString("\"/>\n")
}

func pen(style canvas.PxStyle) string {
	out := paint("stroke", style.Stroke) + ` stroke-width="` + decimal(style.Width, 3) + `"`
	if len(style.Dash) > 0 {
		dash := make([]string, len(style.Dash))
		for i, d := range style.Dash {
			dash[i] = decimal(d, 3)
		}
		out += ` stroke-dasharray="` + strings.Join(dash, " ") + `"`
	}
	if style.Round {
		out += ` stroke-linecap="round" stroke-linejoin="round"`
	}
	return out
}

func writePlaces(b *bytes.Buffer, places []canvas.Px) {
	for i, p := range places {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(decimal(p.X, 2) + " " + decimal(p.Y, 2))
	}
}

// paint is an attribute for a colour and, if it shines through, one for that.
func paint(attribute string, c color.NRGBA) string {
	if c.A == 0 {
		return fmt.Sprintf(` %s="none"`, attribute)
	}
	out := fmt.Sprintf(` %s="%s"`, attribute, hex(c))
	if c.A < 255 {
		out += fmt.Sprintf(` %s-opacity="%s"`, attribute, opacity(c))
	}
	return out
}

// hex is a colour as CSS has it, without what shines through.
func hex(c color.NRGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }

func opacity(c color.NRGBA) string { return decimal(float64(c.A)/255, 4) }
