package lessonfile

import (
	"os"
	"reflect"
	"strings"
	"testing"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
)

func formatPage(t *testing.T) string {
	t.Helper()
	data, err := os.ReadFile("FORMAT.md")
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// example is the lesson printed in FORMAT.md.
func example(t *testing.T) string {
	t.Helper()
	_, rest, ok := strings.Cut(formatPage(t), "```json\n")
	text, _, closed := strings.Cut(rest, "```")
	if !ok || !closed {
		t.Fatal("FORMAT.md has no example between ```json and ```")
	}
	return text
}

// The example is a lesson, and stands on the page just as the program writes it.
func TestExampleOfThePage(t *testing.T) {
	text := example(t)
	l, err := Read(strings.NewReader(text))
	if err != nil {
		t.Fatalf("Read(the example of FORMAT.md) = %v", err)
	}
	if got := l.Plays[0].Tracks[game.Near1][1].Leave; got == nil || got.Offset != 0.25 {
		t.Errorf("near1 leaves at %v, want 0.25 s after the serve's contact", got)
	}
	if got := l.Player(game.Near2); got.Name != "Mara" || got.Hand != lesson.LeftHanded || got.Legs() != presetPace(t, "50-plus") {
		t.Errorf("near2 = %+v, want the left-handed Mara of 50-plus", got)
	}
	var out strings.Builder
	if err := Write(&out, l); err != nil {
		t.Fatalf("Write = %v", err)
	}
	if got := out.String(); got != text {
		t.Errorf("Write of the example gives\n%s\nwant it as it stands on the page:\n%s", got, text)
	}
}

func presetPace(t *testing.T, key string) movement.Pace {
	t.Helper()
	p, ok := movement.PresetByKey(key)
	if !ok {
		t.Fatalf("no preset %q", key)
	}
	return p.Pace
}

// Every name that a file may hold is explained on the page.
func TestPageExplainsEveryName(t *testing.T) {
	page := formatPage(t)
	names := map[string]bool{}
	collectNames(reflect.TypeFor[file](), names)
	if len(names) < 60 {
		t.Errorf("the file's types have %d names, want at least 60: has the walk lost its way?", len(names))
	}
	for name := range names {
		if !strings.Contains(page, "`"+name+"`") {
			t.Errorf("FORMAT.md does not explain %q", name)
		}
	}
}

func collectNames(t reflect.Type, names map[string]bool) {
	switch t.Kind() {
	case reflect.Pointer, reflect.Slice:
		collectNames(t.Elem(), names)
	case reflect.Struct:
		for _, name := range namesOf(t) {
			names[name] = true
		}
		for f := range t.Fields() {
			collectNames(f.Type, names)
		}
	}
}

// Every word of every closed set stands on the page.
func TestPageExplainsEveryWord(t *testing.T) {
	page := formatPage(t)
	words := []string{"near", "far"}
	words = append(words, stringsOf(game.Formats[:])...)
	words = append(words, stringsOf(game.Players[:])...)
	words = append(words, stringsOf([]lesson.Hand{0, 1})...)
	words = append(words, stringsOf([]lesson.Want{0, 1, 2})...)
	words = append(words, stringsOf([]lesson.Arc{0, 1})...)
	words = append(words, stringsOf([]lesson.MeetHow{0, 1, 2, 3, 4})...)
	words = append(words, lesson.OwnShot.String())
	words = append(words, ballNames[:]...)
	words = append(words, stringsOf([]lesson.CueKind{0, 1})...)
	words = append(words, stringsOf([]lesson.MarkKind{0, 1})...)
	words = append(words, stringsOf([]lesson.Meaning{0, 1, 2})...)
	words = append(words, stringsOf(lesson.Formations[:])...)
	words = append(words, stringsOf(lesson.ReturnsTo[:])...)
	words = append(words, stringsOf(lesson.Cameras[:])...)
	words = append(words, stringsOf(lesson.Corners[:])...)
	for _, p := range movement.Presets {
		words = append(words, p.Key)
	}
	for _, w := range words {
		if !strings.Contains(page, `"`+w+`"`) {
			t.Errorf("FORMAT.md does not explain the word %q", w)
		}
	}
}

func stringsOf[T interface{ String() string }](members []T) (names []string) {
	for _, m := range members {
		names = append(names, m.String())
	}
	return names
}
