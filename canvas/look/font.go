package look

import (
	"fmt"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"homeside/assets"
)

// parsed fonts; sfnt.Font is safe to share between goroutines.
var fonts = sync.OnceValue(func() [2]*sfnt.Font {
	return [2]*sfnt.Font{mustParse(assets.Regular), mustParse(assets.Bold)}
})

func mustParse(ttf []byte) *sfnt.Font {
	f, err := opentype.Parse(ttf)
	if err != nil {
		panic(fmt.Sprintf("built-in font: %v", err)) // only a damaged build can get here
	}
	return f
}

// Faces makes and keeps font faces. Its zero value is ready; it is not safe for
// use by two goroutines at once.
type Faces struct{ made map[faceKey]font.Face }

type faceKey struct {
	px   float64
	bold bool
}

// Face is the font at a size in pixels (of the em).
func (f *Faces) Face(px float64, bold bool) font.Face {
	key := faceKey{px, bold}
	if face, ok := f.made[key]; ok {
		return face
	}
	face, err := opentype.NewFace(fonts()[index(bold)], &opentype.FaceOptions{Size: px, DPI: 72, Hinting: font.HintingNone})
	if err != nil {
		panic(fmt.Sprintf("built-in font at %v px: %v", px, err)) // NewFace fails on a damaged font only
	}
	if f.made == nil {
		f.made = map[faceKey]font.Face{}
	}
	f.made[key] = face
	return face
}

// Width is the width of a line of text in units of the em.
func Width(text string, bold bool) float64 {
	const em = 1000
	var buf sfnt.Buffer
	f := fonts()[index(bold)]
	width := fixed.Int26_6(0)
	for _, r := range text {
		g, err := f.GlyphIndex(&buf, r)
		if err != nil {
			continue
		}
		if a, err := f.GlyphAdvance(&buf, g, fixed.I(em), font.HintingNone); err == nil {
			width += a
		}
	}
	return float64(width) / 64 / em
}

func index(bold bool) int {
	if bold {
		return 1
	}
	return 0
}
