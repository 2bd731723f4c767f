package drilling

import (
	"bytes"
	"image/png"

	"fyne.io/fyne/v2"

	"homeside/app/looks"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/drill"
)

// icon is a sign as a picture on a button.
func icon(sign drill.Sign) fyne.Resource {
	var b bytes.Buffer
	if err := png.Encode(&b, raster.Scene(compose.Hand(sign, 2*signIcon, looks.Now()))); err != nil {
		return nil // a buffer takes everything
	}
	name := sign.String() + ".day.png" // the toolkit keeps pictures by their names
	if looks.Now() == &look.Night {
		name = sign.String() + ".night.png"
	}
	return fyne.NewStaticResource(name, b.Bytes())
}
