package app

import (
	"strings"

	"homeside/words"
)

// otherWords are words that a coach looks for and no menu says, by the command that is
// meant: found in the search for commands, shown nowhere.
var otherWords = []struct{ label, also string }{
	{words.Text("Start page"), words.Text("home built-in lessons examples")},
	{words.Text("Open…"), words.Text("load file")},
	{words.Text("Export…"), words.Text("clip video film movie picture image photo still gif mp4 pdf captions phone send share")},
	{words.Text("Handout…"), words.Text("print paper sheet storyboard cones cards")},
	{words.Text("Pairs…"), words.Text("roster players names partners")},
	{words.Text("Quit"), words.Text("exit close end")},
	{words.Text("Undo"), words.Text("step back mistake")},
	{words.Text("Redo"), words.Text("step forward again")},
	{words.Text("Delete what is picked"), words.Text("remove erase")},
	{words.Text("The lesson: scoring, ball, court…"), words.Text("score side-out rally teams names temperature altitude indoor outdoor")},
	{words.Text("Settings…"), words.Text("language letters dark light colours measures metres options")},
	{words.Text("New play from the score…"), words.Text("stack switch stay half full three-quarter formation signal add")},
	{words.Text("Duplicate this play"), words.Text("copy")},
	{words.Text("Title, notes and tags…"), words.Text("rename name describe")},
	{words.Text("Import plays…"), words.Text("merge join another lesson")},
	{words.Text("Mirror left and right (even, odd)"), words.Text("flip turn")},
	{words.Text("What if…"), words.Text("score stack switch server change")},
	{words.Text("As it was, as it should be…"), words.Text("mistake error wrong fix")},
	{words.Text("Compare with another play…"), words.Text("beside difference two")},
	{words.Text("Match plan…"), words.Text("score stack switch starter starting server game pairs")},
	{words.Text("Reels…"), words.Text("clip video film movie cut takes slow motion logo")},
	{words.Text("Before you run it…"), words.Text("caution warning safety injury")},
	{words.Text("Add a caption here…"), words.Text("text subtitle words")},
	{words.Text("Add a signal here…"), words.Text("stack switch stay fake poach hand")},
	{words.Text("Loop"), words.Text("repeat")},
	{words.Text("Present, full screen"), words.Text("show group slides projector television")},
	{words.Text("Rehearse on court, full screen"), words.Text("practice drill walk train score signals")},
	{words.Text("A photo under the court…"), words.Text("picture image camera video")},
	{words.Text("Court covered"), words.Text("gap open reach")},
	{words.Text("Keys…"), words.Text("shortcuts keyboard help")},
	{words.Text("Guided first play"), words.Text("help tour learn begin")},
}

// also are the other words that a command is found by.
func (c command) also() string {
	for _, o := range otherWords {
		if more, own := strings.CutPrefix(c.item.Label, words.Said(o.label)); own && (more == "" || strings.HasPrefix(more, ": ") || strings.HasPrefix(more, " (")) {
			return words.Said(o.also)
		}
	}
	return ""
}
