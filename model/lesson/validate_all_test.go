package lesson_test

import (
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"

	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// leaf is one value without parts in a lesson, named by its way through the Go types.
type leaf struct {
	path string
	v    reflect.Value
}

// leaves walks everything a lesson holds.
func leaves(path string, v reflect.Value) (all []leaf) {
	switch v.Kind() {
	case reflect.Pointer:
		return leaves(path, v.Elem())
	case reflect.Struct:
		for i := range v.NumField() {
			all = append(all, leaves(path+"."+v.Type().Field(i).Name, v.Field(i))...)
		}
		return all
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			all = append(all, leaves(fmt.Sprintf("%s[%d]", path, i), v.Index(i))...)
		}
		return all
	}
	return []leaf{{path, v}}
}

// badValues are the values that no field of a kind may take.
func badValues(v reflect.Value) []any {
	switch v.Kind() {
	case reflect.Float64:
		return []any{math.NaN(), math.Inf(1), math.Inf(-1), 1e9, -1e9}
	case reflect.String:
		return []any{"\xff", strings.Repeat("x", lesson.MaxNotes+1)}
	case reflect.Int:
		return []any{-1, 100000}
	case reflect.Uint8:
		switch v.Interface().(type) {
		case lesson.Formation:
			return []any{uint8(len(lesson.Formations)), uint8(255)}
		case lesson.ReturnTo:
			return []any{uint8(len(lesson.ReturnsTo)), uint8(255)}
		}
		return []any{uint8(100), uint8(255)}
	}
	return nil // both values of a bool are good
}

// notCounted are the fields of the sample that say nothing beside the kind of
// their shot, mark or cue.
func notCounted(path string) bool {
	for _, p := range []string{
		".Plays[0].Shots[0].Intent.Apex", ".Plays[0].Shots[0].Intent.Time", ".Plays[0].Shots[0].Intent.NetClear", // a speed
		".Plays[0].Shots[1].Intent.Speed", ".Plays[0].Shots[1].Intent.Time", ".Plays[0].Shots[1].Intent.NetClear", // an apex
		".Plays[0].Shots[2].Intent.Apex", ".Plays[0].Shots[2].Intent.Speed", ".Plays[0].Shots[2].Intent.Time", // a height over the net
		".Vocabulary[6].Intent.Speed", ".Vocabulary[6].Intent.Time", ".Vocabulary[6].Intent.NetClear", // an apex
		".Plays[0].Shots[1].Meet.Height",                       // met at the top
		".Plays[0].Marks[1].Tip.X", ".Plays[0].Marks[1].Tip.Y", // a text
		".Reels[0].Takes[0].Camera.End",                                       // follows a player
		".Reels[0].Takes[1].Camera.Player", ".Reels[0].Takes[1].Camera.Width", // half the court
		".Plays[0].Cues[0].Giver", ".Plays[0].Cues[0].Reader", ".Plays[0].Cues[0].Meaning", // a caption
	} {
		if p == path {
			return true
		}
	}
	return false
}

// Whatever single value of a lesson goes bad, Validate sees it, and only where
// it counts. This also holds for fields that are still to come.
func TestValidateSeesEveryField(t *testing.T) {
	checked := 0
	for i := range leaves("", reflect.ValueOf(new(lessontest.Sample()))) {
		l := lessontest.Sample()
		f := leaves("", reflect.ValueOf(&l))[i]
		for _, bad := range badValues(f.v) {
			f.v.Set(reflect.ValueOf(bad).Convert(f.v.Type()))
			if got := lesson.Validate(l); (len(got) == 0) != notCounted(f.path) {
				t.Errorf("Validate with %s = %.20v: %v, want a problem: %v", f.path, bad, got, !notCounted(f.path))
			}
			checked++
		}
	}
	if checked < 300 {
		t.Errorf("checked %d bad values, want at least 300: has the walk lost its way?", checked)
	}
}
