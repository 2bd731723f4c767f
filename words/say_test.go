package words

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/flight"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/plan"
	"homeside/model/rally"
	"homeside/model/signal"
)

// Every text given to T or Text anywhere in the program has a Spanish one with the same
// verbs.
func TestEveryTextIsTranslated(t *testing.T) {
	said := textsGivenToT(t, "..")
	if len(said) == 0 {
		t.Fatal("no text is given to T: the test reads the wrong folder")
	}
	for text, where := range said {
		es, ok := spanish()[text]
		if !ok {
			t.Errorf("%s: %q has no Spanish", where, text)
			continue
		}
		if got, want := verbs(es), verbs(text); !slices.Equal(got, want) {
			t.Errorf("%s: %q has the verbs %v, in Spanish %v", where, text, want, got)
		}
	}
}

// Every member of the closed sets that Name says is translated.
func TestEveryNameIsTranslated(t *testing.T) {
	var names []fmt.Stringer
	add := func(n int, of func(i int) fmt.Stringer) {
		for i := range n {
			names = append(names, of(i))
		}
	}
	add(2, func(i int) fmt.Stringer { return court.Side(i) })
	add(len(flight.Reasons), func(i int) fmt.Stringer { return flight.Reasons[i] })
	add(len(formation.Changes), func(i int) fmt.Stringer { return formation.Changes[i] })
	add(len(formation.Mistakes), func(i int) fmt.Stringer { return formation.Mistakes[i] })
	add(4, func(i int) fmt.Stringer { return signal.Advice(i) })
	add(len(signal.Actions), func(i int) fmt.Stringer { return signal.Actions[i] })
	add(len(signal.Aims), func(i int) fmt.Stringer { return signal.Aims[i] })
	add(3, func(i int) fmt.Stringer { return rally.Gait(i) })
	add(3, func(i int) fmt.Stringer { return lesson.Want(i) })
	add(3, func(i int) fmt.Stringer { return lesson.Meaning(i) })
	add(4, func(i int) fmt.Stringer { return cover.Change(i) })
	add(4, func(i int) fmt.Stringer { return flight.Outcome(i) })
	add(5, func(i int) fmt.Stringer { return game.Verdict(i) })
	add(len(plan.Goals), func(i int) fmt.Stringer { return plan.Goals[i] })
	for _, k := range lesson.Formations {
		names = append(names, k)
	}
	for _, n := range names {
		if spanish()[n.String()] == "" {
			t.Errorf("%T %q has no Spanish", n, n)
		}
	}
}

// The paces to choose from have their names in Spanish.
func TestEveryPaceIsTranslated(t *testing.T) {
	for _, p := range movement.Presets {
		if spanish()[p.Name] == "" {
			t.Errorf("pace %q has no Spanish", p.Name)
		}
	}
}

// No text is translated twice: the later one would win unseen.
func TestNoTextIsTranslatedTwice(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range spanishCatalogues {
		for text := range c {
			if seen[text] {
				t.Errorf("%q is translated in two tables", text)
			}
			seen[text] = true
		}
	}
}

func TestLanguageOf(t *testing.T) {
	for _, c := range []struct {
		tag  string
		want Language
		ok   bool
	}{{"en", English, true}, {"es", Spanish, true}, {"es-MX", Spanish, true}, {"es_ES.UTF-8", Spanish, true}, {"ES", Spanish, true},
		{"", English, false}, {"C", English, false}, {"est", English, false}, {"fr", English, false}} {
		if got, ok := LanguageOf(c.tag); got != c.want || ok != c.ok {
			t.Errorf("LanguageOf(%q) = %v, %v, want %v, %v", c.tag, got, ok, c.want, c.ok)
		}
	}
}

// T says the Spanish text with its verbs filled in, and the English one again
// after.
func TestSaysTheLanguageSpoken(t *testing.T) {
	Speak(Spanish)
	got := T("Cancel")
	Speak(English)
	if got != "Cancelar" || T("Cancel") != "Cancel" {
		t.Errorf("T(Cancel) = %q, then %q, want Cancelar, then Cancel", got, T("Cancel"))
	}
	if got := T("no such text %d", 3); got != "no such text 3" {
		t.Errorf("T of a text without translation = %q", got)
	}
}

var verb = regexp.MustCompile(`%(?:\[(\d+)\])?[-+# 0]*\d*(?:\.\d+)?([a-zA-Z])`)

// verbs are a text's verbs in the order of their arguments.
func verbs(text string) []string {
	var out []string
	next := 1
	for _, m := range verb.FindAllStringSubmatch(strings.ReplaceAll(text, "%%", ""), -1) {
		if m[1] != "" {
			next, _ = strconv.Atoi(m[1]) // digits by the expression
		}
		out = append(out, strconv.Itoa(next)+m[2])
		next++
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// textsGivenToT are the constant texts given to T in the sources below a folder,
// with the place of one use of each. A text that is no constant is an error.
func textsGivenToT(t *testing.T, root string) map[string]string {
	t.Helper()
	said := map[string]string{}
	files := token.NewFileSet()
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		f, err := parser.ParseFile(files, path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		ast.Inspect(f, func(n ast.Node) bool {
			call, ok := n.(*ast.CallExpr)
			if !ok || !isT(call.Fun, f.Name.Name) || len(call.Args) == 0 || path == "../words/say.go" {
				return true
			}
			text, ok := constant(call.Args[0])
			where := files.Position(call.Pos()).String()
			if !ok {
				t.Errorf("%s: the text given to T is not a constant", where)
			}
			said[text] = where
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatalf("reading the sources: %v", err)
	}
	return said
}

// isT tells whether a call is of this package's T or Text, or of what refuses a
// formation, whose texts are said by Said.
func isT(fun ast.Expr, pkg string) bool {
	switch f := fun.(type) {
	case *ast.Ident:
		return pkg == "words" && (f.Name == "T" || f.Name == "Text") || pkg == "formation" && f.Name == "refuse"
	case *ast.SelectorExpr:
		x, ok := f.X.(*ast.Ident)
		return ok && x.Name == "words" && (f.Sel.Name == "T" || f.Sel.Name == "Text")
	}
	return false
}

// constant is a literal or several added.
func constant(e ast.Expr) (string, bool) {
	switch e := e.(type) {
	case *ast.BasicLit:
		s, err := strconv.Unquote(e.Value)
		return s, err == nil
	case *ast.BinaryExpr:
		a, okA := constant(e.X)
		b, okB := constant(e.Y)
		return a + b, okA && okB
	}
	return "", false
}

// What was kept in one language is said in the other; what is not in the catalogue as
// a whole stays.
func TestAgain(t *testing.T) {
	t.Cleanup(func() { Speak(English) })
	for _, c := range []struct {
		language   Language
		kept, want string
	}{
		{English, "change the logo", "change the logo"}, {English, "cambiar el logotipo", "change the logo"}, {English, "move Tobin", "move Tobin"},
		{Spanish, "change the logo", "cambiar el logotipo"}, {Spanish, "cambiar el logotipo", "cambiar el logotipo"}, {Spanish, "", ""},
	} {
		Speak(c.language)
		if got := Again(c.kept); got != c.want {
			t.Errorf("%v: Again(%q) = %q, want %q", c.language, c.kept, got, c.want)
		}
	}
}
