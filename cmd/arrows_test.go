package cmd

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// arrow says what a package and those below it may import of the project. The
// longest folder that fits counts. An entry ending in /... means all below it.
type arrow struct {
	folder string
	may    []string
}

var arrows = []arrow{
	{"model/units", nil},
	{"model/court", []string{"model/units"}},
	{"model/game", []string{"model/units", "model/court"}},
	{"model/flight", []string{"model/units", "model/court"}},
	{"model/movement", []string{"model/units", "model/court"}},
	{"model/homography", []string{"model/units", "model/court"}},
	{"model/lesson", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/homography"}},
	{"model/lesson/lessontest", []string{"model/units", "model/court", "model/game", "model/movement", "model/lesson"}}, // for tests
	{"model/roster", []string{"model/court", "model/game", "model/lesson"}},
	{"model/lessonfile", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/lesson", "model/roster"}},
	{"model/edit", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/lesson"}},
	{"model/rally", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/lesson"}},
	{"model/reel", []string{"model/units", "model/court", "model/game", "model/lesson", "model/rally"}},
	{"model/finding", []string{"model/units", "model/court", "model/game", "model/lesson", "model/rally"}},
	{"model/rules", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/lesson", "model/rally", "model/finding"}},
	{"model/advice", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/lesson", "model/rally", "model/finding"}},
	{"model/cover", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/lesson", "model/rally", "model/finding"}},
	{"model/formation", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/lesson", "model/rally", "model/finding"}},
	{"model/plan", []string{"model/units", "model/court", "model/game", "model/flight", "model/movement", "model/lesson", "model/rally", "model/finding", "model/rules", "model/cover", "model/advice", "model/formation"}},
	{"model/signal", []string{"model/units", "model/court", "model/game", "model/lesson"}},
	{"model/drill", []string{"model/units", "model/court", "model/game", "model/lesson"}},
	{"assets", nil},
	{"words", []string{"model/..."}},
	{"canvas", []string{"model/units", "model/court"}},
	{"canvas/look", []string{"canvas", "assets"}},
	{"canvas/record", []string{"canvas"}},
	{"canvas/raster", []string{"canvas", "canvas/look", "internal/large"}},
	{"canvas/pick", []string{"canvas"}},
	{"canvas/compose", []string{"model/...", "canvas", "canvas/look", "words"}},
	{"canvas/film", []string{"model/...", "canvas", "canvas/look", "canvas/compose", "words"}},
	{"export", []string{"model/units", "canvas"}},
	{"export/exporttest", []string{"model/...", "canvas", "canvas/look", "export", "assets"}}, // for tests
	{"export/pdf", []string{"canvas", "canvas/look"}},
	{"export/still", []string{"model/units", "canvas", "canvas/look", "canvas/raster", "export", "export/pdf"}},
	{"export/clip", []string{"model/units", "canvas", "canvas/raster", "export", "internal/large"}},
	{"export/captions", []string{"model/...", "words", "export"}},
	{"export/sound", []string{"model/...", "export"}},
	{"export/page", []string{"model/...", "canvas", "canvas/...", "export", "export/still", "export/captions", "export/sound", "words"}},
	{"export/handout", []string{"model/...", "canvas", "canvas/look", "canvas/compose", "words", "export", "export/pdf", "export/captions"}},
	{"export/photo", []string{"canvas", "canvas/raster", "export"}},
	{"export/formats", []string{"model/...", "canvas", "canvas/look", "words", "export", "export/..."}},
	{"app/session", []string{"model/...", "words"}},
	{"app/gesture", []string{"model/...", "app/session", "words"}},
	{"app/settings", []string{"words"}},
	{"app/journal", []string{"model/lesson", "model/lessonfile", "export"}},
	{"app/heard", nil},
	{"app/looks", []string{"app/settings", "canvas/look"}},
	{"app/player", []string{"model/units", "export/sound"}},
	{"app/rehearsal", []string{"model/...", "export/sound"}},
	{"app/drilling", []string{"model/...", "canvas", "canvas/...", "words", "app/frameclock", "app/heard", "app/looks", "app/panel", "app/rehearsal", "app/session"}},
	{"app", []string{"model/...", "canvas", "canvas/...", "export", "export/...", "assets", "words", "app/..."}},
	{"cmd/homeside", []string{"model/...", "assets", "words", "app", "app/...", "internal/large"}},
	{"cmd/homeside-cli", []string{"model/...", "canvas", "canvas/...", "export", "export/...", "assets", "words"}},
	{"cmd/clipbench", []string{"model/...", "assets", "canvas", "canvas/...", "export", "export/..."}},
	{"cmd", nil},
}

// A package that is not model, canvas, export or one of the editor's toolkit-free
// parts may use Fyne; the program itself is the only one to use fyne's app.
var withoutFyne = []string{"model", "canvas", "export", "app/session", "app/settings", "app/journal", "app/gesture", "assets", "words", "cmd/homeside-cli"}

// What has no clock, and what of it may import time all the same: a clip must be
// able to give up waiting for ffmpeg, a PDF carries a fixed date, a test gives up
// waiting for a browser.
var (
	withoutClock = []string{"model", "canvas", "export", "app/session", "app/settings", "app/gesture", "words"}
	withTime     = []string{"export/clip", "export/pdf", "export/exporttest"}
)

const (
	project = "homeside/"
	fyne    = "fyne.io/fyne/v2"
)

func TestArrows(t *testing.T) {
	files := 0
	for path, imports := range sources(t) {
		files++
		folder := filepath.ToSlash(filepath.Dir(path))
		for _, imp := range imports {
			checkImport(t, path, folder, imp)
		}
	}
	if files < 20 {
		t.Fatalf("only %d source files found: the test looks in the wrong place", files)
	}
}

func checkImport(t *testing.T, path, folder, imp string) {
	t.Helper()
	if own, ok := strings.CutPrefix(imp, project); ok {
		a, found := arrowOf(folder)
		if !found {
			t.Errorf("%s: folder %s has no entry in the table of arrows", path, folder)
		} else if !allowed(a.may, own) {
			t.Errorf("%s imports %s: no arrow leads from %s to it", path, imp, a.folder)
		}
	}
	if strings.HasPrefix(imp, fyne) && below(folder, withoutFyne) {
		t.Errorf("%s imports %s: %s must do without a toolkit", path, imp, folder)
	}
	if imp == fyne+"/app" && folder != "cmd/homeside" {
		t.Errorf("%s imports %s: only cmd/homeside may", path, imp)
	}
	if imp == "time" && below(folder, withoutClock) && !below(folder, withTime) {
		t.Errorf("%s imports %s: time is an argument below the window", path, imp)
	}
	if strings.HasPrefix(folder, "model/") && strings.HasPrefix(imp, "image") {
		t.Errorf("%s imports %s: a model has no pictures", path, imp)
	}
}

func TestArrowsCanFail(t *testing.T) {
	for _, c := range []struct {
		folder, imp string
		want        bool
	}{
		{"model/units", "model/court", false}, {"model/court", "model/units", true}, {"canvas/compose", "model/rally", true},
		{"export/clip", "model/rally", false}, {"app/panel", "app/session", true}, {"app/session", "canvas", false},
	} {
		a, _ := arrowOf(c.folder)
		if got := allowed(a.may, c.imp); got != c.want {
			t.Errorf("may %s import %s: %v, want %v", c.folder, c.imp, got, c.want)
		}
	}
}

func arrowOf(folder string) (best arrow, found bool) {
	for _, a := range arrows {
		if below(folder, []string{a.folder}) && (!found || len(a.folder) > len(best.folder)) {
			best, found = a, true
		}
	}
	return best, found
}

func allowed(may []string, own string) bool {
	return slices.ContainsFunc(may, func(m string) bool {
		tree, all := strings.CutSuffix(m, "/...")
		return own == m || all && strings.HasPrefix(own, tree+"/")
	})
}

func below(folder string, trees []string) bool {
	return slices.ContainsFunc(trees, func(t string) bool { return folder == t || strings.HasPrefix(folder, t+"/") })
}

// sources are the imports of every source file that is not a test, by its path
// from the project's root.
func sources(t *testing.T) map[string][]string {
	t.Helper()
	root := ".."
	out := map[string][]string{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, path)
		for _, i := range f.Imports {
			name, unquoted := strconv.Unquote(i.Path.Value)
			if unquoted != nil {
				return unquoted
			}
			out[rel] = append(out[rel], name)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}
