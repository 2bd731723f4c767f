package film_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/film"
	"homeside/canvas/look"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/reel"
)

// Words and logo stay in the safe part at every moment, whatever the size, and no
// words are written over others.
func TestWordsStayInTheSafePart(t *testing.T) {
	for name, f := range reels(t) {
		for _, size := range sizes {
			safe := film.Safe(size[0], size[1])
			seen := 0
			for _, at := range moments(f, 12) {
				boxes := onPaper(f.Moving(size[0], size[1], at))
				seen += len(boxes)
				for id, box := range boxes {
					const px = 0.5
					if box[0].X < safe.Min.X-px || box[0].Y < safe.Min.Y-px || box[1].X > safe.Max.X+px || box[1].Y > safe.Max.Y+px {
						t.Errorf("%s at %dx%d, %.1f s: %s from %.0f to %.0f, want within %.0f to %.0f", name, size[0], size[1], float64(at), id, box[0], box[1], safe.Min, safe.Max)
					}
					for other, b := range boxes {
						if id < other && overlap(box, b) {
							t.Errorf("%s at %dx%d, %.1f s: %s and %s overlap", name, size[0], size[1], float64(at), id, other)
						}
					}
				}
			}
			if seen < 13 {
				t.Errorf("%s at %dx%d: only %d words and logos in 13 moments", name, size[0], size[1], seen)
			}
		}
	}
}

// Wherever the logo stands, and with two captions at once, nothing is written over
// anything, and what a player answers to a signal is not behind the captions.
func TestNothingIsWrittenOverAnything(t *testing.T) {
	l := builtIn(t)
	signalled := l.Plays[0]
	signalled.Cues = append(slices.Clone(signalled.Cues), lesson.Cue{Kind: lesson.Signal, Span: lesson.Span{From: lesson.Anchor{Offset: -1.2}, To: lesson.Anchor{Offset: 3}}, Text: "yes", Giver: game.Near2, Reader: game.Near1, Meaning: lesson.Switch})
	l.Plays[0] = signalled
	for _, corner := range lesson.Corners {
		r := lesson.Reel{Logo: corner, Title: lesson.Card{Heading: strings.Repeat("A long heading ", 6), Text: strings.Repeat("with a long text ", 12)}}
		for beside := range 3 {
			r.Takes = append(r.Takes, lesson.Take{Play: 1, Beside: beside, Speed: 0.5, Caption: "What the take says, which is more than a line on a phone"})
		}
		f := film.Of(l, reel.Solve(l, r))
		for _, size := range sizes[:4] {
			for _, at := range moments(f, 14) {
				s := f.Moving(size[0], size[1], at)
				for pair := range overlapping(s) {
					t.Errorf("logo %v at %dx%d, %.1f s: %s", corner, size[0], size[1], float64(at), pair)
				}
			}
		}
	}
}

// overlapping are what stands over what of words on paper, logo, and words of signals.
func overlapping(s *canvas.Scene) map[string]bool {
	paper, all, found := onPaper(s), extentsOf(s), map[string]bool{}
	for id, box := range paper {
		for other, b := range all {
			_, too := paper[other]
			if (too && id < other || strings.Contains(other, "/signal.")) && overlap(box, b) {
				found[id+" and "+other] = true
			}
		}
	}
	return found
}

// onPaper are the words and the logo that do not stand on a court.
func onPaper(s *canvas.Scene) extents {
	all := extentsOf(s)
	for id := range all {
		if panel, _, _ := strings.Cut(id, "/"); !slices.Contains([]string{"card", "caption", "labels", "speed", "logo"}, panel) {
			delete(all, id)
		}
	}
	return all
}

func overlap(a, b [2]canvas.Px) bool {
	const px = 0.5
	return a[0].X < b[1].X-px && b[0].X < a[1].X-px && a[0].Y < b[1].Y-px && b[0].Y < a[1].Y-px
}

// A capital letter of a caption is seen under 16 minutes of arc and more (ISO
// 9241-303, from memory) on a phone of 65 x 141 mm, held upright at 322 mm
// (Bababekova et al. 2011, from memory), for every shape of clip there is a
// preset for. The height of a capital is that of the font's H.
func TestCaptionsCanBeReadOnAPhone(t *testing.T) {
	for _, size := range [][2]int{{1080, 1920}, {720, 1280}, {1920, 1080}, {1280, 720}, {3840, 2160}, {1080, 1080}, {1080, 1350}} {
		w, h := float64(size[0]), float64(size[1])
		mm := math.Min(65/w, 141/h) * capitalOf(film.CaptionEm(size[0], size[1]))
		if arc := math.Atan(mm/322) * 180 / math.Pi * 60; !(arc >= 16 && arc <= 24) {
			t.Errorf("captions at %dx%d: capitals of %.2f mm, %.1f minutes of arc; want 16 to 24", size[0], size[1], mm, arc)
		}
	}
}

// capitalOf is the height of an H in pixels.
func capitalOf(em float64) float64 {
	line, _ := look.Glyphs("H", true)
	outline, err := look.OutlineAt(line[0].Font, line[0].Index, em)
	if err != nil {
		return math.NaN()
	}
	box := outline.Bounds()
	return float64(box.Max.Y-box.Min.Y) / 64
}

// Frames of clips are laid out alike at every size of a shape.
func TestSafePartIsAShareOfThePicture(t *testing.T) {
	for _, c := range []struct {
		w, h                     int
		left, top, right, bottom float64
	}{
		{1920, 1080, 0.05, 0.05, 0.95, 0.95}, {3840, 2160, 0.05, 0.05, 0.95, 0.95}, {1080, 1080, 0.05, 0.05, 0.95, 0.95},
		{1080, 1350, 0.05, 0.05, 0.95, 0.95}, {1080, 1920, 0.05, 0.08, 0.95, 0.84}, {720, 1280, 0.05, 0.08, 0.95, 0.84},
	} {
		a, w, h := film.Safe(c.w, c.h), float64(c.w), float64(c.h)
		for i, d := range []float64{a.Min.X/w - c.left, a.Min.Y/h - c.top, a.Max.X/w - c.right, a.Max.Y/h - c.bottom} {
			if math.Abs(d) > 1e-9 {
				t.Errorf("Safe(%d, %d) = %v: side %d is %v off", c.w, c.h, a, i, d)
			}
		}
	}
}
