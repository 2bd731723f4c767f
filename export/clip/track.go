package clip

import (
	"context"
	"fmt"
	"os"
	"path/filepath"

	"homeside/export"
)

// track writes what is heard of the clip into the folder that is removed with
// all in it, for ffmpeg to pack; the path is empty if nothing is heard.
func (f *film) track(ctx context.Context, folder string, r recipe) (string, error) {
	if f.o.Track == nil || r.sound == nil {
		return "", nil
	}
	path := filepath.Join(folder, "track.wav")
	if err := f.writeTrack(ctx, path); err != nil {
		return "", fmt.Errorf("write what is heard of the %s: %w", r.kind, err)
	}
	return path, nil
}

func (f *film) writeTrack(ctx context.Context, path string) error {
	file, err := os.Create(path)
	if err != nil {
		return err
	}
	err = f.o.Track(export.Writer(ctx, file), f.times)
	if closing := file.Close(); err == nil {
		err = closing
	}
	return err
}
