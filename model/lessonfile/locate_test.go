package lessonfile

import (
	"testing"

	"github.com/go-json-experiment/json/jsontext"
)

func TestLineOf(t *testing.T) {
	data := []byte("\n{\n\"a\"\n:\n[1,\n{\"b\": 2,\n\"c/d\": {}\n}\n],\n\"e\": null}")
	for _, c := range []struct {
		at   jsontext.Pointer
		want int
	}{
		{"", 2}, {"/a", 3}, {"/a/0", 5}, {"/a/1", 6}, {"/a/1/b", 6}, {"/a/1/c~1d", 7}, {"/e", 10},
		{"/a/1/absent", 6}, {"/a/2", 3}, {"/absent/b", 2}, {"/e/f", 10}, {"/a/0/b", 5},
	} {
		if got := lineOf(data, c.at); got != c.want {
			t.Errorf("lineOf(%q) = %d, want %d", c.at, got, c.want)
		}
	}
	for _, broken := range []string{"", "x", "{", "[1", `{"a"`, `{"a":`, `{1:2}`} {
		if got := lineOf([]byte(broken), "/a/0/b"); got != 1 {
			t.Errorf("lineOf(%q of %s) = %d, want 1", "/a/0/b", broken, got)
		}
	}
}

func TestPathOf(t *testing.T) {
	for _, c := range []struct {
		at   jsontext.Pointer
		want string
	}{
		{"", ""}, {"/title", "title"}, {"/plays/2/shots/10/arc", "plays[2].shots[10].arc"},
		{"/a b", `["a b"]`}, {"/x/~1", `x["/"]`}, {"/x/\n", `x["\n"]`}, {"/x/", `x[""]`},
		{"/a/b/c/d/e/f/g/h/i/j/k/l/m/n", "a.b.c.d.e.f.g.h.i.j.k.l..."},
	} {
		if got := pathOf(c.at); got != c.want {
			t.Errorf("pathOf(%q) = %q, want %q", c.at, got, c.want)
		}
	}
}
