package export

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// Put writes one file of a folder: name is its name in it.
type Put func(name string, write func(io.Writer) error) error

// SaveFolder writes a folder of files as a whole or not at all: fill puts them
// into a temporary folder beside it, which is renamed to path. If anything fails
// or ctx is cancelled, the temporary folder is removed and what stood at path
// stays as it was. A folder that is there is replaced only if own says of every
// name in it that it is a file of such a folder. Errors say which folder, what
// failed and why.
func SaveFolder(ctx context.Context, path string, own func(name string) bool, fill func(Put) error) error {
	if err := saveFolder(ctx, filepath.Clean(path), own, fill); err != nil {
		return fmt.Errorf("save %s: %w", path, err)
	}
	return nil
}

func saveFolder(ctx context.Context, path string, own func(string) bool, fill func(Put) error) error {
	if err := stopped(ctx); err != nil {
		return err
	}
	if err := checkReplaceable(path, own); err != nil {
		return err
	}
	temp, err := makeTemp(filepath.Dir(path))
	if err != nil {
		return err
	}
	defer os.RemoveAll(temp) // after it was renamed there is none
	err = fill(func(name string, write func(io.Writer) error) error {
		return putFile(ctx, filepath.Join(temp, name), write)
	})
	if stop := stopped(ctx); stop != nil {
		return stop
	}
	if err != nil {
		return plain("", err)
	}
	return replace(path, temp, own)
}

// checkReplaceable is why a folder cannot stand at path.
func checkReplaceable(path string, own func(string) bool) error {
	info, err := os.Lstat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return checkFolder(path)
	case err != nil:
		return plain("", err)
	case !info.IsDir():
		return errors.New("there is a file of this name, and a folder is to be written")
	}
	files, err := os.ReadDir(path)
	if err != nil {
		return plain("look into the folder", err)
	}
	for _, f := range files {
		if f.IsDir() || !own(f.Name()) {
			return fmt.Errorf("the folder is there and holds other things, such as %s", f.Name())
		}
	}
	return nil
}

// makeTemp makes a folder that no other program has.
func makeTemp(folder string) (string, error) {
	for i := range tries {
		name := filepath.Join(folder, partName(i))
		err := os.Mkdir(name, 0o777)
		if err == nil {
			return name, nil
		}
		if !errors.Is(err, fs.ErrExist) {
			return "", plain("make a folder in folder "+folder, err)
		}
	}
	return "", fmt.Errorf("folder %s is full of unfinished exports named .homeside-*.part", folder)
}

func putFile(ctx context.Context, path string, write func(io.Writer) error) error {
	f, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_WRONLY, newFile)
	if err != nil {
		return plain("make a file in the folder", err)
	}
	if err := fill(ctx, f, write); err != nil {
		f.Close() // the first error is the one to tell
		return err
	}
	return plain("close a file of the folder", f.Close())
}

// replace puts temp in the place of path. What stood there is set aside first
// and comes back if that fails.
func replace(path, temp string, own func(string) bool) error {
	if err := checkReplaceable(path, own); err != nil { // it may have changed meanwhile
		return err
	}
	aside := ""
	if _, err := os.Lstat(path); err == nil {
		if aside, err = makeTemp(filepath.Dir(path)); err != nil {
			return err
		}
		if err := os.Rename(path, filepath.Join(aside, "before")); err != nil {
			os.Remove(aside)
			return plain("set the old folder aside", err)
		}
	}
	if err := os.Rename(temp, path); err != nil {
		if aside != "" {
			_ = os.Rename(filepath.Join(aside, "before"), path) // the first error is the one to tell
			os.Remove(aside)                                    // only if it is empty
		}
		return plain("put the folder in its place", err)
	}
	if aside != "" {
		return plain("remove the old folder", os.RemoveAll(aside))
	}
	return nil
}
