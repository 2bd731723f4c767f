package app

import (
	"context"
	"errors"
	"io/fs"
	"syscall"

	"homeside/export"
	"homeside/export/clip"
	"homeside/export/photo"
	"homeside/model/lessonfile"
	"homeside/words"
)

// explain words an error for people: what went wrong and what is kept. The
// error's own line, which names the file and the place, follows it.
func explain(err error, kept string) string {
	if kept != "" {
		kept += "\n\n"
	}
	return reason(err) + "\n\n" + kept + "(" + err.Error() + ")"
}

// why is a sentence for an error.
type why struct {
	err  error
	text string
}

// reasons are the errors that have a sentence of their own; the first that fits counts.
func reasons() []why {
	return []why{
		{lessonfile.ErrNewer, words.T("This file was made by a newer version of Homeside.")},
		{lessonfile.ErrTooLarge, words.T("This file is too large to be a lesson.")},
		{lessonfile.ErrFolder, words.T("This is a folder, not a file.")},
		{lessonfile.ErrNotLesson, words.T("This file is not a Homeside lesson.")},
		{lessonfile.ErrNotRoster, words.T("This file is not a Homeside roster.")},
		{lessonfile.ErrRosterTooLarge, words.T("This file is too large to be a roster.")},
		{errNotOrdinary, words.T("This is not an ordinary file.")},
		{errChanged, words.T("Another program has changed this file.")},
		{photo.ErrFormat, words.T("This is not a JPEG or PNG picture.")},
		{photo.ErrLarge, words.T("This picture is too large.")},
		{context.Canceled, words.T("Cancelled.")},
		{clip.ErrNoFFmpeg, words.T("This format needs the program ffmpeg, which is not on this machine.")},
		{syscall.ENOSPC, words.T("The disk is full.")},
		{syscall.EROFS, words.T("This disk can only be read, not written.")},
		{export.ErrNoFolder, words.T("The folder is not there any more.")},
		{fs.ErrPermission, words.T("There is no permission to write or read there.")},
		{export.ErrProtected, words.T("This file is write-protected.")},
		{fs.ErrNotExist, words.T("There is no such file or folder.")},
	}
}

func reason(err error) string {
	for _, r := range reasons() {
		if errors.Is(err, r.err) {
			return r.text
		}
	}
	var mistake *lessonfile.Error
	if errors.As(err, &mistake) {
		return words.T("This file has a mistake in it.")
	}
	return words.T("That did not work.")
}
