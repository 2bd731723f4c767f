package page

import (
	"bytes"
	"errors"
	"reflect"
	"slices"
	"strings"
	"testing"

	"homeside/assets"
	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/words"
)

// The same lesson makes the same bytes, and five plays of any built-in lesson fit
// into 300 KB.
func TestSizeAndSameness(t *testing.T) {
	for _, name := range assets.LessonNames {
		l := read(t, name)
		for i := 0; len(l.Plays) < 5; i++ {
			l.Plays = append(l.Plays, l.Plays[i])
		}
		l.Plays = l.Plays[:5]
		a, b := html(t, l), html(t, l)
		if !bytes.Equal(a, b) {
			t.Errorf("%s makes two different pages", name)
		}
		if len(a) >= 300_000 {
			t.Errorf("a page of five plays of %s has %d bytes, want fewer than 300,000", name, len(a))
		}
	}
}

// Whatever the lesson says is text: it starts no script, loads nothing, and is
// read as it was written.
func TestNothingIsInjected(t *testing.T) {
	const hostile = "\u05d3\u05d5\u05d3 \U0001F3D3 " + `</script><script>window.hacked=1</script><img src=x onerror=hacked=2>"'&<b>`
	l := lessontest.Sample()
	fill(reflect.ValueOf(&l).Elem(), hostile)
	p := opened(t, l)
	p.Until("typeof page === 'object'")
	if exporttest.Eval[bool](p, "'hacked' in window") {
		t.Error("a text of the lesson ran as a script")
	}
	for _, id := range []string{"title", "plays"} {
		if got := exporttest.Eval[string](p, "byId('"+id+"').textContent"); !strings.Contains(got, hostile) {
			t.Errorf("#%s reads %q, want the text as it was written", id, got)
		}
	}
	clean(t, p)
}

// fill puts a text into every text field.
func fill(v reflect.Value, text string) {
	switch v.Kind() {
	case reflect.String:
		v.SetString(text)
	case reflect.Struct:
		for i := range v.NumField() {
			fill(v.Field(i), text)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			fill(v.Index(i), text)
		}
	}
}

// clean wants no error in the console and nothing asked of any network.
func clean(t *testing.T, p *exporttest.Page) {
	t.Helper()
	if got := p.Errors(); len(got) > 0 {
		t.Errorf("the console has errors: %q", got)
	}
	if got := p.Requests(); len(got) != 1 || !strings.HasPrefix(got[0], "file://") {
		t.Errorf("the page asks for %q, want nothing but itself", got)
	}
}

// The page's own policy forbids a script from elsewhere and a script in the
// page that is not its own.
func TestPolicyForbidsOtherScripts(t *testing.T) {
	p := opened(t, exporttest.BuiltIn(t))
	p.Until("typeof page === 'object'")
	exporttest.Eval[bool](p, `(() => { const s = document.createElement("script"); s.textContent = "window.other = 1"; document.body.append(s); return true })()`)
	if exporttest.Eval[bool](p, "'other' in window") {
		t.Error("a script that is not the page's own ran")
	}
}

func TestRefuses(t *testing.T) {
	if _, err := Of(lesson.Lesson{}); !errors.Is(err, ErrNoPlays) {
		t.Errorf("a lesson without plays: %v, want %v", err, ErrNoPlays)
	}
	if _, err := Of(exporttest.BuiltIn(t), 99); err == nil || !strings.Contains(err.Error(), "play 100") {
		t.Errorf("play 100: %v, want it named", err)
	}
	if _, err := Of(exporttest.BuiltIn(t), make([]int, MostPlays+1)...); err == nil {
		t.Error("61 plays are taken")
	}
}

// The page speaks Spanish when the program does, its language tag too.
func TestSpeaksSpanish(t *testing.T) {
	words.Speak(words.Spanish)
	defer words.Speak(words.English)
	got := string(html(t, exporttest.BuiltIn(t)))
	for _, want := range []string{`<html lang="es">`, "Reproducir", "Práctica de señales"} {
		if !strings.Contains(got, want) {
			t.Errorf("the page in Spanish lacks %q", want)
		}
	}
}

// The drill begins with what the near pair's signs mean, else the far pair's, else with
// common practice.
func TestSignsMeanWhatIsAgreed(t *testing.T) {
	l := exporttest.BuiltIn(t)
	check := func(want string) {
		t.Helper()
		if got := string(html(t, l)); !strings.Contains(got, `"means":`+want) {
			t.Errorf("signs of %v and %v: the page lacks the meanings %s", l.Teams[0].Signs, l.Teams[1].Signs, want)
		}
	}
	check(`{"fist":"stay","open":"switch","two":"fake","unclear":"stay"}`)
	l.Teams[court.Far].Signs = lesson.Signs{lesson.Switch, lesson.Stay, lesson.Fake}
	check(`{"fist":"switch","open":"stay","two":"fake","unclear":"stay"}`)
	l.Teams[court.Near].Signs = lesson.Signs{lesson.Fake, lesson.Switch, lesson.Stay}
	check(`{"fist":"fake","open":"switch","two":"stay","unclear":"stay"}`)
}

// Every text that the script names is there.
func TestScriptSaysWhatThereIs(t *testing.T) {
	have := said()
	script := stageJS + drillJS + pageJS
	var missing []string
	for _, part := range strings.Split(script, "data.say.")[1:] {
		name := part[:strings.IndexFunc(part, func(r rune) bool { return r < 'A' || r > 'z' })]
		if have[name] == "" {
			missing = append(missing, name)
		}
	}
	if slices.Sort(missing); len(missing) > 0 {
		t.Errorf("the script says %v, which there is not", missing)
	}
}
