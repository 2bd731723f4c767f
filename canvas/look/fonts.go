package look

import (
	"bytes"
	"fmt"
	"sync"

	"github.com/go-text/typesetting/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"

	"homeside/assets"
)

// Font is one of the embedded fonts.
type Font uint8

// The fonts. A letter is taken from the first that has it; every one has a bold
// one after it.
const (
	Latin Font = iota // and Greek, Cyrillic, Vietnamese
	LatinBold
	Hebrew
	HebrewBold
	Arabic
	ArabicBold
	fontCount
)

// OfWeight is a font of regular weight, or the bold one that belongs to it.
func (f Font) OfWeight(bold bool) Font {
	if bold {
		return f | 1
	}
	return f &^ 1
}

// Bold says whether the font is.
func (f Font) Bold() bool { return f&1 == 1 }

// TTF is the font's file, to be embedded in documents. It is not to be changed.
func (f Font) TTF() []byte {
	return [fontCount][]byte{assets.Regular, assets.Bold, assets.HebrewRegular, assets.HebrewBold, assets.ArabicRegular, assets.ArabicBold}[f]
}

// fontData is a font parsed, for outlines and for setting lines. The outlines
// are safe to share between goroutines, the other is under the lock of lines.
type fontData struct {
	outlines *sfnt.Font
	setting  *font.Face
}

var parsed = func() (all [fontCount]func() fontData) {
	for f := range all {
		all[f] = sync.OnceValue(func() fontData { return parse(Font(f)) })
	}
	return all
}()

func parse(f Font) fontData {
	outlines, err := opentype.Parse(f.TTF())
	if err == nil {
		var setting *font.Face
		if setting, err = font.ParseTTF(bytes.NewReader(f.TTF())); err == nil {
			return fontData{outlines, setting}
		}
	}
	panic(fmt.Sprintf("built-in font %d: %v", f, err)) // only a damaged build can get here
}

// Read reads the fonts that nearly every picture needs, unless they have been. It takes
// tens of milliseconds: whoever knows that a picture is to come begins with it, beside
// what else there is to do.
func Read() {
	go parsed[Latin]()
	parsed[LatinBold]()
}

func (f Font) sfnt() *sfnt.Font { return parsed[f]().outlines }

// ofLetter is the first font of a weight that has a letter; false if none has.
func ofLetter(r rune, bold bool) (Font, bool) {
	for f := Latin.OfWeight(bold); f < fontCount; f += 2 {
		if g, ok := parsed[f]().setting.NominalGlyph(r); ok && g != 0 {
			return f, true
		}
	}
	return Latin.OfWeight(bold), false
}
