package compose

import (
	"slices"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
)

// gripsOf are the IDs of what Grips adds to a moment, in order.
func gripsOf(t *testing.T, p Picture, h Grips) []string {
	t.Helper()
	s := &canvas.Scene{Width: 800, Height: 1200, PxPerPoint: 1, Panels: []canvas.Panel{{Name: CourtPanel, View: Bare(800, 1200, canvas.Upright, court.Surface, 1).Court}}}
	p.Grips(s, h, 0)
	var ids []string
	for _, shape := range s.Panels[0].Shapes {
		ids = append(ids, shape.ID)
	}
	checkIDs(t, s)
	return ids
}

// Handles appear for what is picked and for what is under the pointer, and for
// nothing else.
func TestGripsForWhatIsPicked(t *testing.T) {
	l := invented()
	l.Plays[0].Marks = append(l.Plays[0].Marks, lesson.Mark{Kind: lesson.ZoneMark, Place: court.Pt(1, 1), Tip: court.Pt(3, 3)})
	l.Plays[0].Tracks[game.Far1] = []lesson.Keyframe{{Place: court.Pt(6, 24), Facing: 180}} // far from the return
	p := pictureOf(t, l, 0, canvas.Upright)
	near2 := edit.Part{Kind: edit.PlayerPart, Player: game.Near2}
	for _, c := range []struct {
		name string
		h    Grips
		want string
	}{
		{"nothing", Grips{}, ""},
		{"a player", Grips{Picked: []edit.Part{near2}}, "player.near2.picked grip.face.near2.0 grip.keyframe.near2.1 grip.bend.near2.1"},
		{"a player under the pointer", Grips{Hover: near2}, "player.near2.picked grip.face.near2.0"},
		{"both", Grips{Picked: []edit.Part{near2}, Hover: near2}, "player.near2.picked grip.face.near2.0 grip.keyframe.near2.1 grip.bend.near2.1"},
		{"a run under the pointer", Grips{Hover: edit.Part{Kind: edit.RunPart, Player: game.Near2, Index: 1}}, "glow.near2.1 grip.bend.near2.1"},
		{"a keyframe", Grips{Picked: []edit.Part{{Kind: edit.KeyframePart, Player: game.Near2, Index: 1}}}, "grip.bend.near2.1 grip.keyframe.near2.1"},
		{"a hitter's implied place", Grips{Picked: []edit.Part{{Kind: edit.PlayerPart, Player: game.Far1}}}, "player.far1.picked grip.face.far1.0 grip.keyframe.far1.-2 grip.bend.far1.-2"},
		{"an aim", Grips{Hover: edit.Part{Kind: edit.AimPart, Index: 1}}, "grip.aim.near1.1"},
		{"a text", Grips{Picked: []edit.Part{{Kind: edit.MarkPart}}}, "outline.0"},
		{"a zone", Grips{Picked: []edit.Part{{Kind: edit.MarkPart, Index: 2}}}, "outline.2 grip.tip.near1.2"},
		{"a band and a guide", Grips{Band: &court.Rect{Max: court.Pt(1, 1)}, Guides: []Guide{{To: court.Pt(1, 1)}}}, "guide.0 band"},
	} {
		want := strings.Fields(c.want)
		got := gripsOf(t, p, c.h)
		slices.Sort(got)
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s: the handles are %v, want %v", c.name, got, want)
		}
	}
}

// The ID of every handle and of every thing drawn leads back to its part.
func TestPartOfShape(t *testing.T) {
	p := pictureOf(t, invented(), 0, canvas.Upright)
	for id, want := range map[string]edit.Part{
		"player.far2":           {Kind: edit.PlayerPart, Player: game.Far2},
		"run.near2.0":           {Kind: edit.RunPart, Player: game.Near2, Index: 1},
		"run.far1.0":            {Kind: edit.RunPart, Player: game.Far1, Index: rally.ImpliedAt(1)},
		"mark.1":                {Kind: edit.MarkPart, Index: 1},
		"mark.0.text.plate":     {Kind: edit.MarkPart},
		"bounce.return":         {Kind: edit.AimPart, Index: 1},
		"grip.keyframe.near2.1": {Kind: edit.KeyframePart, Player: game.Near2, Index: 1},
		"grip.bend.far1.-2":     {Kind: edit.BendPart, Player: game.Far1, Index: -2},
		"grip.face.near1.0":     {Kind: edit.FacingPart},
		"grip.aim.near1.1":      {Kind: edit.AimPart, Index: 1},
		"grip.tip.near1.3":      {Kind: edit.TipPart, Index: 3},
		"player.far2.paddle":    {}, "run.near2.0.ticks": {}, "run.near2.9": {}, "kitchen": {}, "ball": {}, "mark": {}, "grip.no.near1.1": {}, "": {},
	} {
		if got, ok := p.PartOfShape(id); got != want && ok || ok != (want != edit.Part{}) {
			t.Errorf("PartOfShape(%q) = %+v, %v, want %+v", id, got, ok, want)
		}
	}
}

// Every kind of mark is drawn, from its place to its tip, and says its length or
// its text.
func TestMarksOfEveryKind(t *testing.T) {
	for _, c := range []struct {
		kind  lesson.MarkKind
		shape bool
		text  string
	}{
		{lesson.TextMark, false, "here"}, {lesson.ArrowMark, true, "here"}, {lesson.ObstacleMark, true, "here"}, {lesson.ZoneMark, true, "here"},
		{lesson.ConeMark, true, "here"}, {lesson.MeasureMark, true, "5 ft here"}, {lesson.HighlightMark, true, "here"},
	} {
		l := invented()
		l.Plays[0].Marks = []lesson.Mark{{Kind: c.kind, Span: lesson.Always(), Place: court.Pt(2, -12), Tip: court.Pt(5, -16), Text: "here"}}
		s := pictureOf(t, l, 0, canvas.Upright).Moving(360, 640, 0)
		checkIDs(t, s)
		shapes := shapesOf(s)
		shape, drawn := shapes["court/mark.0"]
		if drawn != c.shape || drawn && shape.Label != c.kind.String()+": here" {
			t.Errorf("%v: a sign is drawn: %v, called %q; want %v", c.kind, drawn, shape.Label, c.shape)
		}
		if got := shapes["court/mark.0.text"].Label; got != c.text {
			t.Errorf("%v says %q, want %q", c.kind, got, c.text)
		}
	}
}

// Read-outs stay inside the picture wherever the place is.
func TestReadOutsStayInside(t *testing.T) {
	p := pictureOf(t, invented(), 0, canvas.Upright)
	for _, at := range []court.Point{court.Pt(-15, -30), court.Pt(15, 30), court.Pt(-15, 30), court.Pt(0, 0), court.Pt(15, -30)} {
		for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
			l := ForWindow(700, 600, turn, court.Surface, 12, 1.25)
			s := &canvas.Scene{Width: 700, Height: 600, PxPerPoint: 1.25, Panels: []canvas.Panel{{Name: CourtPanel, View: l.Court}}}
			p.MeasureAt(s, court.Near, at)
			for _, name := range []string{"measure.across.text.plate", "measure.along.text.plate"} {
				if b := extentsOf(s)["court/"+name]; b.width() < 1 || !b.within(700, 600) {
					t.Errorf("%v, dragged to %v: %s is at %+v, outside 700 x 600", turn, at, name, b)
				}
			}
		}
	}
}
