package edit_test

import (
	"reflect"
	"testing"

	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/units"
)

// Every change of a time gives a new play and leaves the old one as it was.
func TestTimingLeavesTheOldPlay(t *testing.T) {
	sample := func() lesson.Play { return lessontest.Sample().Plays[0] }
	at := lesson.Anchor{Event: lesson.ContactOf(0), Offset: 0.7}
	last := len(sample().Tracks[game.Near1]) - 1
	cue := lesson.Cue{Text: "look up", Span: lesson.Span{To: at}}
	for name, c := range map[string]struct {
		change func(lesson.Play) lesson.Play
		got    func(lesson.Play) any
		want   any
	}{
		"Arrive":         {func(p lesson.Play) lesson.Play { return edit.Arrive(p, game.Near1, last, at) }, func(p lesson.Play) any { return p.Tracks[game.Near1][last].At }, at},
		"Leave":          {func(p lesson.Play) lesson.Play { return edit.Leave(p, game.Near1, last, &at) }, func(p lesson.Play) any { return *p.Tracks[game.Near1][last].Leave }, at},
		"Leave at once":  {func(p lesson.Play) lesson.Play { return edit.Leave(p, game.Near1, last, nil) }, func(p lesson.Play) any { return p.Tracks[game.Near1][last].Leave == nil }, true},
		"TakeTime":       {func(p lesson.Play) lesson.Play { return edit.TakeTime(p, 0, 1.2) }, func(p lesson.Play) any { return p.Shots[0].Intent }, lesson.Time(1.2)},
		"StartAt":        {func(p lesson.Play) lesson.Play { return edit.StartAt(p, 4) }, func(p lesson.Play) any { return p.Lead }, units.Seconds(4)},
		"AddCue":         {func(p lesson.Play) lesson.Play { return edit.AddCue(p, cue) }, func(p lesson.Play) any { return p.Cues[len(p.Cues)-1] }, cue},
		"ReplaceCue":     {func(p lesson.Play) lesson.Play { return edit.ReplaceCue(p, 0, cue) }, func(p lesson.Play) any { return p.Cues[0] }, cue},
		"RemoveCue":      {func(p lesson.Play) lesson.Play { return edit.RemoveCue(p, 0) }, func(p lesson.Play) any { return len(p.Cues) }, len(sample().Cues) - 1},
		"RemoveKeyframe": {func(p lesson.Play) lesson.Play { return edit.RemoveKeyframe(p, game.Near1, last) }, func(p lesson.Play) any { return len(p.Tracks[game.Near1]) }, last},
	} {
		old := sample()
		changed := c.change(old)
		if got := c.got(changed); !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: got %v, want %v", name, got, c.want)
		}
		if !reflect.DeepEqual(old, sample()) {
			t.Errorf("%s changed the old play", name)
		}
	}
}

// Cues come and go; without any the list is nil, as in a play that never had one.
func TestCuesComeAndGo(t *testing.T) {
	p := edit.AddCue(lesson.Play{}, lesson.Cue{Text: "a"})
	p = edit.AddCue(p, lesson.Cue{Text: "b"})
	if p = edit.RemoveCue(p, 0); len(p.Cues) != 1 || p.Cues[0].Text != "b" {
		t.Errorf("after RemoveCue(0) the cues are %+v, want b", p.Cues)
	}
	if p = edit.RemoveCue(p, 0); p.Cues != nil {
		t.Errorf("without cues the list is %#v, want nil", p.Cues)
	}
}
