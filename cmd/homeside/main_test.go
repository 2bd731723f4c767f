package main

import (
	"slices"
	"testing"

	"homeside/words"
)

func TestParse(t *testing.T) {
	spanish, english := words.Spanish, words.English
	for _, c := range []struct {
		args  []string
		files []string
		asked *words.Language
		ok    bool
	}{
		{nil, nil, nil, true},
		{[]string{"a.json"}, []string{"a.json"}, nil, true},
		{[]string{"--lang", "es", "a.json"}, []string{"a.json"}, &spanish, true},
		{[]string{"--lang=en"}, nil, &english, true},
		{[]string{"--lang", "xx"}, nil, nil, false},
		{[]string{"--nothing"}, nil, nil, false},
		{[]string{"a.json", "b.json"}, []string{"a.json", "b.json"}, nil, true},
	} {
		files, asked, err := parse(c.args)
		if (err == nil) != c.ok {
			t.Errorf("parse(%q): %v, want it taken: %v", c.args, err, c.ok)
			continue
		}
		same := asked == c.asked || asked != nil && c.asked != nil && *asked == *c.asked
		if c.ok && (!slices.Equal(files, c.files) || !same) {
			t.Errorf("parse(%q) = %q, %v, want %q, %v", c.args, files, asked, c.files, c.asked)
		}
	}
}
