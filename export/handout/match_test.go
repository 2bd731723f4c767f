package handout

import (
	"fmt"
	"image"
	"math"
	"slices"
	"strings"
	"testing"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/roster"
)

// pairsOf are invented pairs whose first player wants the left and second the right.
func pairsOf(n int) []roster.Pair {
	all := make([]roster.Pair, n)
	for i := range all {
		all[i] = roster.Pair{Name: fmt.Sprintf("Pair %d", i+1), Players: [2]lesson.Player{
			{Name: fmt.Sprintf("Ada%d", i+1), Serving: lesson.WantLeft, Receiving: lesson.WantLeft},
			{Name: fmt.Sprintf("Bo%d", i+1), Serving: lesson.WantRight, Receiving: lesson.WantRight},
		}}
	}
	return all
}

// In side-out scoring the starting server stands right at an even own score and
// left at an odd one (USA Pickleball Official Rulebook 2026; a rules primer's
// worked ladder agrees): so with the starter wanted left the pair stacks at even
// and stays at odd, serving and receiving, whoever of the two is concerned.
func TestCardSaysWhoStandsWhere(t *testing.T) {
	pdf, r := write(t, demo(t), "match", &Options{Pairs: pairsOf(1)})
	got := text(t, pdf)
	for _, want := range []string{
		"We serve Pair 1", "We receive Pair 1",
		"even Ada1 serves right: stack then Ada1 left, Bo1 right", "even Bo1 serves left: stack then Ada1 left, Bo1 right",
		"odd Ada1 serves left: stay then Ada1 left, Bo1 right", "odd Bo1 serves right: stay then Ada1 left, Bo1 right",
		"even Ada1 receives right: stack", "even Bo1 receives left: stack", "odd Ada1 receives left: stay", "odd Bo1 receives right: stay",
		"Fist: stay. Open hand: switch. Unsure: stay.", "Ada1 starts; if Bo1 does, swap even and odd.",
	} {
		if !strings.Contains(unlettered(got, "A", "B"), want) {
			t.Errorf("the card lacks %q:\n%s", want, got)
		}
	}
	if len(r.Notes) > 0 {
		t.Errorf("notes %q", r.Notes)
	}
}

// A pair that means other things by its signs has them on its card, in either language.
func TestCardSaysWhatSignsMean(t *testing.T) {
	pairs := pairsOf(1)
	pairs[0].Signs = lesson.Signs{lesson.Fake, lesson.Switch, lesson.Stay}
	pdf, r := write(t, demo(t), "match", &Options{Pairs: pairs})
	if got, want := text(t, pdf), "Two fingers: stay. Open hand: switch. Unsure: stay."; !strings.Contains(got, want) || len(r.Notes) > 0 {
		t.Errorf("the card lacks %q, notes %q:\n%s", want, r.Notes, got)
	}
}

// unlettered is a text without the initials of the small pictures.
func unlettered(s string, initials ...string) string {
	for _, i := range initials {
		s = strings.ReplaceAll(s, " "+i+" ", " ")
		s = strings.ReplaceAll(s, " "+i+" ", " ")
	}
	return s
}

// The lesson's own pairs have two cards each, for both partners; of the far team
// the starter is its own.
func TestCardsOfTheLesson(t *testing.T) {
	l := demo(t)
	l.Teams[1].Starter = 2
	pdf, r := write(t, l, "match", nil)
	got := text(t, pdf)
	if n := strings.Count(got, "Petra starts; if Marlo does, swap even and odd."); n != 2 || r.Pages != 1 {
		t.Errorf("%d cards of Petra's, on %d pages, want 2 on 1", n, r.Pages)
	}
}

// Ten pairs are on three pages, each pair once on both faces.
func TestCardsOfARoster(t *testing.T) {
	done := 0
	pdf, r := write(t, demo(t), "match", &Options{Pairs: pairsOf(10), Progress: func(n, _ int) { done = n }})
	if r.Pages != 3 || done != 10 {
		t.Errorf("%d pages and progress to %d, want 3 and 10", r.Pages, done)
	}
	got := text(t, pdf) + " "
	for i := range 10 {
		for _, face := range []string{"We serve", "We receive"} {
			if n := strings.Count(got, fmt.Sprintf("%s Pair %d ", face, i+1)); n != 1 {
				t.Errorf("pair %d has %d faces %q, want 1", i+1, n, face)
			}
		}
	}
}

// Partners who want one side have no plan: their card and a note say so, and
// the others are printed.
func TestCardOfAClash(t *testing.T) {
	pairs := pairsOf(3)
	pairs[1].Players[0].Serving = lesson.WantRight
	pdf, r := write(t, demo(t), "match", &Options{Pairs: pairs})
	want := "Pair 2: both partners want the same side."
	got := text(t, pdf)
	if len(r.Notes) != 1 || !strings.HasPrefix(r.Notes[0], want) || !strings.Contains(got, want) || !strings.Contains(got, "We serve Pair 3") {
		t.Errorf("notes %q, want %q, and pair 3's card:\n%s", r.Notes, want, got)
	}
}

// In rally scoring with a swap on the own serve a player may serve at either
// parity: all situations stand on the card, without pictures.
func TestCardOfEveryFormat(t *testing.T) {
	for _, f := range game.Formats {
		l := demo(t)
		l.Scoring.Format = f
		pdf, r := write(t, l, "match", &Options{Pairs: pairsOf(1)})
		got := text(t, pdf)
		if len(r.Notes) > 0 || !strings.Contains(got, "Ada1 serves") || !strings.Contains(got, "Bo1 receives") {
			t.Errorf("%v: notes %q:\n%s", f, r.Notes, got)
		}
		if stacks := strings.Contains(got, ": stack"); stacks != f.SwapsSides() {
			t.Errorf("%v: stacks on the card: %v, and sides are swapped: %v", f, stacks, f.SwapsSides())
		}
		checkApart(t, boxes(t, pdf))
	}
}

// A card folds to a visiting card: 89 mm wide, 97 mm high and a fold half way
// on A4. Found in the picture that Poppler draws: the lines that run across the
// whole card. A dash of the fold covers more than half of its line.
func TestCardSize(t *testing.T) {
	pdf, _ := write(t, demo(t), "match", &Options{Pairs: pairsOf(4)})
	const dpi = 254 // ten dots to the millimetre
	m := drawn(t, pdf, dpi)
	solid, dashed := across(m, 2100, 180*10)
	if len(solid) != 5 {
		t.Fatalf("lines across at %v, want the head's, three of cards, the foot's", solid)
	}
	cards := solid[1:4]
	dashed = slices.DeleteFunc(dashed, func(y int) bool { return y < cards[0] || y > cards[2] })
	if len(dashed) != 2 {
		t.Fatalf("folds at %v, want one in each card", dashed)
	}
	for i := range 2 {
		height, fold := float64(cards[i+1]-cards[i])/10, float64(dashed[i]-cards[i])/10
		if math.Abs(height-97) > 0.3 || math.Abs(fold-48.5) > 0.3 {
			t.Errorf("card %d is %.1f mm high and folds at %.1f, want 97 and 48.5", i+1, height, fold)
		}
	}
}

// across are the rows of a picture in which dark dots run over most of the
// width between the cards' edges: solid over almost all, dashed over half of it.
func across(m image.Image, width, card int) (solid, dashed []int) {
	left := (width - card) / 2
	var lastSolid, lastDashed = -100, -100
	for y := range m.Bounds().Dy() {
		dark := 0
		for x := left + 40; x < left+card-40; x++ {
			if r, _, _, _ := m.At(x, y).RGBA(); r>>8 < 0xB0 {
				dark++
			}
		}
		switch share := float64(dark) / float64(card-80); {
		case share > 0.985: // lines inside a card leave its edges free
			if y-lastSolid > 10 {
				solid = append(solid, y)
			}
			lastSolid = y
		case share > 0.5 && share < 0.75:
			if y-lastDashed > 10 {
				dashed = append(dashed, y)
			}
			lastDashed = y
		}
	}
	return solid, dashed
}
