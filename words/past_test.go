package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode"
)

// readByPeople are the folders whose literals people would read: in labels,
// buttons, menus, dialogs, statuses, the names of steps, pictures.
var readByPeople = []string{"app", "app/panel", "app/courtview", "app/rallystrip", "app/session", "app/gesture", "app/drilling", "canvas/compose", "export/captions", "export/formats"}

// looksLikeLanguage is a literal of two words, or of one that begins with a capital.
var looksLikeLanguage = regexp.MustCompile(`\pL{2,}[,:;]? [\pL%(]|^[A-Z][a-z]+|%[a-z] [a-z]|[a-z]+…`)

// notLanguage are literals that only look like it: what they are.
var notLanguage = map[string]string{
	"Homeside": "the program's name", "State": "a folder of macOS", "Documents": "a folder of the desktop",
	"Ctrl+": "a key", "Alt+": "a key", "Shift+": "a key", "Super+": "a key",
	"Ctrl+Z": "keys", "Ctrl+Y": "keys", "Ctrl+C": "keys", "Ctrl+X": "keys", "Ctrl+V": "keys", "Ctrl+A": "keys",
	"recent lessons": "a key of the preferences", "large text": "a key of the preferences", "reduced motion": "a key of the preferences",
	"asking the settings":                    "a line of the trace",
	"%d %s %s run=%d best=%d right=%d of %d": "a line of the trace",
	"%s: the name must end in one of %s":     "an error", "%s: no format is called %s; there are %s": "an error",
	"painted a chooser": "a line of the trace",
}

// Everything that people read in the window and in pictures goes through the
// catalogue: no literal that looks like language stands outside of T, Text, an
// error or a line of the trace.
func TestNothingIsSaidPastTheCatalogue(t *testing.T) {
	read := 0
	for _, folder := range readByPeople {
		files, err := filepath.Glob(filepath.Join("..", folder, "*.go"))
		if err != nil {
			t.Fatal(err)
		}
		for _, path := range files {
			if strings.HasSuffix(path, "_test.go") {
				continue
			}
			read++
			src, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			for where, text := range saidPast(t, path, src) {
				t.Errorf("%s: %q is said past the catalogue: give it to words.T", where, text)
			}
		}
	}
	if read < 100 {
		t.Fatalf("only %d files read: the test looks in the wrong place", read)
	}
}

// The check finds what it is for, and only that.
func TestSaidPast(t *testing.T) {
	src := `package x
import "an import with words"
func f() {
	widget.NewButton("Save the file", nil)
	e.trace.say("saved the file")
	words.T("Open the file")
	return fmt.Errorf("open the file: %w", err)
	g("near-1", "%.2f", "2 ft " + x, words.T("b c", "Inner text"))
	label.SetText("Play")
}`
	found := map[string]bool{}
	for _, text := range saidPast(t, "x.go", []byte(src)) {
		found[text] = true
	}
	if len(found) != 2 || !found["Save the file"] || !found["Play"] {
		t.Errorf("found %v, want the button's text and the label's", found)
	}
}

// saidPast are the literals of a source that look like language and go past the
// catalogue, by their places.
func saidPast(t *testing.T, path string, src []byte) map[string]string {
	t.Helper()
	files := token.NewFileSet()
	f, err := parser.ParseFile(files, path, src, parser.SkipObjectResolution)
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]string{}
	ast.Inspect(f, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.ImportSpec:
			return false
		case *ast.CallExpr:
			return !speaks(n.Fun)
		case *ast.BasicLit:
			text, err := strconv.Unquote(n.Value)
			if n.Kind == token.STRING && err == nil && looksLikeLanguage.MatchString(text) && notLanguage[text] == "" {
				found[files.Position(n.Pos()).String()] = text
			}
		}
		return true
	})
	return found
}

// speaks tells whether a call's texts are the catalogue's or for no reader of the
// window: of an error, a panic, the trace.
func speaks(fun ast.Expr) bool {
	name := ""
	switch f := fun.(type) {
	case *ast.Ident:
		name = f.Name
	case *ast.SelectorExpr:
		name = f.Sel.Name
		if x, ok := f.X.(*ast.Ident); ok {
			name = x.Name + "." + name
		} else if x, ok := f.X.(*ast.SelectorExpr); ok {
			name = x.Sel.Name + "." + name
		}
	}
	switch name {
	case "words.T", "words.Text", "errors.New", "fmt.Errorf", "panic", "trace.say", "options.say":
		return true
	}
	return false
}

// The tables have one word for one thing, that of the continent where most
// players who speak Spanish are: see spanish_words.go.
func TestSpanishHasOneVocabulary(t *testing.T) {
	other := map[string]string{"pista": "cancha", "bola": "pelota", "tanteo": "marcador", "pala": "paleta", "resta": "recibe", "restar": "recibir"}
	for english, es := range spanish() {
		for _, word := range strings.FieldsFunc(strings.ToLower(es), func(r rune) bool { return !unicode.IsLetter(r) }) {
			if better, ok := other[strings.TrimSuffix(word, "s")]; ok && english != "cue track (WAV)" { // a track of sound
				t.Errorf("%q is %q: say %q, not %q", english, es, better, word)
			}
		}
	}
}
