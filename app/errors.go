package app

import (
	"context"
	"errors"
	"io/fs"
	"syscall"

	"homeside/export/clip"
	"homeside/model/lessonfile"
)

// explain words an error for people: what went wrong and what is kept. The
// error's own line, which names the file and the place, follows it.
func explain(err error, kept string) string {
	return reason(err) + "\n\n" + kept + "\n\n(" + err.Error() + ")"
}

func reason(err error) string {
	switch {
	case errors.Is(err, lessonfile.ErrNewer):
		return "This file was made by a newer version of Homeside."
	case errors.Is(err, lessonfile.ErrTooLarge):
		return "This file is too large to be a lesson."
	case errors.Is(err, lessonfile.ErrNotLesson):
		return "This file is not a Homeside lesson."
	case errors.Is(err, lessonfile.ErrNotRoster):
		return "This file is not a Homeside roster."
	case errors.Is(err, lessonfile.ErrRosterTooLarge):
		return "This file is too large to be a roster."
	case errors.Is(err, context.Canceled):
		return "Cancelled."
	case errors.Is(err, clip.ErrNoFFmpeg):
		return "This format needs the program ffmpeg, which is not on this machine."
	case errors.Is(err, syscall.ENOSPC):
		return "The disk is full."
	case errors.Is(err, fs.ErrPermission), errors.Is(err, syscall.EROFS):
		return "There is no permission to write or read there."
	case errors.Is(err, fs.ErrNotExist):
		return "There is no such file or folder."
	}
	var mistake *lessonfile.Error
	if errors.As(err, &mistake) {
		return "This file has a mistake in it."
	}
	return "That did not work."
}
