package main

import (
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
)

// crossingLesson has the receivers change sides after a low return: the returner
// is late and passes close behind the partner.
func crossingLesson(t *testing.T) string {
	t.Helper()
	contact := func(shot int) lesson.Anchor { return lesson.At(lesson.ContactOf(shot)) }
	return lessonFile(t, lesson.Lesson{Plays: []lesson.Play{{
		Situation: lesson.Situation{Call: game.Call{Server: 2}},
		Lead:      1.5,
		Shots: []lesson.Shot{
			{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(7.5)},
			{By: game.Far1, Aim: court.Pt(-4, -18), Intent: lesson.Apex(5)},
			{By: game.Near2, Aim: court.Pt(-3, 11), Intent: lesson.Apex(5)},
		},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(3.5, -22.9)}},
			{{Place: court.Pt(-5, -23)}},
			{{Place: court.Pt(-5, 25), Facing: 180}, {At: contact(2), Place: court.Pt(5, 9), Facing: 180}},
			{{Place: court.Pt(5, 12), Facing: 180}, {At: contact(2), Place: court.Pt(-5, 18), Facing: 180, Leave: new(contact(1))}},
		},
	}}})
}

func TestCheckListsLateAndCrossingFindings(t *testing.T) {
	got := checkJSON(t, crossingLesson(t), exitOK).Plays[0].Findings
	for _, want := range []struct {
		id       finding.ID
		severity string
	}{{finding.LateArrival, "late"}, {finding.NotSet, "late"}, {finding.CloseCrossing, "caution"}, {finding.RunsBackward, "caution"}} {
		i := slices.IndexFunc(got, func(f checkFinding) bool { return f.ID == want.id })
		if i < 0 || got[i].Severity != want.severity || got[i].Text == "" {
			t.Errorf("check finds %+v, want %s, %s, among it", got, want.id, want.severity)
		}
	}
}
