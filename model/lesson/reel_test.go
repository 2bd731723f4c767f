package lesson_test

import (
	"strings"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

func TestCardLasts(t *testing.T) {
	for _, c := range []struct {
		card lesson.Card
		want float64
	}{
		{lesson.Card{}, 0},
		{lesson.Card{Length: 5}, 0}, // no words
		{lesson.Card{Heading: "a"}, 2.5},
		{lesson.Card{Text: "a", Length: 1}, 1},
	} {
		if got := float64(c.card.Lasts()); got != c.want {
			t.Errorf("%+v.Lasts() = %v, want %v", c.card, got, c.want)
		}
	}
}

func TestDefaultsOfATake(t *testing.T) {
	if got := (lesson.Take{}); got.Rate() != 1 || got.Times() != 1 || got.Camera.Across() != 22 {
		t.Errorf("an empty take: rate %v, times %v, across %v; want 1, 1, 22 ft", got.Rate(), got.Times(), got.Camera.Across())
	}
	got := lesson.Take{Speed: 0.5, Loops: 3, Camera: lesson.Camera{Width: 12}}
	if got.Rate() != 0.5 || got.Times() != 3 || got.Camera.Across() != 12 {
		t.Errorf("%+v: rate %v, times %v, across %v; want 0.5, 3, 12 ft", got, got.Rate(), got.Times(), got.Camera.Across())
	}
}

func TestLogoSize(t *testing.T) {
	w, h, err := lessontest.SampleLogo().Size()
	if err != nil || w != 2 || h != 1 {
		t.Errorf("Size of the sample's logo = %d x %d, %v; want 2 x 1", w, h, err)
	}
}

// with is the sample's logo with something else written over its bytes at a place.
func with(at int, bytes string) lesson.Logo {
	png := lessontest.SampleLogo().PNG
	return lesson.Logo{PNG: png[:at] + bytes + png[at+len(bytes):]}
}

func TestLogoBounds(t *testing.T) {
	for _, c := range []struct {
		logo lesson.Logo
		want string // "" is good
	}{
		{lesson.Logo{}, ""},
		{lessontest.SampleLogo(), ""},
		{with(16, "\x00\x00\x08\x00\x00\x00\x08\x00"), ""}, // 2048 x 2048
		{with(16, "\x00\x00\x08\x01"), "2049 x 1 px, want sides of 1 to 2048 px"},
		{with(20, "\xff\xff\xff\xff"), "2 x 4294967295 px"},
		{with(16, "\x00\x00\x00\x00"), "0 x 1 px"},
		{with(0, "GIF89a"), "is not a PNG picture"},
		{lesson.Logo{PNG: lessontest.SampleLogo().PNG[:20]}, "is not a PNG picture"},
		{lesson.Logo{PNG: lessontest.SampleLogo().PNG + strings.Repeat("x", lesson.MaxLogo)}, "bytes, want at most 262144"},
	} {
		got := lesson.Validate(lesson.Lesson{Logo: c.logo})
		if c.want == "" && got != nil || c.want != "" && (len(got) != 1 || got[0].Pointer != "/logo/png" || !strings.Contains(got[0].Text, c.want)) {
			t.Errorf("Validate with a logo of %d bytes %q = %v, want %q", len(c.logo.PNG), c.logo.PNG[:min(len(c.logo.PNG), 24)], got, c.want)
		}
	}
}
