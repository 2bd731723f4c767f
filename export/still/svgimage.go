package still

import (
	"bytes"
	"encoding/base64"
	"fmt"
	"image/png"

	"homeside/canvas"
)

// Image implements canvas.Surface: the image as a PNG within the document.
func (s *svg) Image(info canvas.Info, g canvas.PxImage) {
	var file bytes.Buffer
	if err := png.Encode(&file, g.Pix); err != nil {
		if s.err == nil {
			s.err = err
		}
		return
	}
	fmt.Fprintf(&s.body, `<image%s x="%s" y="%s" width="%s" height="%s" preserveAspectRatio="none" xlink:href="data:image/png;base64,%s"/>`+"\n",
		s.labels.of(info.Label), decimal(g.Min.X, 2), decimal(g.Min.Y, 2), decimal(g.Max.X-g.Min.X, 2), decimal(g.Max.Y-g.Min.Y, 2),
		base64.StdEncoding.EncodeToString(file.Bytes()))
}
