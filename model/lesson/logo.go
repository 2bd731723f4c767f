package lesson

import (
	"encoding/binary"
	"errors"
	"strings"
)

// Logo is the lesson's own picture for its reels. Its zero value is none.
type Logo struct {
	PNG string // the bytes of a PNG file, which may be transparent; empty for none
}

// Bounds of a logo. The file stands in the lesson's own, so that a lesson sent to
// somebody is whole.
const (
	MaxLogo     = 256 << 10 // bytes
	MaxLogoSide = 2048      // px
)

// Where a PNG file has what (PNG Specification, third edition, 5.2 and 11.2.1).
const (
	pngSignature = "\x89PNG\r\n\x1a\n"
	pngHeader    = "\x00\x00\x00\rIHDR"
	pngSize      = len(pngSignature) + len(pngHeader)
)

// Size is the logo's size in pixels as the PNG file states it, or why it is no
// PNG picture. Whether the rest of the file is sound shows when it is drawn.
func (g Logo) Size() (width, height int, err error) {
	if !strings.HasPrefix(g.PNG, pngSignature+pngHeader) || len(g.PNG) < pngSize+8 {
		return 0, 0, errors.New("is not a PNG picture")
	}
	at := []byte(g.PNG[pngSize : pngSize+8])
	return int(binary.BigEndian.Uint32(at)), int(binary.BigEndian.Uint32(at[4:])), nil
}
