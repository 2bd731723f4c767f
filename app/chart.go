package app

import (
	"image"
	"image/png"
	"io"
	"path/filepath"
	"strings"

	"homeside/words"
)

// askSaveChart asks for a file and writes a chart as a PNG picture.
func (e *Editor) askSaveChart(chart image.Image) {
	path := filepath.Join(filepath.Dir(e.suggestedPath()), "time-a-return-buys.png")
	e.askPath(words.T("Save the chart"), words.T("Save"), path, nil, func(path string) {
		if !strings.EqualFold(filepath.Ext(path), ".png") {
			path += ".png"
		}
		e.unlessExists(path, "", func() { e.saveChart(path, chart) })
	})
}

func (e *Editor) saveChart(path string, chart image.Image) {
	e.saveFile(path, words.T("Nothing was written. Your lesson is unchanged."), func(w io.Writer) error { return png.Encode(w, chart) }, nil)
}
