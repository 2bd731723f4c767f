package words

import (
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/lesson"
)

// Titles and answers that the program writes are in the language spoken; in English
// they are those of the model.
func TestWrittenInWords(t *testing.T) {
	l := lesson.Lesson{}
	l.Teams[court.Near] = lesson.Team{Starter: 1, Players: [2]lesson.Player{{Name: "Ivo"}, {Name: "Mara"}}}
	state, err := l.Settings().Start()
	if err != nil {
		t.Fatal(err)
	}
	w, err := formation.Write(formation.Situation{Lesson: l, State: state, Team: court.Far}, lesson.Switched)
	if err != nil {
		t.Fatal(err)
	}
	siblings, err := w.WhatIf()
	if err != nil {
		t.Fatal(err)
	}
	pairs, err := w.Pairs()
	if err != nil || len(siblings) == 0 || len(pairs) == 0 {
		t.Fatalf("%d siblings, %d mistakes: %v", len(siblings), len(pairs), err)
	}
	said := func() []string {
		e := Entitled(w)
		pair := EntitledPair(e, pairs[0])
		texts := []string{e.Play.Title, EntitledSibling(e, siblings[0]).Title, pair[0].Title, pair[1].Title, CarriedTitle(l, state)}
		for _, c := range e.Play.Cues {
			texts = append(texts, c.Text)
		}
		return texts
	}
	model := []string{w.Play.Title, siblings[0].Play.Title, pairs[0].Was.Title, pairs[0].Should.Title, "0-0-2: Ivo serves from the right", "yes", "0-0-2"}
	if got := said(); !slices.Equal(got, model) {
		t.Errorf("in English: %q, want %q", got, model)
	}
	Speak(Spanish)
	defer Speak(English)
	title := "0-0-2: cambiar, recibe far1 desde la derecha"
	want := []string{title, title + ": " + Name(siblings[0].Change), title + ", como fue: " + Name(pairs[0].Mistake), title + ", como debe ser", "0-0-2: saca Ivo desde la derecha", "sí", "0-0-2"}
	if got := said(); !slices.Equal(got, want) {
		t.Errorf("in Spanish: %q, want %q", got, want)
	}
	if w.Play.Cues[0].Text != "yes" {
		t.Error("the written play itself has been changed")
	}
}
