package edit_test

import (
	"bytes"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"hash/fnv"
	"math/rand/v2"
	"os"
	"reflect"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
	"homeside/model/units"
)

// randomEdits is how many edits the long walk makes.
const randomEdits = 10_000

// Whatever is done to a lesson, it stays sound; undoing all of it gives what was
// there, redoing all of it what had become of it, and a file gives that back.
func TestTenThousandEdits(t *testing.T) {
	d := newDraws(20260401)
	h := edit.Begin(lessontest.Sample())
	names := editNames()
	used := map[string]int{}
	marks := map[int]uint64{0: fingerprint(t, h.Lesson())}
	for i := 1; i <= randomEdits; i++ {
		name := names[d.IntN(len(names))]
		l, ok := edits[name](d, h.Lesson())
		if !ok {
			l = h.Lesson() // the lesson has nothing to do it to: a step that changes nothing
		} else {
			used[name]++
		}
		if bad := lesson.Validate(l); bad != nil {
			t.Fatalf("edit %d, %s, gives a lesson out of bounds: %v", i, name, bad[0])
		}
		h = h.Do(name, l)
		if i%500 == 0 {
			marks[i] = fingerprint(t, l)
		}
	}
	for _, name := range names {
		if used[name] < 20 {
			t.Errorf("%s was done %d times in %d edits: the walk does not try it", name, used[name], randomEdits)
		}
	}
	last := h.Lesson()
	h = walk(t, h, randomEdits, -1, edit.History.Undo, marks)
	if got := h.Lesson(); !reflect.DeepEqual(got, lessontest.Sample()) {
		t.Errorf("after undoing %d edits the lesson is %+v, want the one at the beginning", randomEdits, got)
	}
	h = walk(t, h, 0, 1, edit.History.Redo, marks)
	if got := h.Lesson(); !reflect.DeepEqual(got, last) {
		t.Errorf("after redoing %d edits the lesson is another than before", randomEdits)
	}
	var file bytes.Buffer
	if err := lessonfile.Write(&file, last); err != nil {
		t.Fatalf("Write = %v", err)
	}
	again, err := lessonfile.Read(&file)
	if at := difference(reflect.ValueOf(withoutEmpty(again)), reflect.ValueOf(withoutEmpty(last)), "lesson"); err != nil || at != "" {
		t.Errorf("read back (%v) the lesson differs from the one written: %s", err, at)
	}
}

// difference is where two values of a type first differ and how, "" if nowhere.
func difference(got, want reflect.Value, at string) string {
	if reflect.DeepEqual(got.Interface(), want.Interface()) {
		return ""
	}
	switch got.Kind() {
	case reflect.Struct:
		for i := range got.NumField() {
			if d := difference(got.Field(i), want.Field(i), at+"."+got.Type().Field(i).Name); d != "" {
				return d
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range min(got.Len(), want.Len()) {
			if d := difference(got.Index(i), want.Index(i), fmt.Sprintf("%s[%d]", at, i)); d != "" {
				return d
			}
		}
	case reflect.Pointer:
		if !got.IsNil() && !want.IsNil() {
			return difference(got.Elem(), want.Elem(), at)
		}
	}
	return fmt.Sprintf("%s is %+v, want %+v", at, got, want)
}

// walk goes back or on through all steps and compares where marks were set.
func walk(t *testing.T, h edit.History, from, by int, step func(edit.History) edit.History, marks map[int]uint64) edit.History {
	t.Helper()
	for i := from + by; i >= 0 && i <= randomEdits; i += by {
		h = step(h)
		if want, ok := marks[i]; ok && fingerprint(t, h.Lesson()) != want {
			t.Fatalf("after %d edits, come to by undo and redo, the lesson is another than it was", i)
		}
	}
	return h
}

// fingerprint tells lessons apart by their files.
func fingerprint(t *testing.T, l lesson.Lesson) uint64 {
	t.Helper()
	sum := fnv.New64a()
	if err := lessonfile.Write(sum, l); err != nil {
		t.Fatalf("Write = %v", err)
	}
	return sum.Sum64()
}

// withoutEmpty is a lesson with its empty lists nil, as a file gives them.
func withoutEmpty(l lesson.Lesson) lesson.Lesson {
	v := reflect.ValueOf(&l).Elem()
	nilEmpty(v)
	return l
}

func nilEmpty(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			nilEmpty(v.Field(i))
		}
	case reflect.Slice, reflect.Array:
		if v.Kind() == reflect.Slice && v.Len() == 0 {
			v.SetZero()
			return
		}
		for i := range v.Len() {
			nilEmpty(v.Index(i))
		}
	}
}

// draws are random values out of a lesson's bounds, and often at their edges.
type draws struct {
	*rand.Rand
	plays []lesson.Play
	reels []lesson.Reel
	games []lesson.Match
}

func newDraws(seed uint64) *draws {
	d := &draws{Rand: rand.New(rand.NewPCG(seed, seed))}
	for i := range 30 {
		l := lessontest.Lessons().Example(int(seed) + i)
		d.plays = append(d.plays, l.Plays...)
		d.reels = append(d.reels, l.Reels...)
		d.games = append(d.games, l.Match)
	}
	return d
}

// one is a member of a list.
func one[T any](d *draws, list []T) T { return list[d.IntN(len(list))] }

func (d *draws) point() court.Point {
	far := []units.Feet{12, 30, lesson.MaxCoordinate}[d.IntN(3)]
	return court.Pt(far*units.Feet(2*d.Float64()-1), far*units.Feet(2*d.Float64()-1))
}

// beyond is a point that may lie far outside the bounds, as a hand may ask for.
func (d *draws) beyond() court.Point { return d.point().Times([]float64{1, 1, 3, 1e6}[d.IntN(4)]) }

func (d *draws) player() game.Player { return game.Players[d.IntN(4)] }
func (d *draws) end() court.End      { return court.Ends[d.IntN(2)] }

func (d *draws) anchor(p lesson.Play) lesson.Anchor {
	if d.IntN(5) == 0 {
		return lesson.At(lesson.TheEnd)
	}
	e := lesson.Event{Shot: d.IntN(len(p.Shots)), Moment: lesson.Moment(d.IntN(3))}
	return lesson.Anchor{Event: e, Offset: lesson.MaxOffset * units.Seconds(2*d.Float64()-1)}
}

func (d *draws) span(p lesson.Play) lesson.Span {
	return lesson.Span{From: d.anchor(p), To: d.anchor(p)}
}

func (d *draws) mark(p lesson.Play) lesson.Mark {
	return lesson.Mark{Kind: one(d, lesson.MarkKinds[:]), Span: d.span(p), Place: d.beyond(), Tip: d.beyond(), Text: "here"}
}

func (d *draws) keyframe(p lesson.Play) lesson.Keyframe {
	k := lesson.Keyframe{At: d.anchor(p), Place: d.point(), Facing: units.Degrees(360 * d.Float64()), Through: d.IntN(2) == 0}
	if d.IntN(3) == 0 {
		k.Via, k.Leave = new(d.point()), new(d.anchor(p))
	}
	return k
}

func (d *draws) cue(p lesson.Play) lesson.Cue {
	by := d.player()
	if d.IntN(2) == 0 {
		return lesson.Cue{Span: d.span(p), Text: "now"}
	}
	return lesson.Cue{Kind: lesson.Signal, Span: d.span(p), Giver: by, Reader: by.Partner(), Meaning: lesson.Meaning(d.IntN(3))}
}

// part is any part, most of them there.
func (d *draws) part() edit.Part {
	return edit.Part{Kind: edit.PartKind(d.IntN(int(edit.TipPart) + 1)), Player: d.player(), Index: d.IntN(6) - 1}
}

func (d *draws) parts() []edit.Part {
	list := make([]edit.Part, 1+d.IntN(5))
	for i := range list {
		list[i] = d.part()
	}
	return list
}

// parting is a way to exchange parts that keeps teams whole.
func (d *draws) parting() [4]game.Player {
	part := [4]game.Player{game.Near1, game.Near2, game.Far1, game.Far2}
	if d.IntN(2) == 0 {
		part[0], part[1] = part[1], part[0]
	}
	if d.IntN(2) == 0 {
		part[2], part[3] = part[3], part[2]
	}
	return part
}

// anEdit does something to a lesson; false where there is nothing to do it to.
type anEdit func(d *draws, l lesson.Lesson) (lesson.Lesson, bool)

// onPlay is an edit of one play.
func onPlay(do func(d *draws, p lesson.Play) (lesson.Play, bool)) anEdit {
	return func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		if len(l.Plays) == 0 {
			return l, false
		}
		i := d.IntN(len(l.Plays))
		p, ok := do(d, l.Plays[i])
		return edit.ReplacePlay(l, i, p), ok
	}
}

// onKeyframe is an edit of one keyframe.
func onKeyframe(do func(d *draws, p lesson.Play, id game.Player, i int) lesson.Play) anEdit {
	return onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		id := d.player()
		return do(d, p, id, d.IntN(len(p.Tracks[id]))), true
	})
}

// onList is an edit of one entry of a list of a play.
func onList(length func(lesson.Play) int, do func(d *draws, p lesson.Play, i int) lesson.Play) anEdit {
	return onPlay(func(d *draws, p lesson.Play) (lesson.Play, bool) {
		n := length(p)
		if n == 0 {
			return p, false
		}
		return do(d, p, d.IntN(n)), true
	})
}

// onReel is an edit of one reel.
func onReel(do func(d *draws, r lesson.Reel) (lesson.Reel, bool)) anEdit {
	return func(d *draws, l lesson.Lesson) (lesson.Lesson, bool) {
		if len(l.Reels) == 0 {
			return l, false
		}
		i := d.IntN(len(l.Reels))
		r, ok := do(d, l.Reels[i])
		return edit.ReplaceReel(l, i, r), ok
	}
}

// Bounds on what the walk lets grow, so that it does not get slow.
const (
	fewPlays = 12
	fewTakes = 8
)

var (
	shots = func(p lesson.Play) int { return len(p.Shots) }
	cues  = func(p lesson.Play) int { return len(p.Cues) }
	marks = func(p lesson.Play) int { return len(p.Marks) }
)

func editNames() []string {
	var names []string
	for name := range edits {
		names = append(names, name)
	}
	return sorted(names)
}

// Every exported function that gives a lesson, a play or a reel is in the walk.
func TestTheWalkTriesEveryEdit(t *testing.T) {
	files, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for _, f := range files {
		if !strings.HasSuffix(f.Name(), ".go") || strings.HasSuffix(f.Name(), "_test.go") {
			continue
		}
		tree, err := parser.ParseFile(token.NewFileSet(), f.Name(), nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, decl := range tree.Decls {
			fn, ok := decl.(*ast.FuncDecl)
			if !ok || fn.Recv != nil || !fn.Name.IsExported() || !givesDocument(fn) {
				continue
			}
			seen++
			if _, ok := edits[fn.Name.Name]; !ok {
				t.Errorf("%s: %s is not among the edits of the walk", f.Name(), fn.Name.Name)
			}
		}
	}
	if seen != len(edits) {
		t.Errorf("the package has %d edits, the walk %d", seen, len(edits))
	}
}

// givesDocument says whether a function's one result is a part of the document.
func givesDocument(fn *ast.FuncDecl) bool {
	if fn.Type.Results == nil || len(fn.Type.Results.List) != 1 {
		return false
	}
	sel, ok := fn.Type.Results.List[0].Type.(*ast.SelectorExpr)
	return ok && (sel.Sel.Name == "Lesson" || sel.Sel.Name == "Play" || sel.Sel.Name == "Reel")
}
