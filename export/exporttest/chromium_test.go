package exporttest

import (
	"fmt"
	"image/color"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const testPage = `<!doctype html><meta charset="utf-8"><title>t</title><body style="margin:0;background:#123456">
<img src="missing.png"><img src="data:image/gif;base64,R0lGODlhAQABAAAAACw=">
<script>console.error("wrong", 7); setTimeout(() => { document.title = "later"; null.x }, 30)</script>`

// A page's script runs, its errors and wishes are noted, and its picture is
// taken pixel by pixel.
func TestPage(t *testing.T) {
	path := filepath.Join(t.TempDir(), "page.html")
	if err := os.WriteFile(path, []byte(testPage), 0o600); err != nil {
		t.Fatal(err)
	}
	p := OpenPage(t, path, 300, 200)
	p.Until(`document.title === "later"`)
	sum, later := Eval[int](p, `[1, 2, 3].reduce((a, b) => a + b)`), Eval[string](p, `new Promise(done => setTimeout(() => done("x"), 10))`)
	if sum != 6 || later != "x" {
		t.Errorf("Eval gives %d and %q, want 6 and x", sum, later)
	}
	if got := strings.Join(p.Errors(), "\n"); !strings.Contains(got, `"wrong" 7`) || !strings.Contains(got, "TypeError") {
		t.Errorf("Errors() = %q, want the console's and the exception", got)
	}
	if got := p.Requests(); fmt.Sprint(got) != fmt.Sprint([]string{"file://" + path, "file://" + filepath.Join(filepath.Dir(path), "missing.png")}) {
		t.Errorf("Requests() = %q, want the page and the picture beside it", got)
	}
	img := p.Picture()
	if got := img.Bounds().Size(); got.X != 300 || got.Y != 200 {
		t.Errorf("Picture() is %v, want 300 x 200", got)
	}
	if got, want := img.RGBAAt(250, 150), (color.RGBA{0x12, 0x34, 0x56, 0xFF}); got != want {
		t.Errorf("Picture() has %v, want %v", got, want)
	}
}
