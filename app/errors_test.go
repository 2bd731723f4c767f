package app

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"strings"
	"syscall"
	"testing"

	"homeside/export/clip"
	"homeside/export/photo"
	"homeside/model/lessonfile"
)

// Every error that a user can meet has words of its own, however deep it is wrapped.
func TestReason(t *testing.T) {
	other := reason(errors.New("anything"))
	for _, err := range []error{
		lessonfile.ErrNewer, lessonfile.ErrTooLarge, lessonfile.ErrNotLesson, &lessonfile.Error{Line: 3},
		clip.ErrNoFFmpeg, photo.ErrFormat, photo.ErrLarge, context.Canceled, syscall.ENOSPC, syscall.EROFS, fs.ErrPermission, fs.ErrNotExist,
	} {
		if got := reason(fmt.Errorf("save x: %w", err)); got == other || !strings.HasSuffix(got, ".") {
			t.Errorf("reason(%v) = %q, want a sentence of its own", err, got)
		}
	}
}

func TestExplain(t *testing.T) {
	got := explain(fmt.Errorf("save x.json: %w", syscall.ENOSPC), "Your lesson is still open.")
	for _, want := range []string{"The disk is full.", "Your lesson is still open.", "save x.json"} {
		if !strings.Contains(got, want) {
			t.Errorf("explain = %q, want %q in it", got, want)
		}
	}
}

func TestFileName(t *testing.T) {
	for _, c := range []struct{ title, want string }{
		{"4-7-2: Tobin serves, stacked", "4-7-2-tobin-serves-stacked"}, {"", "lesson"}, {"../../etc", "etc"}, {"Élan", "Élan"},
	} {
		if got := fileName(c.title); !strings.EqualFold(got, c.want) {
			t.Errorf("fileName(%q) = %q, want %q", c.title, got, c.want)
		}
	}
}
