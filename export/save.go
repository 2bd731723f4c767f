package export

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// What Save says of a place where it cannot write.
var (
	ErrNoFolder  = errors.New("there is no folder")
	ErrProtected = errors.New("the file is write-protected")
)

// Save writes a file as a whole or not at all: write fills a temporary file in
// the same folder, which is synced, closed and renamed to path. If anything
// fails or ctx is cancelled, the temporary file is removed and what stood at
// path stays as it was. A symbolic link is followed; an existing file keeps its
// permissions. Errors say which file, what failed and why.
func Save(ctx context.Context, path string, write func(io.Writer) error) error {
	if err := save(ctx, path, write); err != nil {
		return fmt.Errorf("save %s: %w", path, err)
	}
	return nil
}

func save(ctx context.Context, path string, write func(io.Writer) error) error {
	if err := stopped(ctx); err != nil {
		return err
	}
	path, mode, err := target(path)
	if err != nil {
		return err
	}
	temp, err := createTemp(filepath.Dir(path), mode)
	if err != nil {
		return err
	}
	placed := false
	defer func() {
		if !placed { // once the file is renamed, its name may be another export's
			os.Remove(temp.Name())
		}
	}()
	if err := fill(ctx, temp, write); err != nil {
		temp.Close() // the first error is the one to tell
		return err
	}
	if err := temp.Close(); err != nil {
		return plain("close the file", err)
	}
	err = os.Rename(temp.Name(), path)
	placed = err == nil
	return plain("put the file in its place", err)
}

// fill writes the content and sees it onto the disk.
func fill(ctx context.Context, temp *os.File, write func(io.Writer) error) error {
	b := bufio.NewWriterSize(Writer(ctx, temp), 1<<16)
	err := write(b)
	if stop := stopped(ctx); stop != nil {
		return stop
	}
	if err != nil {
		return plain("", err)
	}
	if err := b.Flush(); err != nil {
		return plain("", err)
	}
	if err := temp.Sync(); err != nil {
		return plain("write to the disk", err)
	}
	return stopped(ctx)
}

// stopError is a cancelled export in plain words; it wraps the context's error.
type stopError struct{ error }

func (e stopError) Error() string {
	if errors.Is(e.error, context.DeadlineExceeded) {
		return "out of time, nothing was written"
	}
	return "cancelled, nothing was written"
}

func (e stopError) Unwrap() error { return e.error }

// stopped is why ctx ended, or nil.
func stopped(ctx context.Context) error {
	if err := ctx.Err(); err != nil {
		return stopError{err}
	}
	return nil
}

// newFile are the permissions of a file that was not there, before the umask.
const newFile fs.FileMode = 0o666

// target is the file that path means, with its permissions.
func target(path string) (string, fs.FileMode, error) {
	info, err := os.Stat(path)
	if errors.Is(err, fs.ErrNotExist) {
		return path, newFile, checkFolder(path)
	}
	switch {
	case err != nil:
		return "", 0, plain("", err)
	case info.IsDir():
		return "", 0, errors.New("this is a folder, not a file")
	case !info.Mode().IsRegular():
		return "", 0, errors.New("this is not an ordinary file")
	case info.Mode().Perm()&0o200 == 0:
		return "", 0, ErrProtected
	}
	path, err = filepath.EvalSymlinks(path)
	return path, info.Mode().Perm(), plain("", err)
}

func checkFolder(path string) error {
	folder := filepath.Dir(path)
	info, err := os.Stat(folder)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("%w %s", ErrNoFolder, folder)
	case err != nil:
		return plain("", err)
	case !info.IsDir():
		return fmt.Errorf("%s is not a folder", folder)
	case os.IsPathSeparator(path[len(path)-1]):
		return errors.New("the name of the file is missing")
	}
	return nil
}

// tries is how many unfinished exports a folder can have.
const tries = 1000

func partName(i int) string { return fmt.Sprintf(".homeside-%d.part", i) }

// createTemp makes a file that no other program has. Only a crash leaves one
// behind; the next free number then serves.
func createTemp(folder string, mode fs.FileMode) (*os.File, error) {
	for i := range tries {
		name := filepath.Join(folder, partName(i))
		f, err := os.OpenFile(name, os.O_CREATE|os.O_EXCL|os.O_WRONLY, mode)
		if err == nil {
			return f, nil
		}
		if !errors.Is(err, fs.ErrExist) {
			return nil, plain("make a file in folder "+folder, err)
		}
	}
	return nil, fmt.Errorf("folder %s is full of unfinished exports named .homeside-*.part", folder)
}

// plain is err without the name of the temporary file, which tells nobody
// anything, and with what was being done.
func plain(doing string, err error) error {
	var file *fs.PathError
	var link *os.LinkError
	switch {
	case err == nil:
		return nil
	case errors.As(err, &file):
		err = file.Err
	case errors.As(err, &link):
		err = link.Err
	}
	if doing == "" {
		return err
	}
	return fmt.Errorf("%s: %w", doing, err)
}
