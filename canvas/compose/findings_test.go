package compose_test

import (
	"slices"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/units"
)

// marked is the IDs and labels of the findings' marks in a scene.
func marked(s *canvas.Scene) (ids []string, labels []string) {
	for _, panel := range s.Panels {
		for _, shape := range panel.Shapes {
			if strings.HasPrefix(shape.ID, "finding.") && shape.Text == nil {
				ids, labels = append(ids, shape.ID), append(labels, shape.Label)
			}
		}
	}
	return ids, labels
}

// Faults and cautions are marked near their moment with their number in the
// list; those of the serve also before it. Advice is not marked.
func TestFindingsAreMarkedNearTheirMoment(t *testing.T) {
	r, err := rally.Solve(lessontest.Sample(), 0)
	if err != nil {
		t.Fatal(err)
	}
	p := compose.Of(r, court.Surface, canvas.Upright)
	p.Findings = []finding.Finding{
		finding.New(finding.FootOnCourt, 0, court.Pt(3, -21)),
		finding.New(finding.StackLegal, 0, court.Pt(3, -21)),
		finding.New(finding.OffSurface, 2, court.Pt(16, 0)),
	}
	for _, c := range []struct {
		t    units.Seconds
		want []string
	}{{-1.5, []string{"finding.1"}}, {0, []string{"finding.1"}}, {1, nil}, {1.5, []string{"finding.3"}}, {2.9, nil}} {
		if got, _ := marked(p.Moving(720, 1280, c.t)); !slices.Equal(got, c.want) {
			t.Errorf("at %v the marks are %v, want %v", float64(c.t), got, c.want)
		}
	}
	if _, labels := marked(p.Moving(720, 1280, 0)); !strings.HasPrefix(labels[0], "Fault: ") {
		t.Errorf("the mark says %q, want the fault in words", labels[0])
	}
	p.Findings = nil
	if got, _ := marked(p.Moving(720, 1280, 0)); got != nil {
		t.Errorf("without findings the marks are %v, want none", got)
	}
}

// Two findings at one place stand side by side.
func TestFindingsAtOnePlaceStandApart(t *testing.T) {
	r, err := rally.Solve(lessontest.Sample(), 0)
	if err != nil {
		t.Fatal(err)
	}
	p := compose.Of(r, court.Surface, canvas.Upright)
	at := court.Pt(3, -21)
	p.Findings = []finding.Finding{finding.New(finding.WrongServer, 0, at), finding.New(finding.FootOnCourt, 0, at)}
	var starts []canvas.Pos
	for _, panel := range p.Moving(720, 1280, 0).Panels {
		for _, shape := range panel.Shapes {
			if strings.HasPrefix(shape.ID, "finding.") && shape.Text == nil {
				starts = append(starts, shape.Path[0].P[0])
			}
		}
	}
	if len(starts) != 2 || starts[1].Right-starts[0].Right < 14 {
		t.Errorf("two findings at one place are marked at %+v, want two at least 14 points apart", starts)
	}
}
